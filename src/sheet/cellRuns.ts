import { areaAddress } from "../reading/address";

/** A cell of a sheet, zero-based. */
export type CellPlace = { readonly row: number; readonly column: number };

/** Cells below each other in one column, to be read or written at once. */
export type CellRun<Cell extends CellPlace> = {
  readonly row: number;
  readonly column: number;
  readonly address: string;
  readonly cells: readonly Cell[];
};

/** Joins cells that stand below each other, so that a long column is one write. */
export function cellRuns<Cell extends CellPlace>(cells: readonly Cell[]): CellRun<Cell>[] {
  const sorted = [...cells].sort((a, b) => a.column - b.column || a.row - b.row);
  const runs: Cell[][] = [];
  for (const cell of sorted) {
    const last = runs.at(-1)?.at(-1);
    if (last && last.column === cell.column && last.row === cell.row - 1) runs.at(-1)!.push(cell);
    else runs.push([cell]);
  }
  return runs.map((run) => {
    const { row, column } = run[0]!;
    return { row, column, address: areaAddress(row, column, run.length, 1), cells: run };
  });
}
