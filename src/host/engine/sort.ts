import type { ICellData } from "@univerjs/core";
import { FormulaDataModel, LexerTreeBuilder } from "@univerjs/engine-formula";
import type { Area } from "./area";
import { type CellMatrix, contentOf, readValues, styleAt, writeCells } from "./cells";

/** Where a line is looked at, counted from the area's edge, and in which order. */
type SortKey = { readonly at: number; readonly ascending: boolean };

/** Numbers, then text, then truth values, then errors; empty cells stay last in either order. */
function rank(value: unknown): number {
  if (typeof value === "number") return 0;
  if (typeof value === "boolean") return 2;
  return typeof value === "string" && value.startsWith("#") ? 3 : 1;
}

function compare(a: unknown, b: unknown, matchCase: boolean): number {
  if (rank(a) !== rank(b)) return rank(a) - rank(b);
  if (typeof a === "string" && typeof b === "string") {
    return a.localeCompare(b, "en", { sensitivity: matchCase ? "variant" : "accent" });
  }
  return Number(a) - Number(b);
}

/** The new order of lines of values. Equal lines keep their order. */
function sorted(lines: readonly (readonly unknown[])[], keys: readonly SortKey[], matchCase: boolean): number[] {
  return lines
    .map((_, index) => index)
    .sort((a, b) => {
      for (const { at, ascending } of keys) {
        const [left, right] = [lines[a]![at], lines[b]![at]];
        if (left === "" || right === "") {
          if (left !== right) return left === "" ? 1 : -1;
          continue;
        }
        const difference = compare(left, right, matchCase);
        if (difference !== 0) return ascending ? difference : -difference;
      }
      return a - b;
    });
}

/** Sorts the rows of an area, or its columns, as one undoable step. Formulas move with their cells. */
export function sortLines(area: Area, what: "rows" | "columns", keys: readonly SortKey[], matchCase: boolean): void {
  const byRows = what === "rows";
  const values = readValues(area);
  const lines = byRows
    ? values
    : Array.from({ length: area.columnCount }, (_, column) => values.map((row) => row[column]));
  const matrix = area.book.worksheet(area.sheetId).getCellMatrix();
  const model = area.book.injector.get(FormulaDataModel);
  const lexer = area.book.injector.get(LexerTreeBuilder);
  const cells: CellMatrix = {};
  sorted(lines, keys, matchCase).forEach((from, to) => {
    if (from === to) return;
    for (let index = 0; index < lines[from]!.length; index += 1) {
      const source = byRows
        ? { row: area.row + from, column: area.column + index }
        : { row: area.row + index, column: area.column + from };
      const target = byRows ? { ...source, row: area.row + to } : { ...source, column: area.column + to };
      const cell = matrix.getValue(source.row, source.column);
      const formula =
        cell?.f || cell?.si
          ? model.getFormulaStringByCell(source.row, source.column, area.sheetId, area.book.id)
          : null;
      const moved: ICellData = {
        p: null,
        si: null,
        ref: null,
        f: formula ? lexer.moveFormulaRefOffset(formula, target.column - source.column, target.row - source.row) : null,
        v: formula || contentOf(cell) === "" ? null : (cell?.v ?? null),
        ...(cell?.t ? { t: cell.t } : {}),
        s: styleAt(area, source.row, source.column),
        custom: cell?.custom ?? null,
      };
      cells[target.row] = { ...cells[target.row], [target.column]: moved };
    }
  });
  writeCells(area, cells);
  area.book.changes.tell({ kind: byRows ? "rowsSorted" : "columnsSorted", sheetId: area.sheetId, rectangle: area });
}
