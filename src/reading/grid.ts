/** What a rectangle of the workbook holds, as read: the one shape in which cells leave the sheet layer. */
export type Grid = {
  /** Name of the worksheet, as the coach sees it. */
  readonly sheet: string;
  /** Zero-based row and column of the top left cell on its sheet. */
  readonly firstRow: number;
  readonly firstColumn: number;
  /** Row by row, all rows of one length. */
  readonly cells: readonly (readonly Cell[])[];
  /** Offsets (from `firstRow`) of rows that are hidden by hand or by a filter. */
  readonly hiddenRows: readonly number[];
  /** Merged areas that touch the rectangle, e.g. "A3:A5". */
  readonly mergedAreas: readonly string[];
};

/** A cell's value. `null` is an empty cell, which is not 0. */
export type Cell = number | string | boolean | CellError | null;

export type CellError = { readonly error: string };

export const isCellError = (cell: Cell): cell is CellError => typeof cell === "object" && cell !== null;

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
