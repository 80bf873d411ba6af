import { say } from "../language/say";
import { addressOf, quotedSheet } from "../reading/address";
import type { MeasureKey } from "../reading/measures";
import type { TestResult } from "../reading/testResult";
import { convert, unitOf } from "../reading/units";
import type { Side } from "../reading/vocabulary";
import { type Background, memberCalled } from "./background";
import { resultNumber, unitSymbol } from "./cellSchemas";
import { date, measure, name, number, open, side, text } from "./columnKinds";
import { nameKey } from "./sameName";
import { columnOffsets, readStoreTable, type StoreRemark, type StoreTable, type TableCells } from "./storeTable";

/** One row of the workbook's own table of results. */
export type KeptResult = {
  /** ISO day. */
  readonly date: string;
  readonly athlete: string;
  readonly test: string;
  readonly measure: MeasureKey | null;
  readonly side: Side | null;
  readonly trial: number;
  readonly value: number;
  readonly unit: string | null;
  /** Full address of the cell it was read from, e.g. "'Hop test'!C7"; null where it was typed into the table itself. */
  readonly source: string | null;
};

/** A result as it stands in the table. */
export type StandingResult = KeptResult & {
  /** Full address of its value in the table, e.g. "Results!G7". */
  readonly cell: string;
  /** Offset of its row from the table's first row of data. */
  readonly offset: number;
};

/** As read from the table: without a number, a trial is the next of its kind. */
export type ResultRow = Omit<KeptResult, "trial"> & { readonly trial: number | null };

/** What makes two rows the same trial of the same athlete. */
const trialKey = ({ date, athlete, test, measure, side, trial }: ResultRow): string =>
  [date, nameKey(athlete), nameKey(test), measure ?? "", side ?? "", trial ?? ""].join("|");

export const resultsTable: StoreTable<ResultRow> = {
  id: "results",
  name: "Tapeline_Results",
  sheet: say`Results`,
  title: say`Results`,
  use: say`One row per trial, kept from your test sheets or typed in here. Rows may be sorted, filtered, corrected and deleted.`,
  columns: {
    date: { ...date, heading: say`Date`, meaning: say`Day of the test.`, width: 12 },
    athlete: { ...name, heading: say`Athlete`, meaning: say`Name as in the squad.`, width: 24 },
    test: { ...name, heading: say`Test`, meaning: say`Name as in the battery.`, width: 24 },
    measure: { ...measure, meaning: say`What the number is, where the test gives several; else empty.` },
    side: {
      ...side,
      heading: say`Side`,
      meaning: say`left or right, where the test is done on each side; else empty.`,
      width: 8,
      need: "readable",
    },
    trial: {
      ...number("0", 1, 1000, { whole: true }),
      heading: say`Trial`,
      meaning: say`Which trial of the day it was. Empty: the next one.`,
      width: 7,
      need: "readable",
    },
    value: {
      heading: say`Value`,
      meaning: say`The result, in the unit beside it.`,
      format: "General",
      width: 10,
      need: "filled",
      cell: resultNumber(),
      absent: () => Number.NaN,
      write: (value) => value,
    },
    unit: { ...open, heading: say`Unit`, meaning: say`Unit of the value.`, format: "@", width: 8, cell: unitSymbol() },
    source: {
      ...text,
      heading: say`Source`,
      meaning: say`Cell it was kept from. When that cell is corrected and kept again, this row is renewed.`,
      width: 26,
    },
  },
  once: (row) =>
    row.trial === null
      ? null
      : { key: trialKey(row), called: say`Trial ${row.trial} of “${row.athlete}” in this test` },
};

export function readKept(cells: TableCells): {
  results: readonly StandingResult[];
  remarks: readonly StoreRemark[];
} {
  const { rows, remarks } = readStoreTable(resultsTable, cells);
  const nextTrial = trialCounter(rows.map(({ row }) => row));
  const valueColumn = columnOffsets(resultsTable, cells.headings).value ?? 0;
  const results = rows.map(
    ({ row, offset }): StandingResult => ({
      ...row,
      trial: row.trial ?? nextTrial(row),
      cell: `${quotedSheet(cells.sheet)}!${addressOf(cells, offset, valueColumn)}`,
      offset,
    }),
  );
  return { results, remarks };
}

