import type { ReportTable, ReportValue } from "../analyses/report";
import { numberFormatOf, styleColumn, styleHeader } from "./tableLook";

/** An empty cell is written as "": `null` would tell the program to leave the cell as it is. */
export const cellValue = (value: ReportValue): number | string => value ?? "";

const repeat = <T>(value: T, count: number): T[][] => Array.from({ length: count }, () => [value]);

/**
 * Writes one column of a table, heading first. The format goes before the values, so that text which looks like a
 * formula or a date is kept as text.
 *
 * @param heading cell of the heading; the values go below it.
 */
export function writeColumn(
  heading: Excel.Range,
  table: ReportTable,
  column: number,
  values: readonly ReportValue[],
): void {
  const definition = table.columns[column]!;
  heading.values = [[definition.heading]];
  if (values.length === 0) return;
  const body = heading.getOffsetRange(1, 0).getResizedRange(values.length - 1, 0);
  body.numberFormat = repeat(numberFormatOf(definition), values.length);
  body.values = values.map((value) => [cellValue(value)]);
  styleColumn(heading.getResizedRange(values.length, 0), definition, column === 0);
  styleHeader(heading);
}
