import type { IWorkbookData } from "@univerjs/core";
import { LocaleType } from "@univerjs/core";
import { identityByPlace } from "./identity";

/**
 * How a fresh sheet starts: it grows when something is written beyond its rows and columns. Widths and heights in
 * pixels are Excel's 48 and 15 points.
 */
export const freshSheetSize = {
  rowCount: 1000,
  columnCount: 40,
  defaultColumnWidth: 64,
  defaultRowHeight: 20,
} as const;

const firstSheet = identityByPlace("sheets", 0);

/** A workbook with one empty sheet, as a new one in Excel. */
export const emptyWorkbook = (): Partial<IWorkbookData> => ({
  id: "workbook",
  name: "Book1",
  locale: LocaleType.EN_US,
  styles: {},
  sheetOrder: [firstSheet],
  sheets: { [firstSheet]: { id: firstSheet, name: "Sheet1", ...freshSheetSize } },
});
