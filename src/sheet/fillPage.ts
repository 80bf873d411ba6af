import { say } from "../language/say";
import { type LaidBlock, type LaidPage, sizeOf, type Tone, tableSize } from "./layPage";
import { type Paper, printPage } from "./printPage";
import { addChart } from "./reportChart";
import { look } from "./tableLook";
import { highestRow } from "./wrappedLineCount";

/** A cell that a page writes, zero-based. */
export type PageCell = readonly [row: number, column: number, value: number | string];

type Line = Extract<LaidBlock, { kind: "line" }>;
type Table = Extract<LaidBlock, { kind: "table" }>;
type Picture = Extract<LaidBlock, { kind: "picture" }>;

/** All cells of a laid page that are not empty, row by row. */
export const pageCells = ({ blocks }: LaidPage): PageCell[] =>
  blocks.flatMap(cellsOf).sort((a, b) => a[0] - b[0] || a[1] - b[1]);

function cellsOf(block: LaidBlock): PageCell[] {
  if (block.kind === "line") return block.text === "" ? [] : [[block.row, 0, block.text]];
  if (block.kind === "picture") return block.caption === null ? [] : [[block.row - 1, block.start, block.caption]];
  const { row, table, columns } = block;
  return columns.flatMap(({ column, start }, index): PageCell[] => [
    [row, start, column.heading],
    ...table.rows.flatMap((cells, offset): PageCell[] => {
      const value = cells[index] ?? null;
      return value === null || value === "" ? [] : [[row + 1 + offset, start, value]];
    }),
  ]);
}

/** Queues everything that stands on a page, and how it is printed; in few calls, since a squad has hundreds of pages. */
export function fillPage(sheet: Excel.Worksheet, laid: LaidPage, paper: Paper, title: string): void {
  const { blocks, heights, widths } = laid;
  const cells = pageCells(laid);
  const width = Math.max(widths.length, ...cells.map(([, column]) => column + 1));
  const whole = sheet.getRangeByIndexes(0, 0, heights.length, width);
  const values = heights.map(() => Array<number | string>(width).fill(""));
  for (const [row, column, value] of cells) values[row]![column] = value;
  // Text is kept as text, so that a name such as "=A1" stays a name; numbers get their format first.
  whole.numberFormat = heights.map(() => Array<string>(width).fill("@"));
  for (const block of blocks) if (block.kind === "table") formatNumbers(sheet, block);
  whole.values = values;
  whole.format.font.size = tableSize;
  whole.format.font.color = look.ink;
  setSizes(sheet, heights, widths);
  for (const block of blocks) {
    if (block.kind === "line") dressLine(sheet, block, widths.length);
    else if (block.kind === "table") dressTable(sheet, block);
  }
  blocks
    .filter((block): block is Picture => block.kind === "picture")
    .forEach((picture, index) => {
      drawPicture(sheet, picture, index + 1, widths.length - 1);
    });
  sheet.showGridlines = false;
  printPage(sheet, laid, paper, title);
}

const columnCells = (sheet: Excel.Worksheet, { row, table }: Table, start: number, span: number): Excel.Range =>
  sheet.getRangeByIndexes(row, start, table.rows.length + 1, span);

function formatNumbers(sheet: Excel.Worksheet, block: Table): void {
  const { row, table, columns } = block;
  columns.forEach(({ column, start }, index) => {
    if (column.format === undefined || table.rows.length === 0) return;
    sheet.getRangeByIndexes(row + 1, start, table.rows.length, 1).numberFormat = table.rows.map((cells) => [
      typeof cells[index] === "string" ? "@" : column.format!,
    ]);
  });
}

/** One call for each stretch of rows or columns of one size. */
function setSizes(sheet: Excel.Worksheet, heights: readonly number[], widths: readonly number[]): void {
  for (const { from, count, size } of stretches(heights)) {
    sheet.getRangeByIndexes(from, 0, count, 1).format.rowHeight = Math.min(size, highestRow);
  }
  for (const { from, count, size } of stretches(widths)) {
    sheet.getRangeByIndexes(0, from, 1, count).format.columnWidth = size;
  }
}

function stretches(sizes: readonly number[]): { from: number; count: number; size: number }[] {
  const found: { from: number; count: number; size: number }[] = [];
  sizes.forEach((size, from) => {
    const last = found.at(-1);
    if (last?.size === size) last.count += 1;
    else found.push({ from, count: 1, size });
  });
  return found;
}

const inks: Readonly<Partial<Record<Tone, string>>> = {
  ...{ subtitle: look.quietInk, heading: look.accent, quiet: look.quietInk },
};

const isBold = (tone: Tone): boolean => tone === "title" || tone === "heading" || tone === "strong";

