import type { ICellData, IStyleData, Nullable } from "@univerjs/core";
import { CellValueType, numfmt } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SetRangeValuesCommand } from "@univerjs/sheets";
import type { Area } from "./area";
import { markAt } from "./cellMarks";
import { enter, errorValues } from "./entry";

export type CellContent = number | string | boolean;
export type ValueType = "Empty" | "String" | "Double" | "Boolean" | "Error";
export type CellMatrix = Record<number, Record<number, ICellData>>;

/** Calls back for each cell with what it shows: its own content or what a formula spilled into it. */
function eachCell(area: Area, visit: (cell: Nullable<ICellData>, row: number, column: number) => void): void {
  const { book, sheetId, row, column, rowCount, columnCount } = area;
  const own = book.worksheet(sheetId).getCellMatrix().getMatrix();
  const spilled = book.injector.get(FormulaDataModel).getArrayFormulaCellData()?.[book.id]?.[sheetId];
  for (let r = row; r < row + rowCount; r += 1) {
    const ownRow = own[r];
    const spilledRow = spilled?.[r];
    for (let c = column; c < column + columnCount; c += 1) {
      const cell = ownRow?.[c];
      if (book.circular.has(sheetId, r, c)) {
        visit({ ...cell, v: "#CYCLE!", t: CellValueType.STRING }, r, c);
        continue;
      }
      visit((cell?.v ?? null) === null ? (spilledRow?.[c] ?? cell) : cell, r, c);
    }
  }
}

/** One row per row of the area, each cell by `read`. */
function grid<T>(area: Area, read: (cell: Nullable<ICellData>, row: number, column: number) => T): T[][] {
  const rows: T[][] = [];
  let cells: T[] = [];
  let at = -1;
  eachCell(area, (cell, row, column) => {
    if (row !== at) {
      cells = [];
      rows.push(cells);
      at = row;
    }
    cells.push(read(cell, row, column));
  });
  return rows;
}

/** A cell's value at full precision; "" when empty. */
export function contentOf(cell: Nullable<ICellData>): CellContent {
  const value = cell?.v ?? "";
  if (cell?.t === CellValueType.BOOLEAN) return value === 1 || value === true || value === "1" || value === "TRUE";
  return value;
}

export function typeOf(cell: Nullable<ICellData>): ValueType {
  const content = contentOf(cell);
  if (typeof content === "number") return "Double";
  if (typeof content === "boolean") return "Boolean";
  if (content === "") return cell?.f ? "String" : "Empty";
  return cell?.t !== CellValueType.FORCE_STRING && errorValues.has(content) ? "Error" : "String";
}

/** Values row by row. What is read most is read in the tightest loop: no call for a plain number or text. */
export function readValues(area: Area): CellContent[][] {
  const { book, sheetId, row, column, rowCount, columnCount } = area;
  const own = book.worksheet(sheetId).getCellMatrix().getMatrix();
  const spilled = book.injector.get(FormulaDataModel).getArrayFormulaCellData()?.[book.id]?.[sheetId];
  if (spilled || book.circular.addresses.length > 0) return grid(area, contentOf);
  const rows: CellContent[][] = new Array(rowCount);
  for (let r = 0; r < rowCount; r += 1) {
    const cells = own[row + r];
    const values: CellContent[] = new Array(columnCount);
    for (let c = 0; c < columnCount; c += 1) {
      const cell = cells?.[column + c];
      const value = cell?.v;
      values[c] =
        value === undefined || value === null ? "" : cell?.t === CellValueType.BOOLEAN ? contentOf(cell) : value;
    }
    rows[r] = values;
  }
  return rows;
}

export const readTypes = (area: Area): ValueType[][] => grid(area, typeOf);

/** Formulas as a coach typed them; where there is none, the value. */
export function readFormulas(area: Area): CellContent[][] {
  const model = area.book.injector.get(FormulaDataModel);
  return grid(area, (cell, row, column) => {
    const formula = cell?.f || cell?.si ? model.getFormulaStringByCell(row, column, area.sheetId, area.book.id) : null;
    return formula ? area.book.formulas.shown(formula, { sheetId: area.sheetId, row, column }) : contentOf(cell);
  });
}

export const readFormats = (area: Area): string[][] => grid(area, (_cell, row, column) => formatAt(area, row, column));

/** What the cells show: values in their number formats. */
export const readText = (area: Area): string[][] =>
  grid(area, (cell, row, column) => {
    const content = contentOf(cell);
    if (content === "") return "";
    if (typeof content === "boolean") return content ? "TRUE" : "FALSE";
    if (typeof content === "string" && typeOf(cell) === "Error") return content;
    return numfmt.format(formatAt(area, row, column), content, { throws: false });
  });

