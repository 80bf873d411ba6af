import type { Area, Rectangle } from "./area";
import { bounding, intersection, sheetColumns, sheetRows } from "./area";
import { readValues } from "./cells";
import { wholeSheet } from "./references";
import { usedPart } from "./usedRange";

const isFilled = (area: Area): boolean => readValues(area).some((row) => row.some((value) => value !== ""));

/** The block around the area that is bordered by empty rows and columns or the sheet's edge. */
export function surroundingRegion(area: Area): Area {
  let region: Rectangle = { ...area };
  for (;;) {
    const row = Math.max(0, region.row - 1);
    const column = Math.max(0, region.column - 1);
    const around = {
      ...area,
      row,
      column,
      rowCount: Math.min(sheetRows, region.row + region.rowCount + 1) - row,
      columnCount: Math.min(sheetColumns, region.column + region.columnCount + 1) - column,
    };
    const used = usedPart(area.book, area.sheetId, around, true);
    const grown = used ? bounding(region, used) : region;
    if (grown.rowCount === region.rowCount && grown.columnCount === region.columnCount) {
      return { ...area, ...region };
    }
    region = grown;
  }
}

/** The cell Ctrl and an arrow would go to from the area's first cell. */
export function rangeEdge(area: Area, direction: string): Area {
  const [down, right] = { Up: [-1, 0], Down: [1, 0], Left: [0, -1], Right: [0, 1] }[direction] ?? [1, 0];
  let row = area.row;
  let column = area.column;
  const at = (r: number, c: number) => ({ ...area, row: r, column: c, rowCount: 1, columnCount: 1 });
  const onSheet = (r: number, c: number) => r >= 0 && c >= 0 && r < sheetRows && c < sheetColumns;
  const used = usedPart(area.book, area.sheetId, wholeSheet({ book: area.book, id: area.sheetId }), true);
  const inUsed = (r: number, c: number) => used !== null && intersection(used, at(r, c)) !== null;
  const startsInBlock =
    isFilled(at(row, column)) && onSheet(row + down!, column + right!) && isFilled(at(row + down!, column + right!));
  while (onSheet(row + down!, column + right!)) {
    const next = isFilled(at(row + down!, column + right!));
    if (startsInBlock && !next) break;
    row += down!;
    column += right!;
    if (!startsInBlock && next) break;
    if (!next && !inUsed(row, column) && !approaches(used, row, column, down!, right!)) {
      return at(
        down! < 0 ? 0 : down! > 0 ? sheetRows - 1 : row,
        right! < 0 ? 0 : right! > 0 ? sheetColumns - 1 : column,
      );
    }
  }
  return at(row, column);
}

/** Whether going on in this direction still leads into the used part. */
function approaches(used: Rectangle | null, row: number, column: number, down: number, right: number): boolean {
  if (!used) return false;
  if (down !== 0) {
    const inColumns = column >= used.column && column < used.column + used.columnCount;
    return inColumns && (down > 0 ? row < used.row : row >= used.row + used.rowCount);
  }
  const inRows = row >= used.row && row < used.row + used.rowCount;
  return inRows && (right > 0 ? column < used.column : column >= used.column + used.columnCount);
}
