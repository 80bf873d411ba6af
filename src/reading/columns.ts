import type { Side } from "./vocabulary";

/** What a column of the selection is used for; the coach may change it. */
export type ColumnUse =
  | "athlete"
  | "left"
  | "right"
  | "result"
  | "side"
  | "attempt"
  | "test"
  | "date"
  | "group"
  | "none";

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
};

/** How a selection is to be read: recognised from the cells, then corrected by the coach. */
export type ColumnMap = {
  /** Offset of the first row with data. The rows above are headings and titles. */
  readonly firstDataRow: number;
  readonly columns: readonly Column[];
  /** Symbol of the results' unit, e.g. "cm"; null while unknown. */
  readonly unit: string | null;
  readonly includeHiddenRows: boolean;
};

/** Wide: one row per athlete. Long: one row per attempt, told by the columns that say which attempt a row is. */
export type Layout = "wide" | "long";

export const layoutOf = (map: ColumnMap): Layout =>
  map.columns.some((column) => (["side", "attempt", "test", "date"] as const).some((use) => use === column.use))
    ? "long"
    : "wide";

/** Offset of the first column with a use; null where no column has it. */
export const offsetOf = (map: ColumnMap, use: ColumnUse): number | null =>
  map.columns.find((column) => column.use === use)?.offset ?? null;

export const sideOfUse = (use: ColumnUse): Side | null => (use === "left" || use === "right" ? use : null);

/** The map with one column put to another use. A second column for a use that is single takes it over. */
export function withUse(map: ColumnMap, offset: number, use: ColumnUse): ColumnMap {
  const single: readonly ColumnUse[] = ["athlete", "side", "attempt", "test", "date", "group"];
  return {
    ...map,
    columns: map.columns.map((column) => {
      if (column.offset === offset) return { ...column, use };
      return single.includes(use) && column.use === use ? { ...column, use: "none" as const } : column;
    }),
  };
}
