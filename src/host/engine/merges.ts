import { AddWorksheetMergeMutation, RemoveWorksheetMergeMutation } from "@univerjs/sheets";
import type { Area } from "./area";
import { intersection } from "./area";
import { contentOf } from "./cells";
import { clear } from "./clear";
import { toEngineRange } from "./tables";

/** Merged areas that touch the area, whole. */
export function mergedAreas(area: Area): Area[] {
  return area.book
    .worksheet(area.sheetId)
    .getMergeData()
    .map((range) => ({
      ...area,
      row: range.startRow,
      column: range.startColumn,
      rowCount: range.endRow - range.startRow + 1,
      columnCount: range.endColumn - range.startColumn + 1,
    }))
    .filter((merged) => intersection(merged, area) !== null);
}

/** Merges the area, or each of its rows; only the first cell keeps its content. */
export function merge(area: Area, across: boolean): void {
  const parts = across
    ? Array.from({ length: area.rowCount }, (_, r) => ({ ...area, row: area.row + r, rowCount: 1 }))
    : [area];
  unmerge(area);
  for (const part of parts) {
    if (part.rowCount * part.columnCount === 1) continue;
    const cells = area.book.worksheet(area.sheetId).getCellMatrix();
    const kept = contentOf(cells.getValue(part.row, part.column)) !== "";
    if (part.columnCount > 1)
      clear({ ...part, column: part.column + 1, columnCount: part.columnCount - 1 }, "Contents");
    if (part.rowCount > 1 && kept) {
      clear({ ...part, row: part.row + 1, rowCount: part.rowCount - 1, columnCount: 1 }, "Contents");
    }
    area.book.growTo(area.sheetId, part.row + part.rowCount, part.column + part.columnCount);
    area.book.run(AddWorksheetMergeMutation.id, {
      unitId: area.book.id,
      subUnitId: area.sheetId,
      ranges: [toEngineRange(part)],
    });
  }
}

export function unmerge(area: Area): void {
  const ranges = mergedAreas(area).map(toEngineRange);
  if (ranges.length === 0) return;
  area.book.run(RemoveWorksheetMergeMutation.id, { unitId: area.book.id, subUnitId: area.sheetId, ranges });
}
