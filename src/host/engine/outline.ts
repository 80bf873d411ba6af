import { SetColDataCommand, SetRowDataCommand } from "@univerjs/sheets";
import type { Area } from "./area";
import { sheetColumns, sheetRows } from "./area";
import { setHidden } from "./layout";
import type { Sheet } from "./sheets";

/** Rows or columns. */
export type Lines = "row" | "column";

/** Groups lie in each other eight levels deep at most, the ungrouped lines among them. */
const deepest = 7;

/** How many groups a row or column is in: kept with the line, so that it moves with it. */
function levels({ book, id }: Sheet, lines: Lines): Map<number, number> {
  const sheet = book.worksheet(id);
  const found = new Map<number, number>();
  const data = lines === "row" ? sheet.getRowManager().getRowData() : sheet.getColumnManager().getColumnData();
  for (const [line, { custom }] of Object.entries(data as Record<number, { custom?: { outline?: number } }>)) {
    if (custom?.outline) found.set(Number(line), custom.outline);
  }
  return found;
}

const span = (area: Area, lines: Lines): [first: number, end: number] =>
  lines === "row" ? [area.row, area.row + area.rowCount] : [area.column, area.column + area.columnCount];

const lineArea = ({ book, id }: Sheet, lines: Lines, line: number): Area => ({
  book,
  sheetId: id,
  ...(lines === "row"
    ? { row: line, rowCount: 1, column: 0, columnCount: sheetColumns }
    : { row: 0, rowCount: sheetRows, column: line, columnCount: 1 }),
});

/** Why the lines cannot be put into one more group, or null. */
export function groupFault(area: Area, lines: Lines): string | null {
  const known = levels({ book: area.book, id: area.sheetId }, lines);
  const [first, end] = span(area, lines);
  if (end - first >= (lines === "row" ? sheetRows : sheetColumns)) return "All lines of a sheet are no group.";
  for (const [line, level] of known) {
    if (line >= first && line < end && level >= deepest) return "Groups have at most eight levels.";
  }
  return null;
}

/** Puts the lines into one more group (1), or takes them out of their innermost (-1). */
export function regroup(area: Area, lines: Lines, by: 1 | -1): void {
  const { book, sheetId } = area;
  const sheet = book.worksheet(sheetId);
  const known = levels({ book, id: sheetId }, lines);
  const [first, end] = span(area, lines);
  const data: Record<number, { custom: object }> = {};
  const touched =
    by > 0
      ? Array.from({ length: end - first }, (_, index) => first + index)
      : [...known.keys()].filter((line) => line >= first && line < end);
  for (const line of touched) {
    const before = lines === "row" ? sheet.getRowManager().getRow(line) : sheet.getColumnManager().getColumn(line);
    data[line] = { custom: { ...before?.custom, outline: (known.get(line) ?? 0) + by } };
  }
  if (touched.length === 0) return;
  book.protection.checkCells(sheetId, lines === "row" ? "allowFormatRows" : "allowFormatColumns");
  if (lines === "row") book.growTo(sheetId, end, 1);
  else book.growTo(sheetId, 1, end);
  book.run(lines === "row" ? SetRowDataCommand.id : SetColDataCommand.id, {
    unitId: book.id,
    subUnitId: sheetId,
    ...(lines === "row" ? { rowData: data } : { columnData: data }),
  });
}

/** Shows lines up to a level and hides those deeper; ungrouped lines are of level 1. */
export function showLevels(sheet: Sheet, lines: Lines, upTo: number): void {
  for (const [line, level] of levels(sheet, lines)) setHidden(lineArea(sheet, lines, line), lines, level >= upTo);
}

/** Hides or shows the groups that reach into the area: each with its lines beside the area. */
export function showDetails(area: Area, lines: Lines, shown: boolean): void {
  const sheet = { book: area.book, id: area.sheetId };
  const known = levels(sheet, lines);
  const [first, end] = span(area, lines);
  const changed = new Set<number>();
  for (const [line, level] of known) {
    if (line < first || line >= end) continue;
    for (const step of [1, -1]) {
      for (let at = line; (known.get(at) ?? 0) >= level; at += step) changed.add(at);
    }
  }
  for (const line of changed) setHidden(lineArea(sheet, lines, line), lines, !shown);
}
