import { CellValueType, type ICellData } from "@univerjs/core";

/**
 * A text with line breaks or looks of its own is kept by the grid as a small document beside the cell's value, or with
 * signs of its own between the lines. The value says the same in the form Excel has: lines parted by "\n".
 */
export function spellOut(cell: ICellData): void {
  const document = cell.p?.body?.dataStream;
  if (document !== undefined && (cell.v ?? null) === null && !cell.f) {
    cell.v = linesOf(document.replace(/\r\n$/, ""));
    cell.t = CellValueType.STRING;
  } else if (typeof cell.v === "string" && cell.v.includes("\r")) {
    cell.v = linesOf(cell.v);
  }
}

const linesOf = (text: string): string => text.replace(/\r\n?/g, "\n");
