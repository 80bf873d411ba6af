import type { Book } from "../engine/book";
import type { OpenedXlsx } from "./read";

/**
 * Gives an open workbook what its file held beside the engine's snapshot: charts, how it is printed, how it is
 * protected, and what add-ins keep in it.
 */
export function restoreBook(
  book: Book,
  { charts, pageSetups, state, protection }: Pick<OpenedXlsx, "charts" | "pageSetups" | "state" | "protection">,
): void {
  for (const { sheetId, type, given } of charts) book.charts.add(sheetId, type, given);
  for (const [sheetId, setup] of Object.entries(pageSetups)) book.pageSetups.change(sheetId, setup);
  book.state.load(state);
  for (const [sheetId, { options, password }] of Object.entries(protection.sheets)) {
    book.protection.protectSheet(sheetId, options, password);
  }
  if (protection.structure !== undefined) book.protection.protectStructure(protection.structure);
}
