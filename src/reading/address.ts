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

/** Sheet name as it stands before the "!" of an address: quoted where the grammar asks for it. */
export const quotedSheet = (sheet: string): string =>
  /^[A-Za-z_][A-Za-z0-9_]*$/.test(sheet) && !/^[A-Za-z]{1,3}\d+$/.test(sheet)
    ? sheet
    : `'${sheet.replace(/'/g, "''")}'`;

/** Full address of the grid, e.g. "'Hop test'!A3:G28". */
export function gridAddress(grid: Grid): string {
  const last = addressOf(grid, Math.max(grid.cells.length - 1, 0), Math.max((grid.cells[0]?.length ?? 1) - 1, 0));
  return `${quotedSheet(grid.sheet)}!${addressOf(grid, 0, 0)}:${last}`;
}

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
