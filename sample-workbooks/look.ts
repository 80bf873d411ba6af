import type { Cell, Column, Worksheet } from "exceljs";

/** How the sample sheets are dressed: quiet lines, one colour for headings, numbers that line up. */
const ink = "FF1D2B2A";
const accent = "FF0F6B5C";
const headingFill = "FFE3EEEA";
const quietInk = "FF5B6B68";
const hairline = "FFD9DFDC";

export const typeface = "Calibri";

export function setTitle(sheet: Worksheet, title: string, explanation: string): void {
  const titleCell = sheet.getCell("A1");
  titleCell.value = title;
  titleCell.font = { name: typeface, size: 15, bold: true, color: { argb: accent } };
  sheet.getRow(1).height = 24;
  const explanationCell = sheet.getCell("A2");
  explanationCell.value = explanation;
  explanationCell.font = { name: typeface, size: 10, color: { argb: quietInk } };
  sheet.getRow(2).height = 18;
}

export function setHeadings(sheet: Worksheet, row: number, headings: readonly string[], textColumns: number): void {
  sheet.getRow(row).height = 20;
  headings.forEach((heading, index) => {
    const cell = sheet.getCell(row, index + 1);
    cell.value = heading;
    cell.font = { name: typeface, size: 11, bold: true, color: { argb: ink } };
    cell.fill = { type: "pattern", pattern: "solid", fgColor: { argb: headingFill } };
    cell.border = { bottom: { style: "medium", color: { argb: accent } } };
    cell.alignment = { vertical: "middle", horizontal: index < textColumns ? "left" : "right" };
  });
}

/** Long headings over narrow columns stand in several lines. */
export function wrapHeadings(sheet: Worksheet, row: number, height: number): void {
  sheet.getRow(row).height = height;
  sheet.getRow(row).eachCell((cell) => {
    cell.alignment = { ...cell.alignment, wrapText: true, vertical: "bottom" };
  });
}

/** A real day, shown as 2026-08-18 whatever the language of the program. */
export function dressDate(cell: Cell): void {
  dressText(cell);
  cell.numFmt = "yyyy-mm-dd";
  cell.alignment = { horizontal: "left" };
}

export function dressText(cell: Cell): void {
  cell.font = { name: typeface, size: 11, color: { argb: ink } };
  cell.border = { bottom: { style: "hair", color: { argb: hairline } } };
}

export function dressNumber(cell: Cell, numberFormat: string): void {
  dressText(cell);
  cell.numFmt = numberFormat;
  cell.alignment = { horizontal: "right" };
}

export function setWidths(sheet: Worksheet, widths: readonly number[]): void {
  sheet.columns = widths.map((width): Partial<Column> => ({ width }));
}

/** Title and headings stay in sight while the squad scrolls; so does the column of names. */
export function freezeBelow(sheet: Worksheet, row: number): void {
  sheet.views = [{ state: "frozen", xSplit: 1, ySplit: row, showGridLines: false }];
}
