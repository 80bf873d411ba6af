import { say } from "../../language/say";
import type { Caution } from "../caution";
import { rangeRefusals } from "../quantities";
import { tooFew } from "../refusals";
import { ok, type Refusal, type Result, refuse } from "../result";

/** One row of a training-load table. `alsoPrinted` are other percentages that copies of the same table give. */
export type PercentRow = {
  readonly repetitions: number;
  readonly percent: number;
  readonly alsoPrinted?: readonly number[];
};

/**
 * Repetitions possible at a percentage of the maximum, as a training-load chart of the NSCA prints them (as quoted by secondary
 * pages). Editions and copies disagree at 11 and 12 repetitions. It descends from the same studies as the equations:
 * a starting load, to be edited by the coach.
 */
export const handbookTable: readonly PercentRow[] = [
  { repetitions: 1, percent: 100 },
  { repetitions: 2, percent: 95 },
  { repetitions: 3, percent: 93 },
  { repetitions: 4, percent: 90 },
  { repetitions: 5, percent: 87 },
  { repetitions: 6, percent: 85 },
  { repetitions: 7, percent: 83 },
  { repetitions: 8, percent: 80 },
  { repetitions: 9, percent: 77 },
  { repetitions: 10, percent: 75 },
  { repetitions: 11, percent: 70, alsoPrinted: [73] },
  { repetitions: 12, percent: 67, alsoPrinted: [70] },
  { repetitions: 15, percent: 65 },
];

export type PercentOfMaximum = { readonly percent: number; readonly cautions: readonly Caution[] };

/**
 * Percentage of the maximum with which a number of repetitions is possible, from a table. Between two rows it is
 * interpolated in a straight line. Refuses a table whose repetitions do not rise or whose percentages do not fall,
 * and repetitions the table does not cover.
 */
export function percentOfMaximum(
  repetitions: number,
  { table = handbookTable }: { readonly table?: readonly PercentRow[] } = {},
): Result<PercentOfMaximum> {
  const first = table[0];
  const last = table.at(-1);
  if (!first || !last) return refuse(tooFew(say`rows in the table`, 1, 0));
  const refusals = [
    ...tableRefusals(table),
    ...rangeRefusals("repetitions", first.repetitions, last.repetitions, repetitions),
  ];
  if (refusals.length > 0) return refuse(...refusals);

  const above = table.findIndex((row) => row.repetitions >= repetitions);
  const upper = table[above]!;
  if (upper.repetitions === repetitions) {
    const others = upper.alsoPrinted ?? [];
    return ok({ percent: upper.percent, cautions: others.length > 0 ? [copiesDisagree(upper, others)] : [] });
  }
  const lower = table[above - 1]!;
  const share = (repetitions - lower.repetitions) / (upper.repetitions - lower.repetitions);
  return ok({
    percent: lower.percent + share * (upper.percent - lower.percent),
    cautions: [betweenRows(lower.repetitions, upper.repetitions)],
  });
}

function tableRefusals(table: readonly PercentRow[]): Refusal[] {
  const inOrder = table.every((row, index) => {
    const before = table[index - 1];
    const fits = row.repetitions > 0 && row.percent > 0 && row.percent <= 100;
    return fits && (!before || (row.repetitions > before.repetitions && row.percent < before.percent));
  });
  return inOrder ? [] : [tableOutOfOrder];
}

const tableOutOfOrder: Refusal = {
  code: "tableOutOfOrder",
  get message() {
    return say`From row to row of the table the repetitions must rise and the percentages fall, from at most 100 and above zero.`;
  },
  facts: {},
};

const copiesDisagree = (row: PercentRow, others: readonly number[]): Caution => ({
  code: "copiesDisagree",
  message: say`Copies of this table disagree at ${row.repetitions} repetitions: ${[row.percent, ...others].join(", ")} %.`,
  facts: { repetitions: row.repetitions, percent: row.percent, others: others.join(", ") },
});

const betweenRows = (lower: number, upper: number): Caution => ({
  code: "betweenRows",
  message: say`The table has no such row; the percentage is taken between ${lower} and ${upper} repetitions.`,
  facts: { lower, upper },
});
