import { SetColDataCommand, SetRowDataCommand } from "@univerjs/sheets";
import type { Area } from "./area";
import { intersection, isEntireColumn, isEntireRow } from "./area";
import type { CellMarks } from "./cellMarks";
import { type CellMatrix, writeCells } from "./cells";

/** Marks with nothing in them are none. */
const present = (marks: CellMarks): CellMarks =>
  Object.fromEntries(Object.entries(marks).filter(([, value]) => value !== undefined && value !== null));

type Changed = { readonly [Key in keyof CellMarks]?: CellMarks[Key] | null };

/** The cells of the engine's sheet that lie in the area. */
function existing(area: Area): [row: number, column: number, marks: CellMarks][] {
  const cells: [number, number, CellMarks][] = [];
  area.book
    .worksheet(area.sheetId)
    .getCellMatrix()
    .forValue((row, column, cell) => {
      if (intersection(area, { row, column, rowCount: 1, columnCount: 1 })) {
        cells.push([row, column, (cell?.custom ?? {}) as CellMarks]);
      }
    });
  return cells;
}

/** Sets marks in all cells of the areas, or with null takes them away, as one undoable step for each area. */
export function mark(areas: readonly Area[], changed: Changed): void {
  for (const area of areas) {
    const whole = isEntireColumn(area) || isEntireRow(area);
    if (whole) markLines(area, changed);
    const cells: CellMatrix = {};
    const put = (row: number, column: number, own: CellMarks) => {
      const inRow = cells[row] ?? {};
      inRow[column] = { custom: present({ ...own, ...changed } as CellMarks) };
      cells[row] = inRow;
    };
    if (whole) {
      // Cells without a mark of their own have that of their line.
      for (const [row, column, own] of existing(area)) {
        if (Object.keys(changed).some((key) => key in own)) put(row, column, own);
      }
    } else {
      const matrix = area.book.worksheet(area.sheetId).getCellMatrix();
      for (let row = area.row; row < area.row + area.rowCount; row += 1) {
        for (let column = area.column; column < area.column + area.columnCount; column += 1) {
          put(row, column, (matrix.getValue(row, column)?.custom ?? {}) as CellMarks);
        }
      }
    }
    writeCells(area, cells);
  }
}

/** Marks whole rows, whole columns or the sheet itself. */
function markLines(area: Area, changed: Changed): void {
  const { book, sheetId } = area;
  const sheet = book.worksheet(sheetId);
  const marked = (before: unknown) => present({ ...(before as CellMarks), ...changed } as CellMarks);
  if (isEntireColumn(area) && isEntireRow(area)) {
    const config = sheet.getConfig();
    config.custom = marked(config.custom);
    return;
  }
  book.protection.checkCells(sheetId, "allowFormatCells");
  const byColumn = isEntireColumn(area);
  const lines: Record<number, { custom: CellMarks }> = {};
  const [first, count] = byColumn ? [area.column, area.columnCount] : [area.row, area.rowCount];
  for (let line = first; line < first + count; line += 1) {
    const before = byColumn ? sheet.getColumnManager().getColumn(line) : sheet.getRowManager().getRow(line);
    lines[line] = { custom: marked(before?.custom) };
  }
  book.run(byColumn ? SetColDataCommand.id : SetRowDataCommand.id, {
    unitId: book.id,
    subUnitId: sheetId,
    ...(byColumn ? { columnData: lines } : { rowData: lines }),
  });
}
