import type { Report } from "../analyses/report";
import { areaAddress } from "../reading/address";
import type { WrittenReport } from "../store/writtenReports";
import { type BeforeImage, restoreCells } from "./beforeImage";
import type { Restoration } from "./deed";
import { type FootRow, findFoot, layFoot, ownFootRows, rememberedFoot } from "./foot";
import { type Conflict, planUpdate, type StandingTable, type Update } from "./planUpdate";
import { chartRows, renewChart } from "./reportChart";
import { footLines, headLines } from "./reportLines";
import { writeCells, writeLines } from "./tableCells";
import { look, styleColumn, styleFootRow } from "./tableLook";

/** A table of ours with its sheet, as read before it is renewed. */
export type StandingPlace = {
  readonly sheet: Excel.Worksheet;
  readonly table: Excel.Table;
  readonly standing: StandingTable;
  /** What stands in the cells above the table, in its first column; the nearest last. */
  readonly above: readonly string[];
  /** What stands below the table in its first column. */
  readonly below: readonly string[];
  /** Where our notes stand now, in rows below the table; null where none are left. */
  readonly footStart: number | null;
  /** Rows below the table that hold our notes as we wrote them. */
  readonly footRows: ReadonlySet<number>;
  readonly chart: { readonly drawn: Excel.Chart; readonly seriesCount: number } | null;
  readonly image: BeforeImage;
  /** Look of the rows below the table, within its columns. */
  readonly looks: readonly (readonly Excel.CellProperties[])[];
};

/** What of the look we change in rows that were not the table's before. */
const changedLook = {
  format: { font: { bold: true, color: true }, horizontalAlignment: true, indentLevel: true },
} as const satisfies Excel.CellPropertiesLoadOptions;

/** Reads how a table of ours stands now, in one round trip. */
export async function readStanding(
  context: Excel.RequestContext,
  report: Report,
  table: Excel.Table,
  last: WrittenReport,
): Promise<StandingPlace> {
  const sheet = table.worksheet;
  sheet.load("name,id");
  table.load("showTotals");
  const area = table.getRange();
  area.load("rowIndex,columnIndex,rowCount,columnCount");
  // As far down as we may have written or may write: new athletes, then the notes.
  const reach =
    report.table.rows.length +
    last.foot.length +
    footLines(report).length +
    (report.chart ? chartRows(report.chart, 60) : 0) +
    spareRows;
  const below = area.getLastRow().getOffsetRange(1, 0).getResizedRange(reach, 0);
  const looks = below.getCellProperties(changedLook);
  const block = sheet.getRange("A1").getBoundingRect(below);
  block.load("formulas,values,numberFormat");
  const drawn = sheet.charts.getItemOrNullObject(last.chart ?? "");
  drawn.load("name,series/count");
  await context.sync();

  const { rowIndex, columnIndex, rowCount, columnCount } = area;
  const { formulas, values, numberFormat } = block;
  const cells = (row: number): unknown[] => formulas[row]!.slice(columnIndex, columnIndex + columnCount);
  const rows = (from: number, to: number) =>
    Array.from({ length: Math.max(to - from, 0) }, (_, offset) => cells(from + offset));
  const end = rowIndex + rowCount;
  const belowFirst = rows(end, formulas.length).map((row) => String(row[0]));
  const footStart = findFoot(belowFirst, last.foot);
  const footRows = ownFootRows(belowFirst, last.foot, footStart);
  return {
    sheet,
    table,
    standing: {
      headerRow: rowIndex,
      firstColumn: columnIndex,
      headings: cells(rowIndex).map(String),
      body: rows(rowIndex + 1, end),
      hasTotals: table.showTotals,
      below: rows(end, formulas.length).map((row, index) => (footRows.has(index) ? ["", ...row.slice(1)] : row)),
    },
    above: Array.from({ length: rowIndex }, (_, row) => String(cells(row)[0])),
    below: belowFirst,
    footStart,
    footRows,
    chart: drawn.isNullObject ? null : { drawn, seriesCount: drawn.series.count },
    image: {
      sheetId: sheet.id,
      anchor: { tableId: table.id, row: rowIndex, column: columnIndex },
      row: 0,
      column: 0,
      formulas,
      values,
      numberFormat,
    },
    looks: looks.value,
  };
}

