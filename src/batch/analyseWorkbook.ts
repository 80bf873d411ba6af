import type { AnyAnalysis } from "../analyses/analysis";
import { describe } from "../analyses/describe";
import type { Report } from "../analyses/report";
import { reportKey } from "../analyses/reportKey";
import { today } from "../analyses/today";
import type { Refusal } from "../engine/result";
import type { Host } from "../host";
import { gridAddress } from "../reading/address";
import { type ColumnMap, usesOf } from "../reading/columns";
import { type Reading, readResults } from "../reading/readResults";
import { recogniseColumns } from "../reading/recogniseColumns";
import { HostRefusal } from "../sheet/hostRefusal";
import type { Conflict } from "../sheet/planUpdate";
import { readSelection } from "../sheet/readSelection";
import { writeReport } from "../sheet/writeReport";
import { noBackground } from "../store/background";
import { corrected, type Options } from "./options";
import { BatchRefusal } from "./refusal";
import { selectRange } from "./selectRange";
import { many } from "./voice";

/** What is to be done with each workbook. */
export type Asked = {
  readonly analysis: AnyAnalysis;
  readonly range: string;
  readonly options: Options;
  /** Writes a new sheet even where a table of an earlier run stands. */
  readonly newSheet: boolean;
};

export type Analysed = {
  readonly report: Report;
  readonly sheet: string;
  readonly address: string;
  readonly renewed: boolean;
};

/**
 * Does in an open workbook what a coach does in the pane: selects, has the columns recognised and corrected, asks, and
 * writes the answer.
 * Throws a `BatchRefusal` where the coach would have got no answer, or no table.
 */
export async function analyseWorkbook(host: Host, asked: Asked): Promise<Analysed> {
  await selectRange(host, asked.range);
  try {
    return await analyseSelection(asked);
  } catch (error) {
    if (!(error instanceof HostRefusal)) throw error;
    throw new BatchRefusal(`The workbook did not let Tapeline do that. It said: ${error.message}`);
  }
}

async function analyseSelection({ analysis, options, newSheet }: Asked): Promise<Analysed> {
  const selection = await readSelection();
  if (selection.kind === "empty") {
    throw new BatchRefusal(`${selection.sheet}, ${selection.address} holds no values. Check --range.`);
  }
  const { grid, sheetId } = selection;
  const map = corrected(recogniseColumns(grid), options);
  const reading = readResults(grid, map);
  const test = testOf(analysis, reading, options.test);
  const settings = options.settings ?? {};
  const described = describe({
    analysis,
    reading,
    uses: usesOf(map),
    test,
    settings,
    background: noBackground,
    source: gridAddress(grid),
    date: today(),
  });
  if (!described.ok) throw noAnswer(described.reasons, map, reading);

  const outcome = await writeReport(described.value, reportKey(analysis, grid, sheetId, map, test), newSheet);
  if (outcome.kind === "unknownState") {
    throw new BatchRefusal("This workbook was last used with a newer Tapeline. Update Tapeline, then try again.");
  }
  if (outcome.kind === "conflict") throw inTheWay(outcome, outcome.sheet);
  return { report: described.value, sheet: outcome.sheet, address: outcome.address, renewed: outcome.updated };
}

/** The test that is meant. Nobody looks on while a batch runs, so one of several is never picked by itself. */
function testOf(analysis: AnyAnalysis, { tests }: Reading, wished: string | undefined): string {
  if (analysis.tests === "all") {
    if (wished === undefined) return tests[0] ?? "";
    throw new BatchRefusal(`"${analysis.id}" answers for all tests at once. Leave "test" out of --options.`);
  }
  const named = tests.map((test) => `"${test}"`).join(", ");
  if (wished !== undefined) {
    const found = tests.find((test) => test.toLowerCase() === wished.trim().toLowerCase());
    if (found === undefined) throw new BatchRefusal(`The range holds no test "${wished}". It holds: ${named}.`);
    return found;
  }
  if (tests.length <= 1) return tests[0] ?? "";
  throw new BatchRefusal(
    `The range holds several tests: ${named}. Name one: --options '{"test":${JSON.stringify(tests[0])}}'`,
  );
}

/** How many cells are named where there is no answer; the first ones show what is wrong with the rest. */
const cellsNamed = 8;

function noAnswer(reasons: readonly Refusal[], map: ColumnMap, reading: Reading): BatchRefusal {
  const isUnclear = reasons.some(({ code }) => code === "missingColumns");
  const details = isUnclear ? understood(map) : leftOut(reading);
  return new BatchRefusal(reasons.map(({ message }) => message).join(" "), details);
}

function leftOut({ remarks }: Reading): string[] {
  const cells = remarks.filter((remark) => remark.leftOut).map(({ cell, why }) => `${cell}: ${why}`);
  const more = cells.length - cellsNamed;
  return more > 0 ? [...cells.slice(0, cellsNamed), `${many(more, "more cell")} left out.`] : cells;
}

/** How the columns were understood, and how to say it otherwise. */
const understood = (map: ColumnMap): string[] => [
  ...map.columns.map(({ letters, heading, use }) => `Column ${letters}${heading ? `, "${heading}"` : ""}: ${use}`),
  `Correct them by their letters: --options '{"columns":{"${map.columns[0]?.letters}":"athlete"}}'`,
];

function inTheWay({ reason, address }: Conflict, sheet: string): BatchRefusal {
  const why = {
    headings: "Its headings were changed, so its columns cannot be told apart any more.",
    totals: "It has a total row. Switch the total row off.",
    below: `It needs more rows, but below it stands something of yours: ${address}. Move that.`,
  }[reason];
  return new BatchRefusal(`The table on "${sheet}" was not changed. ${why} Or add --new-sheet to leave it as it is.`);
}
