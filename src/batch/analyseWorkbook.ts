import type { AnyAnalysis } from "../analyses/analysis";
import { describe } from "../analyses/describe";
import type { Report } from "../analyses/report";
import { keptKey, reportKey } from "../analyses/reportKey";
import { type Series, seriesOf } from "../analyses/seriesOf";
import { today } from "../analyses/today";
import type { Refusal } from "../engine/result";
import type { Host } from "../host";
import { gridAddress, quotedSheet } from "../reading/address";
import { type ColumnMap, type ColumnUse, usesOf } from "../reading/columns";
import { type Reading, readResults } from "../reading/readResults";
import { recogniseColumns } from "../reading/recogniseColumns";
import { HostRefusal } from "../sheet/hostRefusal";
import type { Conflict } from "../sheet/planUpdate";
import { readBackground } from "../sheet/readBackground";
import { readKeptResults } from "../sheet/readKeptResults";
import { readSelection } from "../sheet/readSelection";
import { writeReport } from "../sheet/writeReport";
import type { Background } from "../store/background";
import { keptReading, keptUses } from "../store/keptReading";
import type { StoreRemark } from "../store/storeTable";
import { corrected, type Options } from "./options";
import { BatchRefusal } from "./refusal";
import { selectRange } from "./selectRange";
import { many } from "./voice";

/** Where the results are: a range, headings included, or the workbook's own table of them. */
export type From = { readonly range: string } | "kept";

/** What is to be done with each workbook. */
export type Asked = {
  readonly analysis: AnyAnalysis;
  readonly from: From;
  readonly options: Options;
  /** Writes a new sheet even where a table of an earlier run stands. */
  readonly newSheet: boolean;
};

export type Analysed = {
  readonly report: Report;
  readonly sheet: string;
  readonly address: string;
  readonly renewed: boolean;
  /** Rows of the workbook's own tables that could not be read, a sentence each. */
  readonly unread: readonly string[];
};

/**
 * Does in an open workbook what a coach does in the pane: selects, has the columns recognised and corrected, or takes
 * the kept results; asks, with what the workbook says of athletes and tests; and writes the answer.
 * Throws a `BatchRefusal` where the coach would have got no answer, or no table.
 */
export async function analyseWorkbook(host: Host, asked: Asked): Promise<Analysed> {
  if (asked.from !== "kept") await selectRange(host, asked.from.range);
  try {
    const { background, remarks } = await readBackground();
    const source = asked.from === "kept" ? await keptSource(asked, background) : await selectedSource(asked);
    return await answer(asked, source, background, [...remarks, ...source.unread]);
  } catch (error) {
    if (!(error instanceof HostRefusal)) throw error;
    throw new BatchRefusal(`The workbook did not let Tapeline do that. It said: ${error.message}`);
  }
}

/** Results to ask about, wherever they come from. */
type Source = {
  readonly reading: Reading;
  readonly uses: ReadonlySet<ColumnUse>;
  readonly address: string;
  /** Says which result a test's answer is, so that a rerun renews the same table. */
  readonly keyFor: (test: string) => string;
  readonly unread: readonly StoreRemark[];
  /** How the columns were understood, a line each, and how to say it otherwise. */
  readonly understood: readonly string[];
};

async function selectedSource({ analysis, options }: Asked): Promise<Source> {
  const selection = await readSelection();
  if (selection.kind === "empty") {
    throw new BatchRefusal(`${selection.sheet}, ${selection.address} holds no values. Check --range.`);
  }
  const { grid, sheetId } = selection;
  const map = corrected(recogniseColumns(grid), options);
  return {
    reading: readResults(grid, map),
    uses: usesOf(map),
    address: gridAddress(grid),
    keyFor: (test) => reportKey(analysis, grid, sheetId, map, test),
    unread: [],
    understood: understood(map),
  };
}

async function keptSource({ analysis }: Asked, background: Background): Promise<Source> {
  const kept = await readKeptResults();
  if (kept === null || kept.results.length === 0) {
    throw new BatchRefusal("No results are kept in this workbook. Keep them in the pane first, or give --range.");
  }
  const reading = keptReading(kept.results, background);
  return {
    reading,
    uses: keptUses,
    address: reading.address,
    keyFor: (test) => keptKey(analysis, test),
    unread: kept.remarks,
    understood: [],
  };
}

async function answer(
  { analysis, options, newSheet }: Asked,
  { reading, uses, address, keyFor, understood }: Source,
  background: Background,
  unread: readonly StoreRemark[],
): Promise<Analysed> {
  const test = testOf(analysis, seriesOf(analysis, reading, background), options.test);
  const described = describe({
    analysis,
    reading,
    uses,
    test,
    settings: options.settings ?? {},
    background,
    source: address,
    date: today(),
  });
  if (!described.ok) throw noAnswer(described.reasons, understood, reading);

  const outcome = await writeReport(described.value, keyFor(test), newSheet);
  if (outcome.kind === "unknownState") {
    throw new BatchRefusal("This workbook was last used with a newer Tapeline. Update Tapeline, then try again.");
  }
  if (outcome.kind === "conflict") throw inTheWay(outcome, outcome.sheet);
  return {
    report: described.value,
    sheet: outcome.sheet,
    address: outcome.address,
    renewed: outcome.updated,
    unread: unread.map(({ sheet, cell, why }) => `${quotedSheet(sheet)}!${cell}: ${why}`),
  };
}

/** The test that is meant. Nobody looks on while a batch runs, so one of several is never picked by itself. */
function testOf(analysis: AnyAnalysis, { tests }: Series, wished: string | undefined): string {
  if (analysis.tests === "all") {
    if (wished === undefined) return tests[0] ?? "";
    throw new BatchRefusal(`"${analysis.id}" answers for all tests at once. Leave "test" out of --options.`);
  }
  const named = tests.map((test) => `"${test}"`).join(", ");
  if (wished !== undefined) {
    const found = tests.find((test) => test.toLowerCase() === wished.trim().toLowerCase());
    if (found === undefined) throw new BatchRefusal(`There is no test "${wished}" to ask about. There are: ${named}.`);
    return found;
  }
  if (tests.length <= 1) return tests[0] ?? "";
  throw new BatchRefusal(
    `There are several tests: ${named}. Name one: --options '{"test":${JSON.stringify(tests[0])}}'`,
  );
}

/** How many cells are named where there is no answer; the first ones show what is wrong with the rest. */
const cellsNamed = 8;

function noAnswer(reasons: readonly Refusal[], understood: readonly string[], reading: Reading): BatchRefusal {
  const isUnclear = reasons.some(({ code }) => code === "missingColumns");
  const details = isUnclear ? understood : leftOut(reading);
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
    beside: `It needs more columns, but there stands something of yours: ${address}. Move that.`,
  }[reason];
  return new BatchRefusal(`The table on "${sheet}" was not changed. ${why} Or add --new-sheet to leave it as it is.`);
}
