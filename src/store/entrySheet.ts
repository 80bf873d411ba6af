import { dayInWords, inSentence, say } from "../language/say";
import { columnLetters } from "../reading/address";
import type { Column, ColumnMap } from "../reading/columns";
import { measureOf, seriesName } from "../reading/measures";
import { wordOfSide } from "../reading/vocabulary";
import { type BatteryTest, isEntered } from "./battery";
import { nameKey } from "./sameName";
import type { SquadMember } from "./squad";

/** What a column of an entry sheet holds: enough to find it by its heading and to read it without guessing. */
export type EntryColumn = Pick<Column, "heading" | "test" | "measure" | "unit" | "attempt"> & {
  readonly use: "athlete" | "group" | "left" | "right" | "result";
};

/** Which numbers are plausible in a column. Others are asked about; words such as DNS are always let through. */
export type EntryRule = { readonly lowest: number | null; readonly highest: number | null; readonly message: string };

/** A sheet to be filled in on a test day, by hand on paper or straight into the workbook. */
export type EntryPlan = {
  /** Name wished for the sheet, e.g. "Test day 11 Aug". */
  readonly sheet: string;
  readonly title: string;
  readonly use: string;
  /** ISO day of all results. */
  readonly date: string;
  readonly columns: readonly (EntryColumn & { readonly format: string; readonly rule: EntryRule | null })[];
  readonly athletes: readonly { readonly athlete: string; readonly role: string | null }[];
  /** How each test is done, in its own lines, and what to mind. */
  readonly protocols: readonly { readonly test: string; readonly lines: readonly string[] }[];
  readonly cautions: readonly string[];
  readonly paper: "a4" | "letter";
  /** How the sheet is read when it stands as planned. */
  readonly map: ColumnMap;
};

/**
 * Plans the sheet of a test day: a row per athlete; for each test in the battery's order its sides, for each side its
 * trials, for each trial its measures, so that what belongs to one trial stands side by side. Measures that are
 * computed have no column.
 */
export function planEntrySheet({
  date,
  tests,
  athletes,
  sheetName,
  paper = "a4",
}: {
  readonly date: string;
  readonly tests: readonly BatteryTest[];
  readonly athletes: readonly SquadMember[];
  readonly sheetName?: string;
  readonly paper?: EntryPlan["paper"];
}): EntryPlan {
  const entered = tests.filter(isEntered);
  const taken = new Set<string>();
  const columns = [athleteColumn, roleColumn, ...byTest(entered).flatMap(resultColumns)].map((column) => ({
    ...column,
    heading: freeHeading(column.heading, taken),
  }));
  const inWords = dayInWords(date);
  return {
    sheet: sheetName ?? say`Test day ${inWords.replace(/ ?\d+$/, "")}`,
    paper,
    title: say`Test day ${inWords}`,
    use: say`One row per athlete. Leave a trial empty or write why it is missing (DNS, injured, foul). Columns of your own may stand between.`,
    date,
    columns,
    athletes: athletes.map(({ athlete, role }) => ({ athlete, role })),
    protocols: byTest(entered).flatMap((rows) => {
      const protocol = rows.find((row) => row.protocol !== null)?.protocol;
      return protocol ? [{ test: rows[0]!.test, lines: linesOf(protocol) }] : [];
    }),
    cautions: [...new Set(entered.flatMap(({ caution }) => linesOf(caution ?? "")))],
    map: entryMap(columns, { headings: columns.map(({ heading }) => heading), firstColumn: 0, date }),
  };
}

/**
 * How an entry sheet is read: our columns by their headings, wherever they stand now; a coach's own columns are passed
 * over. Rows hidden by a filter are read too: who is out of sight has been tested all the same.
 */
export function entryMap(
  columns: readonly EntryColumn[],
  {
    headings,
    firstColumn,
    date,
  }: { readonly headings: readonly string[]; readonly firstColumn: number; readonly date: string },
): ColumnMap {
  const known = new Map(columns.map((column) => [nameKey(column.heading), column]));
  return {
    firstDataRow: 1,
    columns: headings.map((heading, offset): Column => {
      const column = known.get(nameKey(heading));
      const place = { offset, letters: columnLetters(firstColumn + offset), heading };
      if (!column) return { ...place, use: "none", test: "", measure: null, unit: null };
      const { use, test, measure, unit, attempt } = column;
      return { ...place, use, test, measure, unit, attempt };
    }),
    date,
    sameAthlete: {},
    sameTest: {},
    includeHiddenRows: true,
  };
}

/** A cell's lines, each trimmed. */
const linesOf = (text: string): string[] =>
  text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");

type PlannedColumn = EntryPlan["columns"][number];

const athleteColumn: PlannedColumn = {
  ...{ heading: say`Athlete`, use: "athlete", test: "", measure: null, unit: null, format: "@", rule: null },
};
const roleColumn: PlannedColumn = { ...athleteColumn, heading: say`Role`, use: "group" };

/** Rows of the battery that are one test, in the order in which the tests come. */
function byTest(tests: readonly BatteryTest[]): BatteryTest[][] {
  const groups = new Map<string, BatteryTest[]>();
  for (const test of tests) {
    const key = nameKey(test.test);
    groups.set(key, [...(groups.get(key) ?? []), test]);
  }
  return [...groups.values()];
}

function resultColumns(rows: readonly BatteryTest[]): PlannedColumn[] {
  const sides = Math.max(...rows.map((row) => row.sides)) === 2 ? (["left", "right"] as const) : ([null] as const);
  const trials = Array.from({ length: Math.max(...rows.map((row) => row.trials)) }, (_, index) => index + 1);
  return sides.flatMap((side) =>
    trials.flatMap((trial) =>
      rows
        .filter((row) => trial <= row.trials && (side === null || side === "left" || row.sides === 2))
        .map((row) => resultColumn(row, row.sides === 2 ? side : null, trial)),
    ),
  );
}

function resultColumn(row: BatteryTest, side: "left" | "right" | null, attempt: number): PlannedColumn {
  const { test, measure, unit } = row;
  const measureWords = measure === null ? null : inSentence(measureOf(measure).label);
  const trial = row.trials > 1 ? attempt : null;
  const words = [test, measureWords, side === null ? null : wordOfSide(side), trial]
    .filter((word) => word !== null)
    .join(" ");
  return {
    heading: unit === null ? words : `${words} (${unit})`,
    ...{ use: side ?? "result", test, measure, unit, attempt },
    format: (unit === null ? undefined : formats[unit]) ?? "General",
    rule: ruleOf(row),
  };
}

/** As fine as tapes and clocks give it; a finer number is kept all the same. */
const formats: Readonly<Record<string, string>> = { s: "0.00", ms: "0", m: "0.00", reps: "0" };

function ruleOf({ test, measure, unit, lowest, highest }: BatteryTest): EntryRule | null {
  const symbol = unit === null ? "" : ` ${unit}`;
  const range =
    lowest !== null && highest !== null
      ? say`from ${lowest} to ${highest}${symbol}`
      : lowest !== null
        ? say`${lowest}${symbol} or more`
        : highest !== null
          ? say`${highest}${symbol} or less`
          : null;
  if (range === null) return null;
  const message = say`${seriesName(test, measure)} is usually ${range}. Keep this number only if it was read right; words such as DNS may stand here.`;
  return { lowest, highest, message };
}

function freeHeading(wished: string, taken: Set<string>): string {
  for (let number = 1; ; number++) {
    const heading = number === 1 ? wished : `${wished} [${number}]`;
    if (taken.has(nameKey(heading))) continue;
    taken.add(nameKey(heading));
    return heading;
  }
}
