import type { Book } from "./book";

/** The size of a sheet in Excel. */
export const sheetRows = 1_048_576;
export const sheetColumns = 16_384;

/** A rectangle of cells on a sheet. Rows and columns count from 0. */
export type Area = {
  readonly book: Book;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
};

export type Rectangle = Pick<Area, "row" | "column" | "rowCount" | "columnCount">;

export const isEntireColumn = (area: Rectangle): boolean => area.rowCount === sheetRows;
export const isEntireRow = (area: Rectangle): boolean => area.columnCount === sheetColumns;
export const isUnbounded = (area: Rectangle): boolean => isEntireColumn(area) || isEntireRow(area);
export const cellCount = (area: Rectangle): number => area.rowCount * area.columnCount;

/** Whether the rectangle lies within the sheet. */
export const isOnSheet = ({ row, column, rowCount, columnCount }: Rectangle): boolean =>
  [row, column, rowCount, columnCount].every(Number.isInteger) &&
  row >= 0 &&
  column >= 0 &&
  rowCount > 0 &&
  columnCount > 0 &&
  row + rowCount <= sheetRows &&
  column + columnCount <= sheetColumns;

export function intersection(a: Rectangle, b: Rectangle): Rectangle | null {
  const row = Math.max(a.row, b.row);
  const column = Math.max(a.column, b.column);
  const rowCount = Math.min(a.row + a.rowCount, b.row + b.rowCount) - row;
  const columnCount = Math.min(a.column + a.columnCount, b.column + b.columnCount) - column;
  return rowCount > 0 && columnCount > 0 ? { row, column, rowCount, columnCount } : null;
}

export function bounding(a: Rectangle, b: Rectangle): Rectangle {
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  return {
    row,
    column,
    rowCount: Math.max(a.row + a.rowCount, b.row + b.rowCount) - row,
    columnCount: Math.max(a.column + a.columnCount, b.column + b.columnCount) - column,
  };
}

export const contains = (outer: Rectangle, inner: Rectangle): boolean => {
  const shared = intersection(outer, inner);
  return shared !== null && cellCount(shared) === cellCount(inner);
};