/** The style a cell has of itself, its row or its column; nothing of a table's look or a conditional format. */
export function styleAt({ book, sheetId }: Pick<Area, "book" | "sheetId">, row: number, column: number): IStyleData {
  const sheet = book.worksheet(sheetId);
  const styles = book.workbook.getStyles();
  const own = styles.getStyleByCell(sheet.getCellMatrix().getValue(row, column));
  const ofRow = sheet.getRowManager().getRow(row)?.s;
  const ofColumn = sheet.getColumnManager().getColumn(column)?.s;
  if (!ofRow && !ofColumn) return own ?? {};
  return { ...(ofColumn ? styles.get(ofColumn) : {}), ...(ofRow ? styles.get(ofRow) : {}), ...own };
}

export const formatAt = (place: Pick<Area, "book" | "sheetId">, row: number, column: number): string =>
  styleAt(place, row, column).n?.pattern || "General";

function place(cells: CellMatrix, row: number, column: number, cell: ICellData): void {
  const inRow = cells[row] ?? {};
  inRow[column] = cell;
  cells[row] = inRow;
}

/** Writes cells as one undoable step. */
export function writeCells(area: Pick<Area, "book" | "sheetId">, cells: CellMatrix): void {
  const rows = Object.keys(cells).map(Number);
  if (rows.length === 0) return;
  const onlyLook = rows.every((row) => Object.values(cells[row]!).every((cell) => !("v" in cell) && !("f" in cell)));
  if (onlyLook || !areUnlocked(area, cells)) {
    area.book.protection.checkCells(area.sheetId, onlyLook ? "allowFormatCells" : undefined);
  }
  const lastColumn = rows.reduce(
    (last, row) => Object.keys(cells[row]!).reduce((most, column) => Math.max(most, Number(column)), last),
    0,
  );
  const lastRow = rows.reduce((last, row) => Math.max(last, row), 0);
  area.book.growTo(area.sheetId, lastRow + 1, lastColumn + 1);
  area.book.run(SetRangeValuesCommand.id, {
    unitId: area.book.id,
    subUnitId: area.sheetId,
    // The command takes its cells from `value`; without any range, and with nothing selected, it does nothing.
    range: { startRow: rows[0]!, endRow: lastRow, startColumn: 0, endColumn: lastColumn },
    value: onlyLook ? keepingFormulas(area, cells) : cells,
  });
}

/** Whether all the cells may be written to although their sheet is protected. */
const areUnlocked = (place: Pick<Area, "book" | "sheetId">, cells: CellMatrix): boolean =>
  place.book.protection.sheet(place.sheetId) !== null &&
  Object.entries(cells).every(([row, inRow]) =>
    Object.keys(inRow).every((column) => markAt(place, Number(row), Number(column), "locked") === false),
  );

/** The engine clears the formula of a cell that is written without one, also where only its look is written. */
function keepingFormulas({ book, sheetId }: Pick<Area, "book" | "sheetId">, cells: CellMatrix): CellMatrix {
  const matrix = book.worksheet(sheetId).getCellMatrix();
  for (const [row, inRow] of Object.entries(cells)) {
    for (const [column, cell] of Object.entries(inRow)) {
      const own = matrix.getValue(Number(row), Number(column));
      if (own?.f) cell.f = own.f;
      if (own?.si) cell.si = own.si;
    }
  }
  return cells;
}

/**
 * Enters values row by row as if typed; `null` and `undefined` leave a cell as it is. Throws nothing: the caller has
 * checked the shape and the formulas.
 */
export function writeValues(area: Area, values: readonly (readonly unknown[])[]): void {
  const cells: CellMatrix = {};
  values.forEach((valuesOfRow, r) => {
    valuesOfRow.forEach((value, c) => {
      if (value === null || value === undefined) return;
      const row = area.row + r;
      const column = area.column + c;
      const entry = enter(value, formatAt(area, row, column));
      const cell: ICellData = { p: null, f: null, si: null, ref: null, v: null };
      if (entry.kind === "formula") {
        cell.f = entry.formula;
      } else if (entry.kind === "value") {
        Object.assign(cell, entry.cell);
        if (entry.format) cell.s = { n: { pattern: entry.format } };
      }
      place(cells, row, column, cell);
    });
  });
  writeCells(area, cells);
}

/** Merges a style into every cell of the area as one undoable step. */
export function writeStyle(area: Area, styleOf: (row: number, column: number) => IStyleData | null): void {
  const cells: CellMatrix = {};
  for (let row = area.row; row < area.row + area.rowCount; row += 1) {
    for (let column = area.column; column < area.column + area.columnCount; column += 1) {
      const s = styleOf(row, column);
      if (!s) continue;
      place(cells, row, column, { s });
    }
  }
  writeCells(area, cells);
}
