import type { Book } from "./book";
import { insertCells, removeCells } from "./shift";
import type { Table } from "./tables";
import { usedPart } from "./usedRange";

/*
 * Rows and columns that come to a table or leave it. What stands below or beside the table within its width or height
 * makes room or closes up; where there is nothing, nothing is moved.
 */

const current = (book: Book, table: Table): Table => book.tables.get(table.id)!;

/** Makes room for rows of data, the first of them at `row` of the sheet. */
export async function insertTableRows(book: Book, table: Table, row: number, count: number): Promise<void> {
  const { rectangle, sheetId } = table;
  const place = { book, sheetId, ...rectangle, row, rowCount: count };
  const end = rectangle.row + rectangle.rowCount;
  const isBehind = row === end && !usedPart(book, sheetId, { ...place, rowCount: count }, true);
  if (!isBehind) await insertCells(place, "Down", table.id);
  book.tables.resize(current(book, table), { ...rectangle, rowCount: rectangle.rowCount + count });
}

export async function removeTableRows(book: Book, table: Table, row: number, count: number): Promise<void> {
  const { rectangle, sheetId } = table;
  await removeCells({ book, sheetId, ...rectangle, row, rowCount: count }, "Up", table.id);
  book.tables.resize(current(book, table), { ...rectangle, rowCount: rectangle.rowCount - count });
}

export async function insertTableColumn(book: Book, table: Table, index: number): Promise<void> {
  const { rectangle, sheetId } = table;
  const place = { book, sheetId, ...rectangle, column: rectangle.column + index, columnCount: 1 };
  const isBehind = index === rectangle.columnCount && !usedPart(book, sheetId, place, true);
  if (!isBehind) await insertCells(place, "Right", table.id);
  book.tables.resize(
    current(book, table),
    { ...rectangle, columnCount: rectangle.columnCount + 1 },
    rectangle.column + index,
  );
}

export async function removeTableColumn(book: Book, table: Table, index: number): Promise<void> {
  const { rectangle, sheetId } = table;
  const place = { book, sheetId, ...rectangle, column: rectangle.column + index, columnCount: 1 };
  await removeCells(place, "Left", table.id);
  book.tables.resize(
    current(book, table),
    { ...rectangle, columnCount: rectangle.columnCount - 1 },
    rectangle.column + index,
  );
}
