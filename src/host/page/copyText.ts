import type { IRange } from "@univerjs/core";
import { ISheetClipboardService } from "@univerjs/sheets-ui";
import { readText } from "../engine/cells";
import { usedPart } from "../engine/usedRange";
import type { Book } from "../index";
import { textOfCells } from "./pastedTable";

/**
 * What is copied is put on the clipboard twice, as a table and as text. The grid's own text leaves out cells that were
 * never filled, so that the ones after them move to the left, and does not quote texts of several lines.
 */
export function copyTextAsTyped(book: Book): void {
  const clipboard = book.injector.get(ISheetClipboardService);
  const generate = clipboard.generateCopyContent.bind(clipboard);
  clipboard.generateCopyContent = (workbookId, sheetId, range, ...rest) => {
    const content = generate(workbookId, sheetId, range, ...rest);
    return content && { ...content, plain: textOfRange(book, sheetId, range) };
  };
}

function textOfRange(book: Book, sheetId: string, { startRow, startColumn, endRow, endColumn }: IRange): string {
  const sheet = book.worksheet(sheetId);
  // Whole rows and columns have no ends.
  const [row, column] = [startRow || 0, startColumn || 0];
  const rowCount = (Number.isFinite(endRow) ? endRow : sheet.getRowCount() - 1) - row + 1;
  const columnCount = (Number.isFinite(endColumn) ? endColumn : sheet.getColumnCount() - 1) - column + 1;
  const selected = { book, sheetId, row, column, rowCount, columnCount };
  // A selection of a few empty cells is copied as such; of whole rows and columns, the part in use.
  const area =
    rowCount * columnCount <= 10_000 ? selected : { ...selected, ...usedPart(book, sheetId, selected, true) };
  return textOfCells(readText(area).filter((_, index) => !sheet.getRowFiltered(area.row + index)));
}