function dressLine(sheet: Excel.Worksheet, { row, tone, breaks }: Line, width: number): void {
  const line = sheet.getRangeByIndexes(row, 0, 1, breaks ? width : 1);
  if (breaks) {
    line.merge();
    line.format.wrapText = true;
  }
  line.format.verticalAlignment = tone === "heading" ? "Bottom" : "Top";
  line.format.font.size = sizeOf(tone);
  if (isBold(tone)) line.format.font.bold = true;
  const ink = inks[tone];
  if (ink) line.format.font.color = ink;
}

function dressTable(sheet: Excel.Worksheet, block: Table): void {
  const { row, table, columns } = block;
  const printed = columns.filter(({ column }) => !column.quiet);
  const width = printed.reduce((sum, { span }) => sum + span, 0);
  const whole = columnCells(sheet, block, 0, width);
  whole.format.wrapText = true;
  whole.format.verticalAlignment = "Center";
  for (const { column, start, span } of printed) {
    const cells = columnCells(sheet, block, start, span);
    if (span > 1) cells.merge(true);
    const isText = column.format === undefined;
    // Numbers stand in the middle: text beside them needs air, or the two read as one.
    cells.format.horizontalAlignment = isText ? "Left" : "Center";
  }
  const inner = ["InsideHorizontal", "EdgeBottom"] as const;
  for (const edge of table.toFillIn ? ([...inner, "InsideVertical", "EdgeLeft", "EdgeRight"] as const) : inner) {
    rule(whole.format.borders.getItem(edge), "Thin", look.rule);
  }
  const header = sheet.getRangeByIndexes(row, 0, 1, width);
  header.format.font.bold = true;
  header.format.font.color = look.accent;
  header.format.verticalAlignment = "Bottom";
  rule(header.format.borders.getItem("EdgeBottom"), "Medium", look.accent);
  for (const { column, start } of columns) {
    if (column.quiet) columnCells(sheet, block, start, 1).format.font.color = look.quietInk;
  }
}

function rule(border: Excel.RangeBorder, weight: "Thin" | "Medium", color: string): void {
  border.style = "Continuous";
  border.weight = weight;
  border.color = color;
}

/**
 * A picture that can be read without its colours: numbers at the bars, dark edges, and a dashed line for the softer one.
 * Beside its table each bar stands in its row, so that names and an axis would say again what the table says.
 */
function drawPicture(sheet: Excel.Worksheet, picture: Picture, number: number, lastColumn: number): void {
  const { chart, isLayered, caption, row, rowCount, start, dataRow, dataCount, columnOf } = picture;
  const cells = (key: string) => sheet.getRangeByIndexes(dataRow, columnOf[key]!, Math.max(dataCount, 1), 1);
  const name = say`Picture ${number}`;
  const corner = sheet.getRangeByIndexes(row, start, 1, 1);
  addChart(sheet, chart, name, cells, corner, dataCount);
  const drawn = sheet.charts.getItem(name);
  drawn.setPosition(corner, sheet.getRangeByIndexes(row + rowCount - 1, lastColumn, 1, 1));
  drawn.title.format.font.size = 11;
  if (caption !== null) {
    dressCaption(sheet.getRangeByIndexes(row - 1, start, 1, lastColumn - start + 1));
    drawn.format.border.lineStyle = "None";
    drawn.title.visible = false;
    drawn.legend.visible = false;
    drawn.axes.valueAxis.visible = false;
    drawn.axes.valueAxis.title.visible = false;
    drawn.axes.valueAxis.majorGridlines.visible = false;
    drawn.axes.categoryAxis.tickLabelPosition = "None";
  }
  chart.series.forEach(({ tone }, index) => {
    const series = drawn.series.getItemAt(index);
    if (chart.kind === "bar") {
      series.format.line.color = look.ink;
      series.format.line.weight = 0.75;
      if (caption !== null || isLayered) return;
      series.hasDataLabels = true;
      series.dataLabels.format.font.color = look.ink;
      series.dataLabels.format.font.size = tableSize - 1;
    } else {
      series.format.line.color = tone === "strong" ? look.ink : look.quietInk;
      series.format.line.lineStyle = tone === "strong" ? "Continuous" : "Dash";
      series.format.line.weight = tone === "strong" ? 2 : 1.25;
    }
  });
}

function dressCaption(cells: Excel.Range): void {
  cells.merge();
  cells.format.wrapText = true;
  cells.format.horizontalAlignment = "Center";
  cells.format.verticalAlignment = "Bottom";
  cells.format.font.size = sizeOf("quiet");
  cells.format.font.color = look.quietInk;
}
