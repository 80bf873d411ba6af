import type { Cell, Grid } from "../../src/reading/grid";

/** A grid whose first cell is `A1`, unless told otherwise. Shorter rows are filled up with empty cells. */
export function gridOf(rows: readonly (readonly Cell[])[], more: Partial<Grid> = {}): Grid {
  const width = Math.max(...rows.map((row) => row.length));
  return {
    sheet: "Test",
    firstRow: 0,
    firstColumn: 0,
    cells: rows.map((row) => [...row, ...Array<null>(width - row.length).fill(null)]),
    hiddenRows: [],
    mergedAreas: [],
    unselectedRows: [],
    unselectedColumns: [],
    ...more,
  };
}
