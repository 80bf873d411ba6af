import type { Report } from "../analyses/report";
import { areaAddress } from "../reading/address";
import type { WrittenReport } from "../store/writtenReports";
import { type Conflict, planUpdate, type StandingTable } from "./planUpdate";
import { renewChart } from "./reportChart";
import { writeColumn } from "./tableCells";

/** A table of ours with its sheet, as read before it is renewed. */
export type StandingPlace = {
  readonly sheet: Excel.Worksheet;
  readonly table: Excel.Table;
  readonly standing: StandingTable;
  /** What stands in the cells above the table, in its first column; the nearest last. */
  readonly above: readonly string[];
  readonly chart: Excel.Chart | null;
};

/** Reads how a table of ours stands now, in one round trip. */
export async function readStanding(
  context: Excel.RequestContext,
  table: Excel.Table,
  last: WrittenReport,
): Promise<StandingPlace> {
  const sheet = table.worksheet;
  sheet.load("name,id");
  table.load("showTotals");
  const area = table.getRange();
  area.load("rowIndex,columnIndex,rowCount,columnCount");
  const used = sheet.getUsedRange();
  used.load("formulas,rowIndex,columnIndex");
  const chart = sheet.charts.getItemOrNullObject(last.chart ?? "");
  chart.load("name");
  await context.sync();

  const { rowIndex, columnIndex, rowCount, columnCount } = area;
  const cells = (row: number, column: number, count: number): unknown[] =>
    Array.from(
      { length: count },
      (_, offset) => used.formulas[row - used.rowIndex]?.[column + offset - used.columnIndex] ?? "",
    );
  const rows = (from: number, to: number) =>
    Array.from({ length: Math.max(to - from, 0) }, (_, offset) => cells(from + offset, columnIndex, columnCount));
  return {
    sheet,
    table,
    standing: {
      headerRow: rowIndex,
      firstColumn: columnIndex,
      headings: cells(rowIndex, columnIndex, columnCount).map(String),
      body: rows(rowIndex + 1, rowIndex + rowCount),
      hasTotals: table.showTotals,
      below: rows(rowIndex + rowCount, used.rowIndex + used.formulas.length),
    },
    above: Array.from({ length: rowIndex }, (_, row) => String(cells(row, columnIndex, 1)[0])),
    chart: chart.isNullObject ? null : chart,
  };
}

export type Renewed = { readonly kind: "renewed"; readonly address: string; readonly written: WrittenReport };

/** Queues the writes that bring a standing table up to date, or says what is in the way. */
export function renewTable(
  report: Report,
  lines: readonly string[],
  place: StandingPlace,
  last: WrittenReport,
): Renewed | Conflict {
  const { sheet, table, standing } = place;
  const plan = planUpdate(report, standing, last);
  if (plan.kind === "conflict") return plan;

  const { headerRow, firstColumn, headings } = standing;
  const area = sheet.getRangeByIndexes(headerRow, firstColumn, plan.rowCount + 1, headings.length);
  if (plan.rowCount !== standing.body.length) table.resize(area);
  plan.columns.forEach(({ index, values }, column) => {
    writeColumn(sheet.getRangeByIndexes(headerRow, firstColumn + index, 1, 1), report.table, column, values);
  });
  renewLines(lines, place, last);
  if (place.chart && report.chart) {
    renewChart(place.chart, report.chart, (key) => {
      const column = report.table.columns.findIndex((one) => one.key === key);
      return sheet.getRangeByIndexes(
        headerRow + 1,
        firstColumn + plan.columns[column]!.index,
        Math.max(plan.rowCount, 1),
        1,
      );
    });
  }
  return {
    kind: "renewed",
    address: areaAddress(headerRow, firstColumn, plan.rowCount + 1, headings.length),
    written: { ...last, headings: report.table.columns.map((column) => column.heading), lines: [...lines] },
  };
}

/** Renews the lines above the table; one that no longer reads as we wrote it is the coach's and stays. */
function renewLines(lines: readonly string[], { sheet, standing, above }: StandingPlace, last: WrittenReport): void {
  lines.forEach((line, index) => {
    const row = standing.headerRow - lines.length + index;
    if (row < 0 || above[row] !== last.lines[index]) return;
    sheet.getRangeByIndexes(row, standing.firstColumn, 1, 1).values = [[line]];
  });
}
