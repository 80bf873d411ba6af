import type { Book } from "../engine/book";
import type { OpenedXlsx } from "./read";

/** Gives an open workbook what its file held beside the engine's snapshot: charts, and what add-ins keep in it. */
export function restoreBook(book: Book, { charts, state }: Pick<OpenedXlsx, "charts" | "state">): void {
  for (const { sheetId, type, given } of charts) book.charts.add(sheetId, type, given);
  book.state.load(state);
}
