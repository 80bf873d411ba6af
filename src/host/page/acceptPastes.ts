import { SheetPasteShortKeyCommandName } from "@univerjs/ui";
import type { Book } from "../index";
import { cellsOfText, tableMarkup, withExactNumbers } from "./pastedTable";

/** Makes of what is pasted from another program the table it was there, before the grid takes it. */
export function acceptPastes(book: Book): void {
  book.commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SheetPasteShortKeyCommandName) return;
    const pasted = params as { htmlContent?: string; textContent?: string };
    if (pasted.htmlContent) {
      // What was copied from this grid is known to it by an id, and needs no reading.
      if (!pasted.htmlContent.includes("data-copy-id")) pasted.htmlContent = withExactNumbers(pasted.htmlContent);
    } else if (pasted.textContent && /[\t\n]/.test(pasted.textContent)) {
      pasted.htmlContent = tableMarkup(cellsOfText(pasted.textContent));
    }
  });
}
