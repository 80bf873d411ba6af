import type { Cell, Grid } from "../reading/grid";
import { areasOf, splitAreas } from "./areas";
import { trapHost } from "./hostRefusal";

/** Cells of the workbook to work on, or nothing to read. */
export type Selection =
  | {
      readonly kind: "cells";
      readonly grid: Grid;
      /** Identity of the sheet, which outlives a change of its name. */
      readonly sheetId: string;
      /** The one cell that was selected, where the block of cells around it was read instead. */
      readonly grownFrom: string | null;
    }
  | { readonly kind: "empty"; readonly sheet: string; readonly address: string };

/**
 * Reads the coach's selection in two round trips, whatever its size: only the part that holds values (a whole column
 * has 1,048,576 rows), several areas as the rectangle around them, a single cell as the block of cells it stands in.
 */
export const readSelection = (): Promise<Selection> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Selection> => {
      const selected = context.workbook.getSelectedRanges();
      selected.load("address,cellCount,areaCount");
      const used = selected.getUsedRangeAreasOrNullObject(true);
      used.load("address");
      const sheet = selected.worksheet;
      sheet.load("name,id");
      await context.sync();

      const single = selected.areaCount === 1 && selected.cellCount === 1;
      if (single) {
        const cell = splitAreas(selected.address)[0]!;
        return readGrid(context, sheet, sheet.getRange(cell).getSurroundingRegion(), { grownFrom: cell });
      }
      if (used.isNullObject)
        return { kind: "empty", sheet: sheet.name, address: splitAreas(selected.address).join(", ") };
      const { address, rows, columns } = areasOf(used.address);
      return readGrid(context, sheet, sheet.getRange(address), { rows, columns });
    }),
  );

/** Reads the same cells once more, after the coach has edited some of them. */
export const readAgain = ({ grid, sheetId, grownFrom }: Selection & { kind: "cells" }): Promise<Selection> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem(sheetId);
      sheet.load("name,id");
      if (grownFrom !== null) {
        return readGrid(context, sheet, sheet.getRange(grownFrom).getSurroundingRegion(), { grownFrom });
      }
      const { firstRow, firstColumn, cells } = grid;
      const range = sheet.getRangeByIndexes(firstRow, firstColumn, cells.length, cells[0]!.length);
      const again = await readGrid(context, sheet, range, {});
      if (again.kind === "empty") return again;
      const { unselectedRows, unselectedColumns } = grid;
      return { ...again, grid: { ...again.grid, unselectedRows, unselectedColumns } };
    }),
  );

type Extent = {
  readonly grownFrom?: string | null;
  /** Rows and columns of the sheet that the selected areas cover; all, where they are not given. */
  readonly rows?: ReadonlySet<number>;
  readonly columns?: ReadonlySet<number>;
};

async function readGrid(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  range: Excel.Range,
  { grownFrom = null, rows, columns }: Extent,
): Promise<Selection> {
  range.load("address,values,valueTypes,rowIndex,columnIndex");
  const merged = range.getMergedAreasOrNullObject();
  merged.load("address");
  const rowProperties = range.getRowProperties({ rowHidden: true });
  await context.sync();

  const cells = range.values.map((row, r) => row.map((value, c) => cellOf(value, range.valueTypes[r]![c]!)));
  if (cells.every((row) => row.every((cell) => cell === null))) {
    return { kind: "empty", sheet: sheet.name, address: splitAreas(range.address)[0]! };
  }
  const grid: Grid = {
    sheet: sheet.name,
    firstRow: range.rowIndex,
    firstColumn: range.columnIndex,
    cells,
    hiddenRows: rowProperties.value.flatMap((row, offset) => (row.rowHidden ? [offset] : [])),
    mergedAreas: merged.isNullObject ? [] : splitAreas(merged.address),
    unselectedRows: uncovered(cells.length, range.rowIndex, rows),
    unselectedColumns: uncovered(cells[0]!.length, range.columnIndex, columns),
  };
  return { kind: "cells", grid, sheetId: sheet.id, grownFrom };
}

/** Offsets, from `first`, of the lines that no selected area covers. */
const uncovered = (count: number, first: number, covered: ReadonlySet<number> | undefined): number[] =>
  covered ? Array.from({ length: count }, (_, offset) => offset).filter((offset) => !covered.has(first + offset)) : [];

function cellOf(value: unknown, type: Excel.RangeValueType | `${Excel.RangeValueType}`): Cell {
  if (type === "Empty") return null;
  if (type === "Error") return { error: String(value) };
  if (typeof value === "number" || typeof value === "boolean") return value;
  return String(value);
}
