import type { Grid } from "./grid";

/** "A", "B" .. "Z", "AA" .. of a zero-based column. */
export function columnLetters(column: number): string {
  let letters = "";
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return letters;
}

/** Address such as "B3" of a cell given by its offsets in the grid. */
export const addressOf = (grid: Pick<Grid, "firstRow" | "firstColumn">, row: number, column: number): string =>
  `${columnLetters(grid.firstColumn + column)}${grid.firstRow + row + 1}`;

/** Address such as "A3:G28" of a rectangle, zero-based; "A3" where it is one cell. */
export function areaAddress(row: number, column: number, rowCount: number, columnCount: number): string {
  const first = `${columnLetters(column)}${row + 1}`;
  const last = `${columnLetters(column + columnCount - 1)}${row + rowCount}`;
  return first === last ? first : `${first}:${last}`;
}

/** Sheet name as it stands before the "!" of an address: quoted where the grammar asks for it. */
export const quotedSheet = (sheet: string): string =>
  /^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet) && !/^[A-Za-z]{1,3}\d+$/.test(sheet)
    ? sheet
    : `'${sheet.replace(/'/g, "''")}'`;

/** Full address of the grid, e.g. "'Hop test'!A3:G28". */
export const gridAddress = (grid: Grid): string =>
  `${quotedSheet(grid.sheet)}!${areaAddress(grid.firstRow, grid.firstColumn, grid.cells.length, grid.cells[0]?.length ?? 1)}`;

/** Zero-based row and column of an address such as "$C$7" or "'Hop test'!C7". */
export function placeOf(address: string): { readonly row: number; readonly column: number } {
  const match = /([A-Za-z]+)(\d+)$/.exec(address.replace(/\$/g, ""));
  if (!match) throw new Error(`Not a cell address: ${address}`);
  let column = 0;
  for (const letter of match[1]!.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return { row: Number(match[2]) - 1, column: column - 1 };
}

/** Sheet order: from top to bottom, then from left to right. */
export function compareAddresses(a: string, b: string): number {
  const first = placeOf(a);
  const second = placeOf(b);
  return first.row - second.row || first.column - second.column;
}
