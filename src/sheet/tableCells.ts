import type { ReportTable, ReportValue } from "../analyses/report";
import { styleColumn, styleHeader } from "./tableLook";

/** What goes into a cell of a table: a value, or the formula that keeps it live. */
export type CellContent = ReportValue | { readonly formula: string };

/** The table's rows with formulas where it has them. What tells the rows apart is never a formula. */
export const tableContents = ({ columns, rows, rowKey, formulas }: ReportTable): CellContent[][] =>
  rows.map((row, r) =>
    row.map((value, c): CellContent => {
      const formula = columns[c]?.key === rowKey ? null : (formulas?.[r]?.[c] ?? null);
      return formula === null ? value : { formula };
    }),
  );

/**
 * Writes cells of one column. Text goes into cells of the format "@", set before it, so that what looks like a formula
 * or a date stays as it is. An empty cell is written as "": `null` would tell the program to leave it as it is.
 */
export function writeCells(cells: Excel.Range, format: string | undefined, contents: readonly CellContent[]): void {
  cells.numberFormat = contents.map((content) => [numberFormatOf(format, content)]);
  cells.values = contents.map((content) => [isFormula(content) ? content.formula : (content ?? "")]);
}

/**
 * Writes one column of a table, heading first, in our look.
 *
 * @param heading cell of the heading; the contents go below it.
 */
export function writeColumn(
  heading: Excel.Range,
  table: Pick<ReportTable, "columns">,
  column: number,
  contents: readonly CellContent[],
): void {
  const definition = table.columns[column]!;
  heading.values = [[definition.heading]];
  if (contents.length === 0) return;
  styleColumn(heading.getResizedRange(contents.length, 0), definition, column === 0);
  styleHeader(heading);
  writeCells(heading.getOffsetRange(1, 0).getResizedRange(contents.length - 1, 0), definition.format, contents);
}

/** Writes lines of text one below the other, whatever they begin with. */
export function writeLines(cells: Excel.Range, lines: readonly string[]): void {
  writeCells(cells, undefined, lines);
}

const isFormula = (content: CellContent): content is { readonly formula: string } =>
  typeof content === "object" && content !== null;

/** Text is kept as text, so that a name such as "=A1" stays a name; a formula needs another format to be one. */
const numberFormatOf = (format: string | undefined, content: CellContent): string =>
  typeof content === "string" ? "@" : (format ?? (isFormula(content) ? "General" : "@"));
