import { SheetPasteShortKeyCommandName } from "@univerjs/ui";
import { activeCell } from "../engine/selection";
import type { Book } from "../index";
import { ask } from "./message";
import { cellsOfMarkup, cellsOfText, tableMarkup, withExactNumbers } from "./pastedTable";

/** Makes of what is pasted from another program the table it was there, before the grid takes it. */
export function acceptPastes(book: Book): void {
  book.commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== SheetPasteShortKeyCommandName) return;
    const pasted = params as { htmlContent?: string; textContent?: string };
    if (pasted.htmlContent) {
      // What was copied from this grid is known to it by an id, and needs no reading.
      if (pasted.htmlContent.includes("data-copy-id")) return;
      pasted.htmlContent = withExactNumbers(pasted.htmlContent);
      tellFaults(book, cellsOfMarkup(pasted.htmlContent));
    } else if (pasted.textContent) {
      const cells = cellsOfText(pasted.textContent);
      if (/[\t\n]/.test(pasted.textContent)) pasted.htmlContent = tableMarkup(cells);
      tellFaults(book, cells);
    }
  });
}

/** Formulas among what is pasted that cannot be right: the cells show an error, and the message says why. */
function tellFaults(book: Book, cells: readonly (readonly string[])[]): void {
  const { sheetId, row, column } = activeCell(book);
  const faults = cells.flatMap((line, down) =>
    line.flatMap((cell, right) => {
      const typed = cell.trim();
      if (!typed.startsWith("=")) return [];
      const fault = book.formulas.faultOf(typed, { sheetId, row: row + down, column: column + right });
      return fault ? [`${typed}: ${fault}`] : [];
    }),
  );
  if (faults.length === 0) return;
  const title = faults.length === 1 ? "A pasted formula has a fault" : `${faults.length} pasted formulas have faults`;
  void ask({
    title,
    text:
      faults.length === 1
        ? "Its cell shows an error until that is put right."
        : "Their cells show an error until that is put right.",
    items: faults,
    goOn: "Go back",
  });
}
