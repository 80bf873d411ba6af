import type { Report } from "../analyses/report";
import { columnLetters } from "../reading/address";
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
};

/** What to write into a standing table. Column by column, so that a coach's own columns are never touched. */
export type Update = {
  readonly kind: "update";
  readonly rowCount: number;
  /** Column of the table (zero-based) and its cells for `rowCount` rows, then blanks for rows given up. */
  readonly columns: readonly { readonly index: number; readonly values: readonly CellContent[] }[];
};

/** Why the standing table cannot be updated without touching what is the coach's. */
export type Conflict = {
  readonly kind: "conflict";
  readonly reason: "headings" | "totals" | "below";
  /** Cells in the way, e.g. "A33:B34". */
  readonly address: string | null;
};

/**
 * Fits a new report into a standing table. Every athlete keeps the row where they stand now, in whatever order the
 * coach has sorted; new athletes come below. Rows of athletes no longer in the report are closed up, unless the coach
 * has columns of their own in the table: then the row stays, with our cells empty, so that nothing of theirs moves.
 */
export function planUpdate(report: Report, standing: StandingTable, last: WrittenReport): Update | Conflict {
  const { columns, rows, rowKey } = report.table;
  const places = last.headings.map((heading) => standing.headings.indexOf(heading));
  if (places.includes(-1) || places.length !== columns.length)
    return { kind: "conflict", reason: "headings", address: null };
  if (standing.hasTotals) return { kind: "conflict", reason: "totals", address: null };

  const keyPlace = columns.findIndex((column) => column.key === rowKey);
  const contents = tableContents(report.table);
  const rowOf = new Map(rows.map((row, index) => [String(row[keyPlace]), contents[index]!]));
  const standingKeys = standing.body.map((row) => String(row[places[keyPlace]!]));
  const ownColumns = standing.headings.some((_, index) => !places.includes(index));
  const kept = ownColumns ? standingKeys : standingKeys.filter((key) => rowOf.has(key));
  const known = new Set(kept);
  const keys = [...kept, ...[...rowOf.keys()].filter((key) => !known.has(key))];

  const growth = keys.length - standing.body.length;
  const inTheWay = standing.below
    .slice(0, Math.max(growth, 0))
    .flatMap((row, r) =>
      row.flatMap((cell, c) =>
        cell === ""
          ? []
          : [`${columnLetters(standing.firstColumn + c)}${standing.headerRow + standing.body.length + r + 2}`],
      ),
    );
  if (inTheWay.length > 0) return { kind: "conflict", reason: "below", address: inTheWay.slice(0, 5).join(", ") };

  const height = Math.max(keys.length, standing.body.length);
  return {
    kind: "update",
    rowCount: keys.length,
    columns: places.map((index, column) => ({
      index,
      values: Array.from({ length: height }, (_, r): CellContent => {
        const key = keys[r];
        if (key === undefined) return null;
        return rowOf.get(key)?.[column] ?? (column === keyPlace ? key : null);
      }),
    })),
  };
}