/** Numbers trials that have none: from the highest number of their kind on. */
function trialCounter(rows: readonly ResultRow[]): (row: ResultRow) => number {
  const highest = new Map<string, number>();
  const kind = (row: ResultRow) => trialKey({ ...row, trial: null });
  for (const row of rows) highest.set(kind(row), Math.max(highest.get(kind(row)) ?? 0, row.trial ?? 0));
  return (row) => {
    const next = highest.get(kind(row))! + 1;
    highest.set(kind(row), next);
    return next;
  };
}

/** A result that cannot be kept, and why. */
export type NotKept = { readonly cell: string; readonly why: string };

/**
 * Results of a sheet as rows of the table.
 *
 * @param sheet the sheet they were read from.
 * @param day ISO day of results without one of their own; null where nobody knows it.
 */
export function toKept(
  results: readonly TestResult[],
  { sheet, day: usualDay }: { readonly sheet: string; readonly day: string | null },
): { readonly kept: readonly KeptResult[]; readonly refused: readonly NotKept[] } {
  const kept: KeptResult[] = [];
  const refused: NotKept[] = [];
  for (const { athlete, test, measure, side, date, attempt, value, unit, cell } of results) {
    const source = cell.includes("!") ? cell : `${quotedSheet(sheet)}!${cell}`;
    const onDay = date ?? usualDay;
    if (test.trim() === "") {
      refused.push({ cell: source, why: say`Nothing says which test this is; give its column the name of a test.` });
    } else if (onDay === null) {
      refused.push({ cell: source, why: say`Nothing says on which day this was tested.` });
    } else {
      kept.push({ date: onDay, athlete, test: test.trim(), measure, side, trial: attempt, value, unit, source });
    }
  }
  return { kept, refused };
}

/** Two values for one trial, from different places: the coach must say which one holds. */
export type Clash = { readonly standing: KeptResult; readonly fresh: KeptResult };

export type Merge<Standing extends KeptResult> = {
  readonly added: readonly KeptResult[];
  /** The same cell reads otherwise now: the coach has corrected it. */
  readonly changed: readonly { readonly standing: Standing; readonly fresh: KeptResult }[];
  readonly same: readonly KeptResult[];
  readonly clashes: readonly Clash[];
};

/** What fresh results mean for those that stand. Each trial is kept once; nothing of another origin is overwritten. */
export function mergeKept<Standing extends KeptResult>(
  standing: readonly Standing[],
  fresh: readonly KeptResult[],
): Merge<Standing> {
  const standingOf = new Map(standing.map((row) => [trialKey(row), row]));
  const addedOf = new Map<string, KeptResult>();
  const changedOf = new Map<string, { standing: Standing; fresh: KeptResult }>();
  const same: KeptResult[] = [];
  const clashes: Clash[] = [];
  for (const row of fresh) {
    const key = trialKey(row);
    const stands = standingOf.get(key);
    const known = changedOf.get(key)?.fresh ?? stands ?? addedOf.get(key);
    if (known === undefined) addedOf.set(key, row);
    else if (isSameValue(known, row)) same.push(row);
    else if (stands === known && stands?.source !== null && stands?.source === row.source) {
      changedOf.set(key, { standing: stands as Standing, fresh: row });
    } else clashes.push({ standing: known, fresh: row });
  }
  return { added: [...addedOf.values()], changed: [...changedOf.values()], same, clashes };
}

/** Equal to the digits a spreadsheet keeps, also where one is told in another unit of the same kind. */
function isSameValue(one: KeptResult, other: KeptResult): boolean {
  const [from, to] = [unitOf(other.unit ?? ""), unitOf(one.unit ?? "")];
  if (from && to && from.quantity !== to.quantity) return false;
  const value = from && to ? convert(other.value, from, to)! : other.value;
  return Math.abs(value - one.value) <= 1e-12 * Math.abs(one.value);
}

/** Kept results as analyses read them: the role from the squad, and the cell each came from or stands in. */
export function fromKept(kept: readonly StandingResult[], background: Background): TestResult[] {
  const roles = new Map<string, string | null>();
  const roleOf = (athlete: string): string | null => {
    if (!roles.has(athlete)) roles.set(athlete, memberCalled(background, athlete)?.role ?? null);
    return roles.get(athlete)!;
  };
  return kept.map(({ date, athlete, test, measure, side, trial, value, unit, source, cell }) => ({
    ...{ athlete, test, measure, side, date, value, unit },
    group: roleOf(athlete),
    attempt: trial,
    cell: source ?? cell,
  }));
}
