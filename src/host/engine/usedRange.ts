import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Area, Rectangle } from "./area";
import { bounding } from "./area";
import type { Book } from "./book";
import { type CellMatrix, contentOf } from "./cells";

/** The used part of a rectangle: cells with content, or, unless `valuesOnly`, also those with a format of their own. */
export function usedPart(book: Book, sheetId: string, within: Rectangle, valuesOnly: boolean): Area | null {
  const lastRow = within.row + within.rowCount - 1;
  const lastColumn = within.column + within.columnCount - 1;
  let used: Rectangle | null = null;
  const take = (row: number, column: number) => {
    if (row < within.row || row > lastRow || column < within.column || column > lastColumn) return;
    const cell = { row, column, rowCount: 1, columnCount: 1 };
    used = used ? bounding(used, cell) : cell;
  };
  const sheet = book.worksheet(sheetId);
  for (const [row, cells] of Object.entries(sheet.getCellMatrix().getMatrix() as CellMatrix)) {
    for (const [column, cell] of Object.entries(cells ?? {})) {
      if (!cell) continue;
      const filled = contentOf(cell) !== "" || Boolean(cell.f) || Boolean(cell.si);
      if (filled || (!valuesOnly && cell.s)) take(Number(row), Number(column));
    }
  }
  const spilled = book.injector.get(FormulaDataModel).getArrayFormulaCellData()?.[book.id]?.[sheetId] ?? {};
  for (const [row, cells] of Object.entries(spilled)) {
    for (const [column, cell] of Object.entries(cells ?? {})) {
      if (cell && contentOf(cell) !== "") take(Number(row), Number(column));
    }
  }
  return used ? { book, sheetId, ...(used as Rectangle) } : null;
}
