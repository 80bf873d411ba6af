import {
  SetColHiddenCommand,
  SetColWidthCommand,
  SetRowHeightCommand,
  SetRowHiddenCommand,
  SetSpecificColsVisibleCommand,
  SetSpecificRowsVisibleCommand,
} from "@univerjs/sheets";
import type { Area } from "./area";
import { sheetColumns, sheetRows } from "./area";
import { readText } from "./cells";
import { toEngineRange } from "./tables";
import { usedPart } from "./usedRange";

/** The engine counts in pixels, Excel in points. */
const pointsPerPixel = 0.75;

type Place = Pick<Area, "book" | "sheetId">;

const sheetAt = ({ book, sheetId }: Place) => book.worksheet(sheetId);

/** Hidden by hand or by a filter. */
export const isRowHidden = (place: Place, row: number): boolean =>
  row < sheetAt(place).getRowCount() && !sheetAt(place).getRowVisible(row);

export const isColumnHidden = (place: Place, column: number): boolean =>
  column < sheetAt(place).getColumnCount() && !sheetAt(place).getColVisible(column);

export function setHidden(area: Area, what: "row" | "column", hidden: boolean): void {
  const { book, sheetId } = area;
  book.growTo(
    sheetId,
    what === "row" && area.rowCount < sheetRows ? area.row + area.rowCount : 1,
    what === "column" && area.columnCount < sheetColumns ? area.column + area.columnCount : 1,
  );
  const ranges = [clipped(area)];
  const command =
    what === "row"
      ? hidden
        ? SetRowHiddenCommand
        : SetSpecificRowsVisibleCommand
      : hidden
        ? SetColHiddenCommand
        : SetSpecificColsVisibleCommand;
  book.commands.syncExecuteCommand(command.id, { unitId: book.id, subUnitId: sheetId, ranges });
}

/** The area as far as the engine's sheet reaches, in the engine's words. */
function clipped(area: Area) {
  const sheet = sheetAt(area);
  const range = toEngineRange(area);
  return {
    ...range,
    endRow: Math.min(range.endRow, sheet.getRowCount() - 1),
    endColumn: Math.min(range.endColumn, sheet.getColumnCount() - 1),
  };
}

/** Widths in points of a column, heights of a row. */
export const columnWidth = (place: Place, column: number): number =>
  (isColumnHidden(place, column) ? 0 : sheetAt(place).getColumnWidth(column)) * pointsPerPixel;

export const rowHeight = (place: Place, row: number): number =>
  (isRowHidden(place, row) ? 0 : sheetAt(place).getRowHeight(row)) * pointsPerPixel;

export const standardWidth = (place: Place): number => sheetAt(place).getConfig().defaultColumnWidth * pointsPerPixel;

export const standardHeight = (place: Place): number => sheetAt(place).getConfig().defaultRowHeight * pointsPerPixel;

export function setColumnWidth(area: Area, points: number): void {
  const { book, sheetId } = area;
  book.growTo(sheetId, 1, area.columnCount < sheetColumns ? area.column + area.columnCount : 1);
  book.run(SetColWidthCommand.id, {
    unitId: book.id,
    subUnitId: sheetId,
    ranges: [clipped(area)],
    value: points / pointsPerPixel,
  });
}

export function setRowHeight(area: Area, points: number): void {
  const { book, sheetId } = area;
  book.growTo(sheetId, area.rowCount < sheetRows ? area.row + area.rowCount : 1, 1);
  book.run(SetRowHeightCommand.id, {
    unitId: book.id,
    subUnitId: sheetId,
    ranges: [clipped(area)],
    value: points / pointsPerPixel,
  });
}

/** Without a screen there are no measured letters: a letter counts 7 pixels, as the digits of Excel's standard font. */
export function autofitColumns(area: Area): void {
  const used = usedPart(area.book, area.sheetId, area, true);
  if (!used) return;
  readText({ ...used })
    .reduce<number[]>((longest, row) => {
      row.forEach((text, index) => {
        longest[index] = Math.max(longest[index] ?? 0, ...text.split("\n").map((line) => line.length));
      });
      return longest;
    }, [])
    .forEach((letters, index) => {
      if (letters > 0) {
        setColumnWidth({ ...used, column: used.column + index, columnCount: 1 }, (letters * 7 + 12) * pointsPerPixel);
      }
    });
}

const sum = (count: number, size: (index: number) => number): number => {
  let total = 0;
  for (let index = 0; index < count; index += 1) total += size(index);
  return total;
};

/** Distance of the area's corner from the sheet's, in points. */
export const offsetOf = (area: Area): { left: number; top: number } => ({
  left: sum(area.column, (column) => columnWidth(area, column)),
  top: sum(area.row, (row) => rowHeight(area, row)),
});

export const widthOf = (area: Area): number => sum(area.columnCount, (index) => columnWidth(area, area.column + index));

export const heightOf = (area: Area): number =>
  area.rowCount > 100_000
    ? area.rowCount * standardHeight(area)
    : sum(area.rowCount, (index) => rowHeight(area, area.row + index));
