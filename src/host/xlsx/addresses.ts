import type { IRange } from "@univerjs/core";
import { XlsxRefusal } from "./refusal";

/** The grid of the file format. */
export const lastRow = 1048575;
export const lastColumn = 16383;

export type CellPosition = { readonly row: number; readonly column: number };

/** Zero-based position of "B3". */
export function cellPosition(address: string): CellPosition {
  const [, letters = "", digits = ""] = /^\$?([A-Z]{1,3})\$?(\d{1,7})$/i.exec(address) ?? [];
  const position = { row: Number(digits) - 1, column: columnNumber(letters) };
  if (position.row < 0 || position.row > lastRow || position.column < 0 || position.column > lastColumn) {
    throw new XlsxRefusal(`This file names a cell "${address.slice(0, 20)}", which no sheet has. It was not opened.`);
  }
  return position;
}

/** Range of "A1:C3" or "B3". */
export function rangeOf(reference: string): IRange {
  const [from = "", to = from] = reference.split(":");
  const [start, end] = [cellPosition(from), cellPosition(to)];
  return {
    startRow: Math.min(start.row, end.row),
    startColumn: Math.min(start.column, end.column),
    endRow: Math.max(start.row, end.row),
    endColumn: Math.max(start.column, end.column),
  };
}

/** Ranges of a list such as "A1:C3 E5". */
export const rangesOf = (references: string): IRange[] => references.trim().split(/\s+/).map(rangeOf);

export const cellAddress = (row: number, column: number): string => `${columnName(column)}${row + 1}`;

/** A range that leaves the sheet, as what a formula spills may, ends at its edge. */
export function rangeReference({ startRow, startColumn, endRow, endColumn }: IRange): string {
  const start = cellAddress(startRow, startColumn);
  const end = cellAddress(Math.min(endRow, lastRow), Math.min(endColumn, lastColumn));
  return start === end ? start : `${start}:${end}`;
}

export function columnName(column: number): string {
  let name = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  }
  return name;
}

export const columnNumber = (name: string): number =>
  [...name.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
