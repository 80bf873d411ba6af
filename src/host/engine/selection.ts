import type { IRange } from "@univerjs/core";
import { RANGE_TYPE } from "@univerjs/core";
import { SetSelectionsOperation, SetWorksheetActiveOperation, SheetsSelectionsService } from "@univerjs/sheets";
import type { Area, Rectangle } from "./area";
import { isEntireColumn, isEntireRow, sheetColumns, sheetRows } from "./area";
import type { Book } from "./book";

/** Whole columns and rows are as long as a sheet of Excel, whatever the engine's sheet holds now. */
function selectedRectangle(range: IRange): Rectangle {
  const all = range.rangeType === RANGE_TYPE.ALL;
  const byColumn = all || range.rangeType === RANGE_TYPE.COLUMN || Number.isNaN(range.startRow);
  const byRow = all || range.rangeType === RANGE_TYPE.ROW || Number.isNaN(range.startColumn);
  return {
    row: byColumn ? 0 : range.startRow,
    rowCount: byColumn ? sheetRows : range.endRow - range.startRow + 1,
    column: byRow ? 0 : range.startColumn,
    columnCount: byRow ? sheetColumns : range.endColumn - range.startColumn + 1,
  };
}

export const activeSheetId = (book: Book): string => book.workbook.getActiveSheet()!.getSheetId();

/** The selected areas of the active sheet, in the order they were selected. */
export function selectedAreas(book: Book): Area[] {
  const sheetId = activeSheetId(book);
  const selections = book.injector.get(SheetsSelectionsService).getCurrentSelections() ?? [];
  const rectangles = selections.map(({ range }) => selectedRectangle(range));
  if (rectangles.length === 0) rectangles.push({ row: 0, column: 0, rowCount: 1, columnCount: 1 });
  return rectangles.map((rectangle) => ({ book, sheetId, ...rectangle }));
}

export function activeCell(book: Book): Area {
  const selections = book.injector.get(SheetsSelectionsService).getCurrentSelections() ?? [];
  const primary = selections.findLast(({ primary }) => primary)?.primary;
  const last = selectedAreas(book).at(-1)!;
  return {
    book,
    sheetId: last.sheetId,
    row: primary?.actualRow ?? last.row,
    column: primary?.actualColumn ?? last.column,
    rowCount: 1,
    columnCount: 1,
  };
}

export function activate(book: Book, sheetId: string): void {
  if (activeSheetId(book) !== sheetId) {
    book.run(SetWorksheetActiveOperation.id, { unitId: book.id, subUnitId: sheetId });
  }
}

/** Selects areas of one sheet and makes it the active one. */
export function select(areas: readonly Area[]): void {
  const { book, sheetId } = areas[0]!;
  activate(book, sheetId);
  for (const { row, column, rowCount, columnCount } of areas) {
    book.growTo(
      sheetId,
      rowCount === sheetRows ? 1 : row + rowCount,
      columnCount === sheetColumns ? 1 : column + columnCount,
    );
  }
  const sheet = book.worksheet(sheetId);
  const selections = areas.map((area, index) => {
    const byColumn = isEntireColumn(area);
    const byRow = isEntireRow(area);
    const range = {
      startRow: area.row,
      startColumn: area.column,
      endRow: byColumn ? sheet.getRowCount() - 1 : area.row + area.rowCount - 1,
      endColumn: byRow ? sheet.getColumnCount() - 1 : area.column + area.columnCount - 1,
      rangeType:
        byColumn && byRow ? RANGE_TYPE.ALL : byColumn ? RANGE_TYPE.COLUMN : byRow ? RANGE_TYPE.ROW : RANGE_TYPE.NORMAL,
    };
    const corner = { row: area.row, column: area.column };
    const primary = {
      actualRow: corner.row,
      actualColumn: corner.column,
      startRow: corner.row,
      startColumn: corner.column,
      endRow: corner.row,
      endColumn: corner.column,
      isMerged: false,
      isMergedMainCell: false,
    };
    return { range, primary: index === areas.length - 1 ? primary : null, style: null };
  });
  book.run(SetSelectionsOperation.id, { unitId: book.id, subUnitId: sheetId, selections });
}
