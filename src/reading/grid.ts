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
  /** Offsets of rows and columns that lie between the coach's selected areas and were not selected themselves. */
  readonly unselectedRows: readonly number[];
  readonly unselectedColumns: readonly number[];
  /** Merged areas that touch the rectangle, e.g. "A3:A5". */
  readonly mergedAreas: readonly string[];
};

/** A cell's value. `null` is an empty cell, which is not 0. */
export type Cell = number | string | boolean | CellError | null;

export type CellError = { readonly error: string };

export const isCellError = (cell: Cell): cell is CellError => typeof cell === "object" && cell !== null;

/** What a cell says as text, without blanks around it; "" for an empty cell or an error. */
export const textOf = (cell: Cell): string => (cell === null || isCellError(cell) ? "" : String(cell).trim());
