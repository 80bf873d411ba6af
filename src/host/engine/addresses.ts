import type { Rectangle } from "./area";
import { isEntireColumn, isEntireRow, sheetColumns, sheetRows } from "./area";

/** "A", "B" .. "Z", "AA" .. of a column counted from 0. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** Column counted from 0 of its letters, in either case. */
export const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;

export const cellAddress = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

/** "B2", "B2:C9", "B:C", "2:9"; the whole sheet is "1:1048576". */
export function rectangleAddress(area: Rectangle): string {
  const { row, column, rowCount, columnCount } = area;
  if (isEntireRow(area)) return `${row + 1}:${row + rowCount}`;
  if (isEntireColumn(area)) return `${columnLetters(column)}:${columnLetters(column + columnCount - 1)}`;
  const first = cellAddress(row, column);
  return rowCount === 1 && columnCount === 1
    ? first
    : `${first}:${cellAddress(row + rowCount - 1, column + columnCount - 1)}`;
}

/** "$B$2:$C$9", "$B:$C", "$2:$9". */
export const absoluteAddress = (area: Rectangle): string => rectangleAddress(area).replace(/[A-Z]+|\d+/g, "$$$&");

/** A sheet's name before the "!": in quotes unless it is a plain word that is no cell address. */
export const quotedSheet = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) && !/^([A-Za-z]{1,3}\d+|[Rr]\d*[Cc]?\d*|[Cc]\d*)$/.test(name)
    ? name
    : `'${name.replaceAll("'", "''")}'`;

/** Splits "'Hop test'!A1:B2" into sheet and rest; `sheet` is null without one. */
export function splitSheet(address: string): { sheet: string | null; rest: string } {
  const mark = address.lastIndexOf("!");
  if (mark < 0) return { sheet: null, rest: address };
  const name = address.slice(0, mark).trim();
  const sheet = /^'.*'$/.test(name) ? name.slice(1, -1).replaceAll("''", "'") : name;
  return { sheet, rest: address.slice(mark + 1) };
}

const corner = /^\$?([A-Za-z]{1,3})\$?([1-9]\d{0,6})$/;

function between(first: number, last: number): [start: number, count: number] {
  return [Math.min(first, last), Math.abs(last - first) + 1];
}

/** Reads "A1", "$A$1:B2", "B:C" and "2:9"; null for anything else or outside the sheet. */
export function parseRectangle(address: string): Rectangle | null {
  const [from = "", to = from, ...more] = address.split(":").map((part) => part.trim());
  if (more.length) return null;
  const start = corner.exec(from);
  const end = corner.exec(to);
  if (start && end) {
    const [row, rowCount] = between(Number(start[2]) - 1, Number(end[2]) - 1);
    const [column, columnCount] = between(columnNumber(start[1]!), columnNumber(end[1]!));
    return row + rowCount > sheetRows || column + columnCount > sheetColumns
      ? null
      : { row, column, rowCount, columnCount };
  }
  if (!address.includes(":")) return null;
  const columns = [from, to].map((part) => /^\$?([A-Za-z]{1,3})$/.exec(part)?.[1]);
  if (columns[0] && columns[1]) {
    const [column, columnCount] = between(columnNumber(columns[0]), columnNumber(columns[1]));
    return column + columnCount > sheetColumns ? null : { row: 0, column, rowCount: sheetRows, columnCount };
  }
  const rows = [from, to].map((part) => /^\$?([1-9]\d{0,6})$/.exec(part)?.[1]);
  if (rows[0] && rows[1]) {
    const [row, rowCount] = between(Number(rows[0]) - 1, Number(rows[1]) - 1);
    return row + rowCount > sheetRows ? null : { row, column: 0, rowCount, columnCount: sheetColumns };
  }
  return null;
}

/** Splits "A1:B2,'a,b'!C3" at the commas outside quotes. */
export function splitAreas(address: string): string[] {
  const parts = [""];
  let quoted = false;
  for (const letter of address) {
    if (letter === "'") quoted = !quoted;
    if (letter === "," && !quoted) parts.push("");
    else parts[parts.length - 1] += letter;
  }
  return parts.map((part) => part.trim());
}
