import type { Report } from "../analyses/report";
import { say } from "../language/say";
import type { WrittenReport } from "../store/writtenReports";
import { withoutSheet } from "./areas";
import { layFoot, rememberedFoot } from "./foot";
import { addChart, chartRows } from "./reportChart";
import { footLines, originLines } from "./reportLines";
import { tableContents, writeColumn, writeLines } from "./tableCells";
import { styleFootRow, styleLines, widthOf } from "./tableLook";

export type CreatedTable = {
  readonly sheet: Excel.Worksheet;
  readonly table: Excel.Table;
  /** Row of the headings, zero-based. */
  readonly headerRow: number;
  readonly address: string;
};

/**
 * Adds a sheet with an empty table of the report's size. One round trip: it gives the identities we remember. Where it
 * fails half way, the sheet does not stay.
 */
export async function createTable(
  context: Excel.RequestContext,
  report: Report,
  lineCount: number,
  taken: { readonly sheets: readonly string[]; readonly tables: readonly string[] },
): Promise<CreatedTable> {
  const { columns, rows, name } = report.table;
  const headings = columns.map((column) => column.heading);
  const sheetName = freeName(report.sheet, " ", taken.sheets);
  const sheet = context.workbook.worksheets.add(sheetName);
  const area = sheet.getRangeByIndexes(lineCount, 0, rows.length + 1, columns.length);
  area.getRow(0).values = [headings];
  const table = sheet.tables.add(area, true);
  table.name = freeName(name, "_", taken.tables);
  table.style = "TableStyleLight1";
  table.showBandedRows = false;
  sheet.load("name,id");
  table.load("id");
  area.load("address");
  try {
    await context.sync();
  } catch (failure) {
    await removeUnfilled(sheetName, headings).catch(() => undefined);
    throw failure;
  }
  return { sheet, table, headerRow: lineCount, address: withoutSheet(area.address) };
}

/**
 * Removes the sheet whose making broke off. Its identity is not known yet, only the name that nobody had: someone who
 * made a sheet of that name in the same moment has something else on it.
 */
const removeUnfilled = (name: string, headings: readonly string[]): Promise<void> =>
  Excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(name);
    sheet.load("id");
    await context.sync();
    if (sheet.isNullObject) return;
    const used = sheet.getUsedRange(true);
    used.load("values");
    await context.sync();
    const isOurs = used.values.flat().every((value) => value === "" || headings.includes(String(value)));
    if (isOurs) sheet.delete();
    await context.sync();
  });

/** Queues everything that goes into a created table and its sheet, and gives what to remember of it. */
export function fillTable(report: Report, head: readonly string[], created: CreatedTable): WrittenReport {
  const { sheet, table, headerRow } = created;
  const { columns, rows } = report.table;
  const rowCount = Math.max(rows.length, 1);
  const contents = tableContents(report.table);

  const above = sheet.getRangeByIndexes(0, 0, head.length, 1);
  writeLines(above, head);
  styleLines(above, head.length - originLines - 1);
  columns.forEach((column, index) => {
    const heading = sheet.getRangeByIndexes(headerRow, index, 1, 1);
    // An empty table has one row, dressed like any other.
    const cells = rows.length === 0 ? [null] : contents.map((row) => row[index] ?? null);
    writeColumn(heading, report.table, index, cells);
    heading.format.columnWidth = widthOf(
      column,
      rows.map((row) => row[index] ?? null),
    );
  });
  sheet.freezePanes.freezeRows(headerRow + 1);
  sheet.showGridlines = false;

  const chart = report.chart ? say`${report.table.name} chart` : null;
  if (report.chart && chart) {
    const column = (key: string) => {
      const index = columns.findIndex((one) => one.key === key);
      return sheet.getRangeByIndexes(headerRow + 1, index, rowCount, 1);
    };
    const corner = sheet.getRangeByIndexes(headerRow + 1, columns.length + 1, 1, 1);
    addChart(sheet, report.chart, chart, column, corner, rows.length);
  }

  // Clear of the table with a row to spare, and of the chart beside it, under which long lines would run.
  const start = Math.max(rowCount + 1, report.chart ? chartRows(report.chart, rows.length) + 1 : 0);
  const foot = layFoot(footLines(report), start, () => false);
  writeLines(
    sheet.getRangeByIndexes(headerRow + 1 + start, 0, foot.length, 1),
    foot.map(({ text }) => text),
  );
  for (const line of foot) styleFootRow(sheet.getRangeByIndexes(headerRow + 1 + line.row, 0, 1, 1), line);

  return {
    tableId: table.id,
    sheetId: sheet.id,
    headings: columns.map((one) => one.heading),
    keys: columns.map((one) => one.key),
    head: [...head],
    foot: rememberedFoot(foot),
    chart,
  };
}

/** The name wished for, or the first of "name 2", "name 3" .. that nobody has; upper and lower case are one. */
export function freeName(wished: string, gap: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number++) {
    const name = number === 1 ? wished : `${wished}${gap}${number}`;
    if (!used.has(name.toLowerCase())) return name;
  }
}