/** Rows a coach may have put between the table and our notes. */
const spareRows = 50;

export type Renewal = {
  readonly kind: "renewal";
  readonly address: string;
  readonly written: WrittenReport;
  /** What puts everything back, prepared before anything is written. */
  readonly steps: readonly Restoration[];
  /** Queues the writes. */
  readonly write: () => void;
};

/** Plans the writes that bring a standing table up to date, or says what is in the way. */
export function renewTable(report: Report, place: StandingPlace, last: WrittenReport): Renewal | Conflict {
  const { standing } = place;
  const plan = planUpdate(report, standing, last);
  if (plan.kind === "conflict") return plan;
  const head = headLines(report, last.head.length);
  const foot = planFoot(report, place, last, plan);
  const width = standing.headings.length;
  return {
    kind: "renewal",
    address: areaAddress(standing.headerRow, standing.firstColumn, plan.rowCount + 1, width),
    written: {
      ...last,
      headings: report.table.columns.map((column) => column.heading),
      head,
      foot: rememberedFoot(foot.rows),
    },
    steps: restorations(report, place, last, plan, foot),
    write: () => {
      resize(place, plan);
      writeColumns(report, place, plan);
      for (const { row, line } of ownHeadRows(place, last)) {
        writeLines(place.sheet.getRangeByIndexes(row, standing.firstColumn, 1, 1), [head[line]!]);
      }
      writeFoot(place, foot);
      pointChart(report, place, plan);
    },
  };
}

function resize({ sheet, table, standing }: StandingPlace, { rowCount }: Update): void {
  const { headerRow, firstColumn, headings, body } = standing;
  if (rowCount === body.length) return;
  table.resize(sheet.getRangeByIndexes(headerRow, firstColumn, Math.max(rowCount, 1) + 1, headings.length));
}

/** Our columns, cell by cell; the look of rows that were there is the coach's, new ones get ours. */
function writeColumns({ table }: Report, { sheet, standing }: StandingPlace, plan: Update): void {
  const { headerRow, firstColumn, headings, body } = standing;
  const growth = plan.rowCount - body.length;
  if (growth > 0) {
    const fresh = sheet.getRangeByIndexes(headerRow + 1 + body.length, firstColumn, growth, headings.length);
    fresh.format.font.bold = false;
    fresh.format.font.color = look.plain;
  }
  plan.columns.forEach(({ index, values }, column) => {
    const definition = table.columns[column]!;
    const at = (row: number, count: number) => sheet.getRangeByIndexes(row, firstColumn + index, count, 1);
    if (headings[index] !== definition.heading) at(headerRow, 1).values = [[definition.heading]];
    if (growth > 0) styleColumn(at(headerRow + 1 + body.length, growth), definition, column === 0);
    if (values.length > 0) writeCells(at(headerRow + 1, values.length), definition.format, values);
  });
}

/** Lines above the table that still read as we wrote them; the others are the coach's and stay. */
const ownHeadRows = ({ standing, above }: StandingPlace, last: WrittenReport) =>
  last.head
    .map((text, line) => ({ text, line, row: standing.headerRow - last.head.length + line }))
    .filter(({ text, row }) => row >= 0 && above[row] === text);

type FootPlan = {
  /** Counted from the first row below the table as it stood. */
  readonly rows: readonly FootRow[];
  /** Rows that held our notes and hold nothing now. */
  readonly vacated: readonly number[];
};

/** New notes where the old ones stood, or below the table where it has grown; nothing where the coach removed them. */
function planFoot(report: Report, place: StandingPlace, last: WrittenReport, plan: Update): FootPlan {
  const { footStart, footRows, below, standing } = place;
  if (footStart === null && last.foot.length > 0) return { rows: [], vacated: [] };
  const growth = Math.max(plan.rowCount - standing.body.length, 0);
  const start = Math.max(footStart ?? 0, growth + (growth > 0 ? 1 : 0));
  const isTaken = (row: number) => (below[row] ?? "") !== "" && !footRows.has(row);
  const rows = layFoot(footLines(report), start, isTaken);
  const filled = new Set(rows.map(({ row }) => row));
  return { rows, vacated: [...footRows].filter((row) => !filled.has(row) && row >= growth) };
}

