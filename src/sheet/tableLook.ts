import type { ReportColumn, ReportValue } from "../analyses/report";
import type { FootLine } from "./reportLines";

/** The one look of everything we write: ink on paper, one accent, thin rules. */
export const look = {
  ink: "#1d2b2a",
  /** The program's own colour of text, for cells that become part of a coach's table. */
  plain: "#000000",
  quietInk: "#5f6d6b",
  accent: "#0f6b5c",
  accentSoft: "#9cc3ba",
  rule: "#b9c6c3",
} as const;

export function styleHeader(header: Excel.Range): void {
  header.format.font.bold = true;
  header.format.font.color = look.accent;
  header.format.wrapText = true;
  header.format.verticalAlignment = "Bottom";
  const rule = header.format.borders.getItem("EdgeBottom");
  rule.style = "Continuous";
  rule.weight = "Medium";
  rule.color = look.accent;
}

/** @param cells cells of one column of the table. */
export function styleColumn(cells: Excel.Range, column: ReportColumn, isFirst: boolean): void {
  const isText = column.format === undefined;
  cells.format.horizontalAlignment = isText ? "Left" : "Right";
  // Text beside a column of numbers needs air, or the two read as one.
  cells.format.indentLevel = isText && !isFirst ? 1 : 0;
  if (column.quiet) cells.format.font.color = look.quietInk;
}

/**
 * Width of a column in points, by what stands in it: autofit gives headings that wrap no width of their own. A heading
 * may break between words, but not within one, and leaves room for bold letters and the filter's button.
 */
export function widthOf(column: ReportColumn, values: readonly ReportValue[]): number {
  const words = column.heading.split(" ").map((word) => word.length);
  const heading = Math.max(...words, Math.ceil(column.heading.length / 2)) + 5;
  const shown = values.reduce<number>((longest, value) => Math.max(longest, shownLength(value, column)), 0);
  return Math.min(Math.max(heading, shown + 1, 6), 50) * pointsPerCharacter + 6;
}

const pointsPerCharacter = 5.6;

function shownLength(value: ReportValue, { format }: ReportColumn): number {
  if (value === null) return 0;
  if (typeof value === "string") return value.length + 1;
  const decimals = /\.(0+)/.exec(format ?? "")?.[1]?.length ?? 0;
  return value.toFixed(decimals).length + 1;
}

/**
 * The lines above a table: the title large, the answer in ink, the rest quiet.
 *
 * @param answerCount how many lines below the title are the answer.
 */
export function styleLines(lines: Excel.Range, answerCount = 1): void {
  lines.format.font.color = look.quietInk;
  const title = lines.getCell(0, 0);
  title.format.font.bold = true;
  title.format.font.size = 14;
  title.getResizedRange(answerCount, 0).format.font.color = look.ink;
}

/** A row of the notes below the table: quiet, its headings bold. */
export function styleFootRow(cell: Excel.Range, { isHeading }: FootLine): void {
  cell.format.font.color = look.quietInk;
  cell.format.font.bold = isHeading;
}
