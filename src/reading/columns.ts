import { fitsMeasure, type MeasureKey } from "./measures";
import { unitOf } from "./units";
import type { Side } from "./vocabulary";

export const columnUses = [
  "athlete",
  "left",
  "right",
  "result",
  "side",
  "attempt",
  "test",
  "measure",
  "unit",
  "date",
  "group",
  "bodyMass",
  "stature",
  "none",
] as const;

/** What a column of the selection is used for; the coach may change it. */
export type ColumnUse = (typeof columnUses)[number];

export type Column = {
  /** Offset from the grid's first column. */
  readonly offset: number;
  /** Letters on the sheet, e.g. "C". */
  readonly letters: string;
  /** The heading as it stands on the sheet, or "" where there is none. */
  readonly heading: string;
  readonly use: ColumnUse;
  /** The test this column's results belong to, by its heading; "" where the heading does not say. */
  readonly test: string;
  /** What the column's numbers are, where the heading says it ("Load (kg)"); else null. */
  readonly measure: MeasureKey | null;
  /** Symbol of the unit of the column's results, e.g. "cm"; null while unknown. */
  readonly unit: string | null;
  /** Which trial of its series it is, from 1 on, where something says so; else its place among the columns does. */
  readonly attempt?: number | undefined;
};

/** A test, and what its numbers are where it gives several. */
export type NamedTest = { readonly test: string; readonly measure: MeasureKey | null };

/** How a selection is to be read: recognised from the cells, then corrected by the coach. */
export type ColumnMap = {
  /** Offset of the first row with data. The rows above are headings and titles. */
  readonly firstDataRow: number;
  readonly columns: readonly Column[];
  /** Day of all results, ISO, where no column says it; null while unknown. */
  readonly date: string | null;
  /** Names that the coach says are one person's: a name as it was read, and the name to read it as. */
  readonly sameAthlete: Readonly<Record<string, string>>;
  /** Tests that the coach knows by another name: a series by its name (`seriesName`), and what to read it as. */
  readonly sameTest: Readonly<Record<string, NamedTest>>;
  readonly includeHiddenRows: boolean;
};

/**
 * Wide: one row per athlete. Long: one row per attempt, told by the columns that say which attempt a row is; repetitions
 * of a test without a name are a list of sets.
 */
export type Layout = "wide" | "long";

export const layoutOf = (map: ColumnMap): Layout =>
  map.columns.some(
    ({ use, measure, test }) =>
      (["side", "attempt", "test", "measure", "date"] as const).some((one) => one === use) ||
      (isResultUse(use) && measure === "repetitions" && test === ""),
  )
    ? "long"
    : "wide";

/** What a selection so read tells of its results. */
export const usesOf = (map: ColumnMap): ReadonlySet<ColumnUse> => new Set(map.columns.map(({ use }) => use));

/** Offset of the first column with a use; null where no column has it. */
export const offsetOf = (map: ColumnMap, use: ColumnUse): number | null =>
  map.columns.find((column) => column.use === use)?.offset ?? null;

export const sideOfUse = (use: ColumnUse): Side | null => (use === "left" || use === "right" ? use : null);

/** The map with one column put to another use. A second column for a use that is single takes it over. */
export function withUse(map: ColumnMap, offset: number, use: ColumnUse): ColumnMap {
  const isSingle = !isResultUse(use);
  return {
    ...map,
    columns: map.columns.map((column) => {
      if (column.offset === offset) return { ...column, use };
      return isSingle && column.use === use ? { ...column, use: "none" as const } : column;
    }),
  };
}

const resultUses: readonly ColumnUse[] = ["left", "right", "result"];

/** Facts of the athlete's body are kept beside the results: no test gave them. */
export const bodyUses = ["bodyMass", "stature"] as const;

export type BodyUse = (typeof bodyUses)[number];

export const isBodyUse = (use: ColumnUse | MeasureKey): use is BodyUse => (bodyUses as readonly string[]).includes(use);

export const isResultUse = (use: ColumnUse): boolean => resultUses.includes(use);

export const holdsResults = (column: Column): boolean => isResultUse(column.use);

/** The units of the columns of results, each once. */
export const unitsOfResults = (map: ColumnMap): string[] => [
  ...new Set(map.columns.filter(holdsResults).flatMap(({ unit }) => (unit === null ? [] : [unit]))),
];

/** The unit that all columns of results share; null where they differ or have none. */
export function unitOfResults(map: ColumnMap): string | null {
  const found = new Set(map.columns.filter(holdsResults).map(({ unit }) => unit));
  return found.size === 1 ? [...found][0]! : null;
}

/** The map with all columns of results in one unit, but for those whose measure cannot be in it (repetitions in cm). */
export const withUnit = (map: ColumnMap, unit: string | null): ColumnMap => ({
  ...map,
  columns: map.columns.map((column) =>
    holdsResults(column) && (unit === null || fitsMeasure(unitOf(unit), column.measure)) ? { ...column, unit } : column,
  ),
});