function writeFoot({ sheet, standing }: StandingPlace, { rows, vacated }: FootPlan): void {
  const end = standing.headerRow + 1 + standing.body.length;
  const at = (row: number) => sheet.getRangeByIndexes(end + row, standing.firstColumn, 1, 1);
  for (const row of vacated) writeLines(at(row), [""]);
  for (const line of rows) {
    writeLines(at(line.row), [line.text]);
    styleFootRow(at(line.row), line);
  }
}

function pointChart({ chart, table }: Report, { sheet, standing, chart: drawn }: StandingPlace, plan: Update): void {
  if (!drawn || !chart) return;
  const cells = (key: string) => {
    const column = table.columns.findIndex((one) => one.key === key);
    return sheet.getRangeByIndexes(
      standing.headerRow + 1,
      standing.firstColumn + plan.columns[column]!.index,
      Math.max(plan.rowCount, 1),
      1,
    );
  };
  renewChart(drawn.drawn, chart, cells, drawn.seriesCount);
}

/** What puts back everything that the renewal writes, and nothing else. */
function restorations(
  report: Report,
  place: StandingPlace,
  last: WrittenReport,
  plan: Update,
  foot: FootPlan,
): Restoration[] {
  const { table, standing, image, looks, chart } = place;
  const { headerRow, firstColumn, headings, body } = standing;
  const { sheetId, anchor } = image;
  const width = headings.length;
  const end = headerRow + 1 + body.length;
  const growth = Math.max(plan.rowCount - body.length, 0);
  const steps: Restoration[] = [];

  if (plan.rowCount !== body.length) {
    steps.push({
      kind: "resizeTable",
      tableId: table.id,
      sheetId,
      address: areaAddress(headerRow, firstColumn, body.length + 1, width),
      written: areaAddress(headerRow, firstColumn, Math.max(plan.rowCount, 1) + 1, width),
    });
  }
  plan.columns.forEach(({ index }, column) => {
    const at = firstColumn + index;
    if (headings[index] !== report.table.columns[column]!.heading) {
      steps.push(restoreCells(image, headerRow, at, 1, 1));
    }
    steps.push(restoreCells(image, headerRow + 1, at, body.length, 1));
  });
  for (const { row } of ownHeadRows(place, last)) steps.push(restoreCells(image, row, firstColumn, 1, 1));

  const restoreBelow = (row: number, rowCount: number, columnCount: number) => {
    steps.push({
      kind: "restoreLook",
      sheetId,
      anchor,
      address: areaAddress(end + row, firstColumn, rowCount, columnCount),
      looks: looks
        .slice(row, row + rowCount)
        .map((cells) => cells.slice(0, columnCount) as Excel.SettableCellProperties[]),
    });
    steps.push(restoreCells(image, end + row, firstColumn, rowCount, columnCount));
  };
  // In new rows the program itself may have filled the coach's own columns, whose cells were empty.
  if (growth > 0) restoreBelow(0, growth, width);
  for (const row of [...foot.rows.map((line) => line.row), ...foot.vacated].filter((one) => one >= growth)) {
    restoreBelow(row, 1, 1);
  }

  if (chart && report.chart && last.chart !== null) {
    const cells = (key: string) => {
      const column = report.table.columns.findIndex((one) => one.key === key);
      return areaAddress(headerRow + 1, firstColumn + plan.columns[column]!.index, body.length, 1);
    };
    const { categories, series } = report.chart;
    steps.push({
      kind: "restoreChart",
      sheetId,
      anchor,
      chart: last.chart,
      series: series.map(({ column }) => ({ values: cells(column), categories: cells(categories) })),
    });
  }
  return steps;
}
