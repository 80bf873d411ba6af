import type { IRange } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Area } from "./area";
import { contains } from "./area";

/** All areas that formulas of the sheet spilled into, each beginning at its formula. */
function spills(area: Area): Area[] {
  const ranges = (area.book.injector.get(FormulaDataModel).getArrayFormulaRange()[area.book.id]?.[area.sheetId] ??
    {}) as Record<number, Record<number, IRange>>;
  return Object.values(ranges).flatMap((row) =>
    Object.values(row ?? {}).map((range) => ({
      ...area,
      row: range.startRow,
      column: range.startColumn,
      rowCount: range.endRow - range.startRow + 1,
      columnCount: range.endColumn - range.startColumn + 1,
    })),
  );
}

/** What the formula in the area's first cell spilled into, or null where it does not spill. */
export const spillArea = (area: Area): Area | null =>
  spills(area).find(({ row, column }) => row === area.row && column === area.column) ?? null;

/** The cell whose formula spilled into the area's first cell, or null. */
export function spillAnchor(area: Area): Area | null {
  const cell = { row: area.row, column: area.column, rowCount: 1, columnCount: 1 };
  const found = spills(area).find((spill) => contains(spill, cell));
  return found ? { ...found, rowCount: 1, columnCount: 1 } : null;
}
