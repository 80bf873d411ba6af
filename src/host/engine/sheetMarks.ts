import type { Sheet } from "./sheets";

/** What Excel keeps of a sheet's view that the engine has no place for. It stands in the `custom` of the sheet. */
export type SheetMarks = { hidesHeadings?: boolean; hidesDataTypeIcons?: boolean };

export const sheetMarks = ({ book, id }: Sheet): SheetMarks =>
  (book.worksheet(id).getConfig().custom ?? {}) as SheetMarks;

/** Undo does not cover it. */
export function markSheet({ book, id }: Sheet, marks: SheetMarks): void {
  const config = book.worksheet(id).getConfig();
  config.custom = { ...config.custom, ...marks };
}
