import { IClipboardInterfaceService } from "@univerjs/ui";
import { readText } from "../engine/cells";
import { selectedAreas } from "../engine/selection";
import { usedPart } from "../engine/usedRange";
import type { Book } from "../index";
import { textOfCells } from "./pastedTable";

/**
 * What is copied is put on the clipboard twice, as a table and as text. The grid's own text leaves out cells that were
 * never filled, so that the ones after them move to the left, and does not quote texts of several lines.
 */
export function copyTextAsTyped(book: Book): void {
  const clipboard = book.injector.get(IClipboardInterfaceService);
  const write = clipboard.write.bind(clipboard);
  clipboard.write = (text, markup, ...rest) =>
    // What is copied inside a cell being edited has no table.
    write(/<table/i.test(markup) ? selectedText(book) : text, markup, ...rest);
}

function selectedText(book: Book): string {
  const selected = selectedAreas(book).at(-1)!;
  const part = usedPart(book, selected.sheetId, selected, true);
  const sheet = book.worksheet(selected.sheetId);
  // A selection of a few empty cells is copied as such; of whole rows and columns, the part in use.
  const area = selected.rowCount * selected.columnCount <= 10_000 || !part ? selected : { ...selected, ...part };
  return textOfCells(readText(area).filter((_, index) => !sheet.getRowFiltered(area.row + index)));
}
