import type { CustomData, ICellData, Nullable } from "@univerjs/core";
import { FormulaDataModel, LexerTreeBuilder } from "@univerjs/engine-formula";
import type { Area } from "./area";
import { lookMarks } from "./cellMarks";
import { type CellMatrix, contentOf, styleAt, writeCells } from "./cells";

type CopyOptions = {
  readonly kind: "All" | "Values" | "Formulas" | "Formats" | "Move";
  readonly skipBlanks: boolean;
  readonly transpose: boolean;
};

/**
 * Copies cells, repeating the source where the destination is a multiple of it; relative references in formulas move
 * along, unless the cells themselves move. A destination too small grows to the source's size, as in Excel.
 */
export function copyCells(source: Area, destination: Area, { kind, skipBlanks, transpose }: CopyOptions): void {
  const height = transpose ? source.columnCount : source.rowCount;
  const width = transpose ? source.rowCount : source.columnCount;
  const fits = destination.rowCount % height === 0 && destination.columnCount % width === 0;
  const rowCount = fits ? destination.rowCount : height;
  const columnCount = fits ? destination.columnCount : width;
  const from = source.book.worksheet(source.sheetId).getCellMatrix();
  const model = source.book.injector.get(FormulaDataModel);
  const lexer = source.book.injector.get(LexerTreeBuilder);
  const cells: CellMatrix = {};
  for (let r = 0; r < rowCount; r += 1) {
    const inRow: Record<number, ICellData> = {};
    for (let c = 0; c < columnCount; c += 1) {
      const row = source.row + (transpose ? c % width : r % height);
      const column = source.column + (transpose ? r % height : c % width);
      const cell = from.getValue(row, column);
      const formula =
        cell?.f || cell?.si ? model.getFormulaStringByCell(row, column, source.sheetId, source.book.id) : null;
      if (skipBlanks && contentOf(cell) === "" && !formula) continue;
      const copy: ICellData = {};
      if (kind !== "Formats") {
        const withFormula = formula && kind !== "Values";
        Object.assign(copy, { p: null, si: null, ref: null, f: null, v: null });
        if (withFormula) {
          const [x, y] = [destination.column + c - column, destination.row + r - row];
          copy.f = kind === "Move" ? formula : lexer.moveFormulaRefOffset(formula, x, y);
        } else {
          copy.v = cell?.v ?? null;
          if (cell?.t) copy.t = cell.t;
        }
      }
      if (kind === "All" || kind === "Formats" || kind === "Move") {
        copy.s = styleAt(source, row, column);
        copy.custom = copiedMarks(cell?.custom, kind);
      }
      inRow[destination.column + c] = copy;
    }
    cells[destination.row + r] = inRow;
  }
  writeCells(destination, cells);
}

/** A copy has everything but the comment, which stands where it was unless the cell itself moves. */
function copiedMarks(custom: Nullable<CustomData>, kind: "All" | "Formats" | "Move"): CustomData | null {
  if (!custom) return null;
  const copied = Object.entries(custom).filter(
    ([key]) => kind === "Move" || (kind === "All" ? key !== "comment" : lookMarks.includes(key as never)),
  );
  return Object.fromEntries(copied);
}
