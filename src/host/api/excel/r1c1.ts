import { cellAddress, columnLetters, columnNumber } from "../../engine/addresses";
import type { Area } from "../../engine/area";
import { readFormulas } from "../../engine/cells";

const outsideQuotes = (formula: string, change: (code: string) => string): string =>
  formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*')/)
    .map((part, index) => (index % 2 ? part : change(part)))
    .join("");

/** "=A1+$B$2" of the cell at (row, column) as "=R[-1]C+R2C2". */
export function toR1C1<T>(formula: T, row: number, column: number): T | string {
  if (typeof formula !== "string" || !formula.startsWith("=")) return formula;
  const axis = (letter: string, fixed: boolean, value: number, own: number) =>
    fixed ? `${letter}${value + 1}` : value === own ? letter : `${letter}[${value - own}]`;
  return outsideQuotes(formula, (code) =>
    code.replace(/(?<![\p{L}\p{N}_.$])(\$?)([A-Z]{1,3})(\$?)(\d+)(?![\p{L}\p{N}_(])/giu, (_, c, letters, r, number) =>
      [
        axis("R", r === "$", Number(number) - 1, row),
        axis("C", c === "$", columnNumber(letters as string), column),
      ].join(""),
    ),
  );
}

/** Formulas of an area in R1C1 style; where there is none, the value. */
export const formulasInR1C1 = (area: Area) =>
  readFormulas(area).map((row, r) => row.map((formula, c) => toR1C1(formula, area.row + r, area.column + c)));

/** The way back. */
export function fromR1C1(formula: unknown, row: number, column: number): unknown {
  if (typeof formula !== "string" || !formula.startsWith("=")) return formula;
  return outsideQuotes(formula, (code) =>
    code.replace(/(?<![\p{L}\p{N}_.])R(\[-?\d+\]|\d+)?C(\[-?\d+\]|\d+)?(?![\p{L}\p{N}_(])/gu, (_, r, c) => {
      const place = (given: string | undefined, own: number): [number, string] =>
        given === undefined
          ? [own, ""]
          : given.startsWith("[")
            ? [own + Number(given.slice(1, -1)), ""]
            : [Number(given) - 1, "$"];
      const [atRow, fixedRow] = place(r, row);
      const [atColumn, fixedColumn] = place(c, column);
      return fixedRow || fixedColumn
        ? `${fixedColumn}${columnLetters(atColumn)}${fixedRow}${atRow + 1}`
        : cellAddress(atRow, atColumn);
    }),
  );
}
