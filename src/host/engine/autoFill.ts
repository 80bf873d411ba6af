import type { ICellData } from "@univerjs/core";
import { FormulaDataModel, LexerTreeBuilder } from "@univerjs/engine-formula";
import type { Area } from "./area";
import { type CellMatrix, contentOf, styleAt, writeCells } from "./cells";

/** Excel.AutoFillType, as far as the host fills. */
export type FillKind = "FillDefault" | "FillCopy" | "FillSeries" | "FillFormats" | "FillValues";

/** "Week 1" -> ["Week ", 1]; text without a number at its end has none. */
function numbered(value: unknown): readonly [text: string, number: number] | null {
  const [, text, digits] = /^(.*\D)(\d{1,9})$/s.exec(String(value)) ?? [];
  return typeof value === "string" && text !== undefined ? [text, Number(digits)] : null;
}

/** The step of a run of numbers, by least squares; one number alone has none. */
function stepOf(numbers: readonly number[]): number | null {
  if (numbers.length < 2) return null;
  const middle = (numbers.length - 1) / 2;
  const mean = numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
  const above = numbers.reduce((sum, number, index) => sum + (index - middle) * (number - mean), 0);
  const below = numbers.reduce((sum, _number, index) => sum + (index - middle) ** 2, 0);
  return above / below;
}

/** Continues one line of values: the value `index` places after its first. */
function continued(line: readonly unknown[], index: number, kind: FillKind): unknown {
  const repeated = line[index % line.length];
  if (kind === "FillCopy") return repeated;
  if (line.every((value) => typeof value === "number")) {
    const numbers = line as number[];
    const step = stepOf(numbers) ?? (kind === "FillSeries" ? 1 : 0);
    const mean = numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
    return numbers.length === 1 ? numbers[0]! + step * index : mean + step * (index - (numbers.length - 1) / 2);
  }
  const parts = line.map(numbered);
  if (line.length === 1 && parts[0]) return `${parts[0][0]}${parts[0][1] + index}`;
  return repeated;
}

/**
 * Fills the destination from the source, which is its beginning: formulas move along, numbers go on with their step,
 * text with a number at its end counts on, anything else repeats.
 */
export function autoFill(source: Area, destination: Area, kind: FillKind): void {
  const down = destination.rowCount > source.rowCount;
  const matrix = source.book.worksheet(source.sheetId).getCellMatrix();
  const model = source.book.injector.get(FormulaDataModel);
  const lexer = source.book.injector.get(LexerTreeBuilder);
  const lines = down ? source.columnCount : source.rowCount;
  const length = down ? source.rowCount : source.columnCount;
  const filled = down ? destination.rowCount : destination.columnCount;
  const cells: CellMatrix = {};
  for (let line = 0; line < lines; line += 1) {
    const place = (index: number) =>
      down
        ? { row: source.row + index, column: source.column + line }
        : { row: source.row + line, column: source.column + index };
    const values = Array.from({ length }, (_, index) => {
      const { row, column } = place(index);
      return contentOf(matrix.getValue(row, column));
    });
    for (let index = length; index < filled; index += 1) {
      const from = place(index % length);
      const to = place(index);
      const cell: ICellData = {};
      if (kind !== "FillFormats") {
        const formula = model.getFormulaStringByCell(from.row, from.column, source.sheetId, source.book.id);
        Object.assign(cell, { p: null, si: null, ref: null, f: null, v: null });
        if (formula) cell.f = lexer.moveFormulaRefOffset(formula, to.column - from.column, to.row - from.row);
        else {
          const value = continued(values, index, kind);
          const { t } = matrix.getValue(from.row, from.column) ?? {};
          if (value !== "") cell.v = typeof value === "boolean" ? Number(value) : (value as string | number);
          if (t) cell.t = t;
        }
      }
      if (kind !== "FillValues") cell.s = styleAt(source, from.row, from.column);
      cells[to.row] = { ...cells[to.row], [to.column]: cell };
    }
  }
  writeCells(destination, cells);
}
