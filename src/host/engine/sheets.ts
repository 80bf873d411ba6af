import { BooleanNumber, mergeWorksheetSnapshotWithDefault } from "@univerjs/core";
import {
  CopySheetCommand,
  InsertSheetCommand,
  RemoveSheetCommand,
  SetWorksheetNameCommand,
  SetWorksheetOrderMutation,
} from "@univerjs/sheets";
import type { Book } from "./book";
import { freshSheetSize } from "./emptyWorkbook";
import { freshIdentity } from "./identity";
import { activate, activeSheetId } from "./selection";

/** A sheet of the workbook; the same one under any name. */
export type Sheet = { readonly book: Book; readonly id: string };

export const sheetsOf = (book: Book): Sheet[] =>
  book.workbook.getSheets().map((sheet) => ({ book, id: sheet.getSheetId() }));

export const sheetNamed = (book: Book, name: string): Sheet | null =>
  sheetsOf(book).find((sheet) => nameOf(sheet).toLowerCase() === name.toLowerCase()) ?? null;

export const nameOf = ({ book, id }: Sheet): string => book.worksheet(id).getName();

export const positionOf = ({ book, id }: Sheet): number =>
  book.workbook.getSheets().findIndex((sheet) => sheet.getSheetId() === id);

export const isHidden = ({ book, id }: Sheet): boolean => book.worksheet(id).isSheetHidden() === BooleanNumber.TRUE;

/** Why no sheet can have this name, or null: Excel's rules on length and signs. */
export function sheetNameFault(name: string): string | null {
  if (typeof name !== "string" || name.trim() === "") return "A sheet name is not empty.";
  if (name.length > 31) return "A sheet name has at most 31 letters.";
  if (/[\\/?*[\]:]/.test(name)) return "A sheet name has none of \\ / ? * [ ] :.";
  if (name.startsWith("'") || name.endsWith("'")) return "A sheet name neither begins nor ends with an apostrophe.";
  if (name.toLowerCase() === "history") return '"History" is reserved.';
  return null;
}

/** A name no sheet has: "Sheet2", "Sheet3" .. */
export function freshSheetName(book: Book): string {
  for (let number = 1; ; number += 1) {
    const name = `Sheet${number}`;
    if (!sheetNamed(book, name)) return name;
  }
}

/** Adds a sheet behind the others and leaves the active one active, as Excel does. */
export function addSheet(book: Book, name: string): Sheet {
  book.protection.checkStructure();
  const id = freshIdentity();
  const active = activeSheetId(book);
  book.run(InsertSheetCommand.id, {
    unitId: book.id,
    index: sheetsOf(book).length,
    sheet: mergeWorksheetSnapshotWithDefault({ id, name, ...freshSheetSize }),
  });
  // The engine activates a new sheet; Excel does not.
  book.changes.silently(() => activate(book, active));
  return { book, id };
}

/** Copies a sheet with its cells, formats and layout, next to another one or at an end of the workbook. */
export async function copySheet(
  sheet: Sheet,
  { position, relativeTo }: { position: string; relativeTo: Sheet | null },
): Promise<void> {
  const { book } = sheet;
  const before = new Set(sheetsOf(book).map(({ id }) => id));
  await book.commands.executeCommand(CopySheetCommand.id, { unitId: book.id, subUnitId: sheet.id });
  const copy = sheetsOf(book).find(({ id }) => !before.has(id));
  if (!copy) throw new Error("The sheet was not copied.");
  book.lastCopiedSheet = copy.id;
  book.pageSetups.change(copy.id, book.pageSetups.of(sheet.id));
  let name = "";
  for (let number = 2; !name || sheetNamed(book, name); number += 1) {
    const mark = ` (${number})`;
    name = nameOf(sheet).slice(0, 31 - mark.length) + mark;
  }
  renameSheet(copy, name);
  const anchor = relativeTo ? positionOf(relativeTo) : sheetsOf(book).length - 1;
  const from = positionOf(copy);
  const wanted =
    position === "Beginning" ? 0 : position === "Before" ? anchor : position === "After" ? anchor + 1 : before.size;
  const toOrder = Math.min(wanted > from ? wanted - 1 : wanted, before.size);
  if (toOrder !== from) {
    book.run(SetWorksheetOrderMutation.id, { unitId: book.id, subUnitId: copy.id, fromOrder: from, toOrder });
  }
}

export function renameSheet({ book, id }: Sheet, name: string): void {
  book.protection.checkStructure();
  book.run(SetWorksheetNameCommand.id, { unitId: book.id, subUnitId: id, name });
}

export function deleteSheet({ book, id }: Sheet): void {
  book.protection.checkStructure();
  for (const table of book.tables.list(id)) book.tables.remove(table);
  book.charts.removeOf(id);
  book.run(RemoveSheetCommand.id, { unitId: book.id, subUnitId: id });
}
