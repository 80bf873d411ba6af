import { placeOf } from "./address";
import type { Grid } from "./grid";

export type MergedArea = {
  readonly address: string;
  /** Offset in the grid of the area's first row; negative where it begins above the grid. */
  readonly firstRow: number;
  readonly firstColumn: number;
};

/** Looks up the merged area that covers a cell, given by its offsets in the grid; null where there is none. */
export function mergedCells(grid: Grid): (row: number, column: number) => MergedArea | null {
  const covered = new Map<string, MergedArea>();
  for (const address of grid.mergedAreas) {
    const [from, to] = address.split(":").map(placeOf);
    const last = to ?? from!;
    const area = { address, firstRow: from!.row - grid.firstRow, firstColumn: from!.column - grid.firstColumn };
    const lastRow = Math.min(last.row - grid.firstRow, grid.cells.length - 1);
    const lastColumn = Math.min(last.column - grid.firstColumn, (grid.cells[0]?.length ?? 0) - 1);
    for (let row = Math.max(area.firstRow, 0); row <= lastRow; row++) {
      for (let column = Math.max(area.firstColumn, 0); column <= lastColumn; column++)
        covered.set(`${row},${column}`, area);
    }
  }
  return (row, column) => covered.get(`${row},${column}`) ?? null;
}
