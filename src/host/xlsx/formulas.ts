import { columnName, columnNumber, lastColumn, lastRow } from "./addresses";

/**
 * A formula of the file as people write it: files mark functions younger than the format, the names a formula gives to
 * its own steps, and call functions for `G1#` and `@A1:A9`.
 */
export const plainFormula = (formula: string): string =>
  outsideQuotes(formula, (code) =>
    code
      .replace(/_xlfn\.ANCHORARRAY\(([^()]*)\)/g, "$1#")
      .replace(/_xlfn\.SINGLE\(([^()]*)\)/g, "@$1")
      .replace(/_xlfn\.(_xlws\.)?|_xlpm\./g, ""),
  );

/** Moves the relative references of a shared formula from its first cell to another one. */
export const movedFormula = (formula: string, rows: number, columns: number): string =>
  outsideQuotes(formula, (code) =>
    code.replace(
      /(?<![A-Za-z0-9_.$])(\$?)([A-Z]{1,3})(\$?)(\d{1,7})(?![A-Za-z0-9_.(])/g,
      (whole, fixedColumn: string, letters: string, fixedRow: string, digits: string) => {
        const column = columnNumber(letters) + (fixedColumn ? 0 : columns);
        const row = Number(digits) - 1 + (fixedRow ? 0 : rows);
        if (columnNumber(letters) > lastColumn) return whole;
        if (row < 0 || row > lastRow || column < 0 || column > lastColumn) return "#REF!";
        return `${fixedColumn}${columnName(column)}${fixedRow}${row + 1}`;
      },
    ),
  );

/** Applies `change` to a formula's code, leaving text in quotes, quoted sheet names and bracketed column names alone. */
export const outsideQuotes = (formula: string, change: (code: string) => string): string =>
  formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*'|\[(?:'.|\[(?:'.|[^\]'])*\]|[^\]'[])*\])/)
    .map((piece, index) => (index % 2 === 0 ? change(piece) : piece))
    .join("");
