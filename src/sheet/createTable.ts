import type { Report } from "../analyses/report";
import type { WrittenReport } from "../store/writtenReports";
import { addChart } from "./reportChart";
import { writeColumn } from "./tableCells";
import { styleLines, widthOf } from "./tableLook";

export type CreatedTable = {
  readonly sheet: Excel.Worksheet;
  readonly table: Excel.Table;
  /** Row of the headings, zero-based. */
  readonly headerRow: number;
  readonly address: string;
};

/** Adds a sheet with an empty table of the report's size. One round trip: it gives the identities we remember. */
export async function createTable(
  context: Excel.RequestContext,
  report: Report,
  lineCount: number,
  taken: { readonly sheets: readonly string[]; readonly tables: readonly string[] },
): Promise<CreatedTable> {
  const { columns, rows, name } = report.table;
  const sheet = context.workbook.worksheets.add(freeName(report.sheet, " ", taken.sheets));
  const area = sheet.getRangeByIndexes(lineCount, 0, rows.length + 1, columns.length);
  area.getRow(0).values = [columns.map((column) => column.heading)];
  const table = sheet.tables.add(area, true);
  table.name = freeName(name, "_", taken.tables);
  table.style = "TableStyleLight1";
  table.showBandedRows = false;
  sheet.load("name,id");
  table.load("id");
  area.load("address");
  await context.sync();
  return { sheet, table, headerRow: lineCount, address: area.address.slice(area.address.lastIndexOf("!") + 1) };
}

/** Queues everything that goes into a created table and its sheet, and gives what to remember of it. */
export function fillTable(report: Report, lines: readonly string[], created: CreatedTable): WrittenReport {
  const { sheet, table, headerRow } = created;
  const { columns, rows } = report.table;
  const cell = (row: number, column: number) => sheet.getRangeByIndexes(row, column, 1, 1);

  const above = sheet.getRangeByIndexes(0, 0, lines.length, 1);
  above.values = lines.map((line) => [line]);
  styleLines(above);
  columns.forEach((column, index) => {
    const heading = cell(headerRow, index);
    const values = rows.map((row) => row[index] ?? null);
    writeColumn(heading, report.table, index, values);
    heading.format.columnWidth = widthOf(column, values);
  });
  sheet.freezePanes.freezeRows(headerRow + 1);
  sheet.showGridlines = false;

  const chart = report.chart ? `${report.table.name} chart` : null;
  if (report.chart && chart) {
    const column = (key: string) => {
      const index = columns.findIndex((one) => one.key === key);
      return sheet.getRangeByIndexes(headerRow + 1, index, Math.max(rows.length, 1), 1);
    };
    addChart(sheet, report.chart, chart, column, cell(headerRow + 1, columns.length + 1), rows.length);
  }
  return {
    tableId: table.id,
    sheetId: sheet.id,
    headings: columns.map((one) => one.heading),
    lines: [...lines],
    chart,
  };
}

/** Takes back a sheet whose filling failed, so that nothing half-written stays. */
export async function removeSheet(context: Excel.RequestContext, name: string): Promise<void> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (sheet.isNullObject) return;
  sheet.delete();
  await context.sync();
}

/** The name wished for, or the first of "name 2", "name 3" .. that nobody has; upper and lower case are one. */
export function freeName(wished: string, gap: string, taken: readonly string[]): string {
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number++) {
    const name = number === 1 ? wished : `${wished}${gap}${number}`;
    if (!used.has(name.toLowerCase())) return name;
  }
}
