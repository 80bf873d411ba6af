import type { Report, ReportTable } from "../analyses/report";
import { columnLetters } from "../reading/address";
import { isSameName } from "../store/sameName";
import type { WrittenReport } from "../store/writtenReports";
import { type CellContent, tableContents } from "./tableCells";

/** A table of ours as it stands in the workbook now. */
export type StandingTable = {
  readonly headerRow: number;
  readonly firstColumn: number;
  readonly headings: readonly string[];
  /** Formulas or values of the table's body. */
  readonly body: readonly (readonly unknown[])[];
  readonly hasTotals: boolean;
  /** Formulas or values of the rows below the table, within its columns; our own notes there count as empty. */
  readonly below: readonly (readonly unknown[])[];
  /** Those beside the table, from its headings down, as wide as the columns that it is to get (`newColumnCount`). */
  readonly beside: readonly (readonly unknown[])[];
};

/** What to write into a standing table. Column by column, so that a coach's own columns are never touched. */
export type Update = {
  readonly kind: "update";
  readonly rowCount: number;
  /** How many columns the table is to have: those that are new come after its last one. */
  readonly width: number;
  /**
   * For each column of the report its place in the table (zero-based) and its cells for `rowCount` rows, then blanks for
   * rows given up.
   */
  readonly columns: readonly { readonly index: number; readonly values: readonly CellContent[] }[];
  /** Columns of ours that this report does not give: emptied, with their headings left for a report that does again. */
  readonly emptied: readonly { readonly index: number; readonly heading: string; readonly key: string }[];
};

/** Why the standing table cannot be updated without touching what is the coach's. */
export type Conflict = {
  readonly kind: "conflict";
  readonly reason: "headings" | "totals" | "below" | "beside";
  /** Cells in the way, e.g. "A33:B34". */
  readonly address: string | null;
};

/** How many columns of a report have none among those that were last written. */
export const newColumnCount = ({ table }: Report, last: WrittenReport): number =>
  writtenAs(table, last).filter((written) => written === -1).length;

/**
 * Which of the columns last written each column of a report is; -1 where it is new. By the key, since a heading changes
 * with the unit; by the heading where no keys were remembered, or by the place where there were as many.
 */
function writtenAs({ columns }: ReportTable, { headings, keys }: WrittenReport): number[] {
  if (keys === undefined && headings.length === columns.length) return columns.map((_, index) => index);
  return columns.map(({ key, heading }) => (keys ? keys.indexOf(key) : headings.indexOf(heading)));
}

/**
 * Fits a new report into a standing table. Every athlete keeps the row where they stand now, in whatever order the
 * coach has sorted; new athletes come below. Rows of athletes no longer in the report are closed up, unless the coach
 * has columns of their own in the table: then the row stays, with our cells empty, so that nothing of theirs moves.
 * Columns keep their places likewise: new ones come after the last, those the report no longer gives are emptied.
 */
export function planUpdate(report: Report, standing: StandingTable, last: WrittenReport): Update | Conflict {
  const { columns, rowKey, rows } = report.table;
  const written = writtenAs(report.table, last);
  const placesOfLast = last.headings.map((heading) => standing.headings.indexOf(heading));
  if (written.some((index) => index !== -1 && placesOfLast[index] === -1))
    return { kind: "conflict", reason: "headings", address: null };
  if (standing.hasTotals) return { kind: "conflict", reason: "totals", address: null };

  let width = standing.headings.length;
  const places = written.map((index) => (index === -1 ? width++ : placesOfLast[index]!));
  const keyPlace = columns.findIndex((column) => column.key === rowKey);
  const contents = tableContents(report.table);
  const rowOf = new Map(rows.map((row, index) => [String(row[keyPlace]), contents[index]!]));
  const standingKeys = standing.body.map((row) => String(row[places[keyPlace]!]));
  const ownColumns = standing.headings.some((_, index) => !placesOfLast.includes(index));
  const kept = ownColumns ? standingKeys : standingKeys.filter((key) => rowOf.has(key));
  const known = new Set(kept);
  const keys = [...kept, ...[...rowOf.keys()].filter((key) => !known.has(key))];

  const growth = Math.max(keys.length - standing.body.length, 0);
  const { headerRow, firstColumn } = standing;
  const below = filledCells(standing.below.slice(0, growth), headerRow + standing.body.length + 1, firstColumn);
  if (below !== null) return { kind: "conflict", reason: "below", address: below };
  const newHeadings = columns.filter((_, column) => written[column] === -1).map(({ heading }) => heading);
  const taken = standing.headings.map((heading) =>
    newHeadings.some((one) => isSameName(one, heading)) ? heading : "",
  );
  const height = Math.max(keys.length, standing.body.length);
  const beside =
    filledCells([taken], headerRow, firstColumn) ??
    filledCells(standing.beside.slice(0, height + 1), headerRow, firstColumn + standing.headings.length);
  if (beside !== null) return { kind: "conflict", reason: "beside", address: beside };

  return {
    kind: "update",
    rowCount: keys.length,
    width,
    columns: places.map((index, column) => ({
      index,
      values: Array.from({ length: height }, (_, r): CellContent => {
        const key = keys[r];
        if (key === undefined) return null;
        return rowOf.get(key)?.[column] ?? (column === keyPlace ? key : null);
      }),
    })),
    emptied: last.headings.flatMap((heading, index) => {
      const place = placesOfLast[index]!;
      return written.includes(index) || place === -1
        ? []
        : [{ index: place, heading, key: last.keys?.[index] ?? heading }];
    }),
  };
}

/** Addresses of the cells that hold something, the first five; null where none does. */
function filledCells(cells: readonly (readonly unknown[])[], firstRow: number, firstColumn: number): string | null {
  const filled = cells.flatMap((row, r) =>
    row.flatMap((cell, c) => (cell === "" ? [] : [`${columnLetters(firstColumn + c)}${firstRow + r + 1}`])),
  );
  return filled.length === 0 ? null : filled.slice(0, 5).join(", ");
}
