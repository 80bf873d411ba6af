import type { ICellData } from "@univerjs/core";
import { FormulaDataModel, LexerTreeBuilder } from "@univerjs/engine-formula";
import type { Area } from "./area";
import { type CellMatrix, contentOf, readValues, styleAt, writeCells } from "./cells";

type SortKey = { readonly column: number; readonly ascending: boolean };

/** Numbers, then text, then truth values, then errors; empty cells stay last in either order. */
function rank(value: unknown): number {
  if (value === "") return 4;
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

/** Sorts the rows of an area by columns counted from its first, as one undoable step. Equal rows keep their order. */
export function sortRows(area: Area, keys: readonly SortKey[], matchCase: boolean): void {
  const values = readValues(area);
  const order = values
    .map((row, index) => ({ row, index }))
    .sort((a, b) => {
      for (const { column, ascending } of keys) {
        const [left, right] = [a.row[column], b.row[column]];
        if (left === "" || right === "") {
          if (left !== right) return left === "" ? 1 : -1;
          continue;
        }
        const difference = compare(left, right, matchCase);
        if (difference !== 0) return ascending ? difference : -difference;
      }
      return 0;
    });
  const matrix = area.book.worksheet(area.sheetId).getCellMatrix();
  const model = area.book.injector.get(FormulaDataModel);
  const lexer = area.book.injector.get(LexerTreeBuilder);
  const cells: CellMatrix = {};
  order.forEach(({ index }, to) => {
    if (index === to) return;
    const inRow: Record<number, ICellData> = {};
    for (let column = area.column; column < area.column + area.columnCount; column += 1) {
      const cell = matrix.getValue(area.row + index, column);
      const formula =
        cell?.f || cell?.si ? model.getFormulaStringByCell(area.row + index, column, area.sheetId, area.book.id) : null;
      inRow[column] = {
        p: null,
        si: null,
        ref: null,
        f: formula ? lexer.moveFormulaRefOffset(formula, 0, to - index) : null,
        v: formula || contentOf(cell) === "" ? null : (cell?.v ?? null),
        ...(cell?.t ? { t: cell.t } : {}),
        s: styleAt(area, area.row + index, column),
      };
    }
    cells[area.row + to] = inRow;
  });
  writeCells(area, cells);
}
