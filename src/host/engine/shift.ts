import { Direction } from "@univerjs/core";
import {
  DeleteRangeMoveLeftCommand,
  DeleteRangeMoveUpCommand,
  InsertColByRangeCommand,
  InsertRangeMoveDownCommand,
  InsertRangeMoveRightCommand,
  InsertRowByRangeCommand,
  RemoveColByRangeCommand,
  RemoveRowByRangeCommand,
} from "@univerjs/sheets";
import type { Area } from "./area";
import { contains, intersection, isEntireColumn, isEntireRow, sheetColumns, sheetRows } from "./area";
import { activate, activeSheetId } from "./selection";
import { toEngineRange } from "./tables";
import { usedPart } from "./usedRange";

/** What cannot be shifted: "off sheet" content, or part of a "table". */
export class ShiftConflict extends Error {
  readonly reason: "offSheet" | "table";
  constructor(reason: "offSheet" | "table") {
    super(reason);
    this.reason = reason;
  }
}

/** Several of the engine's commands look at the active sheet, whichever sheet they are given. */
async function onSheet(area: Area, work: () => Promise<unknown>): Promise<void> {
  const { book, sheetId } = area;
  const active = activeSheetId(book);
  book.changes.silently(() => activate(book, sheetId));
  await work();
  book.changes.silently(() => activate(book, active));
}

/** Cells that move when the area is inserted or removed. */
const moving = (area: Area, down: boolean) =>
  down ? { ...area, rowCount: sheetRows - area.row } : { ...area, columnCount: sheetColumns - area.column };

function refuseTables(area: Area, down: boolean, own: string | undefined): void {
  const moved = moving(area, down);
  for (const { id, rectangle } of area.book.tables.list(area.sheetId)) {
    if (id === own) continue;
    const shared = intersection(moved, rectangle);
    if (shared && !contains(moved, rectangle)) throw new ShiftConflict("table");
  }
}

/** Pushes cells down or to the right to make room for the area; the table `own` may be parted by it. */
export async function insertCells(area: Area, shift: "Down" | "Right", own?: string): Promise<void> {
  const { book, sheetId } = area;
  const down = shift === "Down";
  const wholeRows = isEntireRow(area);
  const wholeColumns = isEntireColumn(area);
  const beyond = down
    ? { ...area, row: sheetRows - area.rowCount, rowCount: area.rowCount }
    : { ...area, column: sheetColumns - area.columnCount, columnCount: area.columnCount };
  if (usedPart(book, sheetId, beyond, true)) throw new ShiftConflict("offSheet");
  const place = { unitId: book.id, subUnitId: sheetId };
  if (wholeRows || wholeColumns) {
    book.growTo(sheetId, wholeRows ? area.row + 1 : 1, wholeColumns ? area.column + 1 : 1);
    const sheet = book.worksheet(sheetId);
    const range = wholeRows
      ? { ...toEngineRange(area), endColumn: sheet.getColumnCount() - 1 }
      : { ...toEngineRange(area), endRow: sheet.getRowCount() - 1 };
    const command = wholeRows ? InsertRowByRangeCommand : InsertColByRangeCommand;
    // New lines are like those before them; before the first there are none, so that they are like those behind.
    const isFirst = wholeRows ? area.row === 0 : area.column === 0;
    const direction = isFirst ? (wholeRows ? Direction.UP : Direction.LEFT) : undefined;
    await onSheet(area, () => book.commands.executeCommand(command.id, { ...place, range, direction }));
    return;
  }
  refuseTables(area, down, own);
  book.growTo(sheetId, area.row + area.rowCount, area.column + area.columnCount);
  const used = usedPart(book, sheetId, moving(area, down), false);
  if (used)
    book.growTo(sheetId, used.row + used.rowCount + area.rowCount, used.column + used.columnCount + area.columnCount);
  const command = down ? InsertRangeMoveDownCommand : InsertRangeMoveRightCommand;
  await book.changes.shifting({ kind: "CellInserted", sheetId, rectangle: area, shift }, () =>
    onSheet(area, () => book.commands.executeCommand(command.id, { range: toEngineRange(area) })),
  );
}

/** Removes the area's cells and pulls up or left what is behind them; the table `own` may be shortened by it. */
export async function removeCells(area: Area, shift: "Up" | "Left", own?: string): Promise<void> {
  const { book, sheetId } = area;
  const sheet = book.worksheet(sheetId);
  const place = { unitId: book.id, subUnitId: sheetId };
  const range = toEngineRange(area);
  const clipped = {
    ...range,
    endRow: Math.min(range.endRow, sheet.getRowCount() - 1),
    endColumn: Math.min(range.endColumn, sheet.getColumnCount() - 1),
  };
  if (clipped.startRow > clipped.endRow || clipped.startColumn > clipped.endColumn) return;
  if (isEntireRow(area) || isEntireColumn(area)) {
    const command = isEntireRow(area) ? RemoveRowByRangeCommand : RemoveColByRangeCommand;
    await onSheet(area, () => book.commands.executeCommand(command.id, { ...place, range: clipped }));
    return;
  }
  const up = shift === "Up";
  for (const table of book.tables.list(sheetId)) {
    if (table.id !== own && contains(area, table.rectangle)) book.tables.remove(table);
  }
  refuseTables(area, up, own);
  const command = up ? DeleteRangeMoveUpCommand : DeleteRangeMoveLeftCommand;
  await book.changes.shifting({ kind: "CellDeleted", sheetId, rectangle: area, shift }, () =>
    onSheet(area, () => book.commands.executeCommand(command.id, { range: clipped })),
  );
}
