import type { Report } from "../analyses/report";
import { areaAddress } from "../reading/address";
import type { WrittenReport } from "../store/writtenReports";
import { type BeforeImage, restoreCells } from "./beforeImage";
import type { Restoration } from "./deed";
import { type FootRow, findFoot, layFoot, ownFootRows, rememberedFoot } from "./foot";
import { type Conflict, newColumnCount, planUpdate, type StandingTable, type Update } from "./planUpdate";
import { chartRows, renewChart } from "./reportChart";
import { footLines, headLines } from "./reportLines";
import { writeCells, writeColumn, writeLines } from "./tableCells";
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
  readonly chart: { readonly drawn: Excel.Chart; readonly seriesCount: number; readonly left: number } | null;
  readonly image: BeforeImage;
  /** Look of the rows below the table, within its columns. */
  readonly looks: readonly (readonly Excel.CellProperties[])[];
  /** Look of the columns beside the table that it is to get, from its headings down. */
  readonly looksBeside: readonly (readonly Excel.CellProperties[])[];
  /** Width of the sheet's columns in points, from A to the last that the table is to get. */
  readonly columnWidths: readonly number[];
};

/** What of the look we change in rows that were not the table's before. */
const changedLook = {
  format: { font: { bold: true, color: true }, horizontalAlignment: true, indentLevel: true },
} as const satisfies Excel.CellPropertiesLoadOptions;

/** The same of columns that were not the table's before: they get headings. */
const changedLookBeside = {
  format: {
    ...changedLook.format,
    wrapText: true,
    verticalAlignment: true,
  },
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
  const newColumns = newColumnCount(report, last);
  const beside =
    newColumns > 0
      ? area
          .getLastColumn()
          .getOffsetRange(0, 1)
          .getResizedRange(reach, newColumns - 1)
      : null;
  const looksBeside = beside?.getCellProperties(changedLookBeside);
  const rules = Array.from({ length: newColumns }, (_, column) =>
    beside!.getCell(0, column).format.borders.getItem("EdgeBottom").load("style,weight,color"),
  );
  const block = sheet.getRange("A1").getBoundingRect(beside ?? below);
  block.load("formulas,values,numberFormat");
  const widths = block.getColumnProperties({ format: { columnWidth: true } });
  const drawn = sheet.charts.getItemOrNullObject(last.chart ?? "");
  drawn.load("name,left,series/count");
  await context.sync();

  const { rowIndex, columnIndex, rowCount, columnCount } = area;
  const { formulas, values, numberFormat } = block;
  const columnEnd = columnIndex + columnCount;
  const cells = (row: number): unknown[] => formulas[row]!.slice(columnIndex, columnEnd);
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
      beside: formulas.slice(rowIndex).map((row) => row.slice(columnEnd, columnEnd + newColumns)),
    },
    above: Array.from({ length: rowIndex }, (_, row) => String(cells(row)[0])),
    below: belowFirst,
    footStart,
    footRows,
    chart: drawn.isNullObject ? null : { drawn, seriesCount: drawn.series.count, left: drawn.left },
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
    looksBeside: (looksBeside?.value ?? []).map((row, r) => (r === 0 ? row.map(withRule(rules)) : row)),
    columnWidths: widths.value.map(({ format }) => format?.columnWidth ?? 0),
  };
}

/** The look of a cell with the line below it, which headings get; a weight or a colour beside "no line" would draw one. */
const withRule =
  (rules: readonly Excel.RangeBorder[]) =>
  (look: Excel.CellProperties, column: number): Excel.CellProperties => {
    const { style, weight, color } = rules[column]!;
    const bottom = style === "None" ? { style } : { style, weight, color };
    return { ...look, format: { ...look.format, borders: { bottom } } };
  };

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
  const columns = [...report.table.columns, ...plan.emptied];
  return {
    kind: "renewal",
    address: areaAddress(standing.headerRow, standing.firstColumn, plan.rowCount + 1, plan.width),
    written: {
      ...last,
      headings: columns.map(({ heading }) => heading),
      keys: columns.map(({ key }) => key),
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

const isResized = ({ headings, body }: StandingTable, { rowCount, width }: Update): boolean =>
  rowCount !== body.length || width !== headings.length;

function resize({ sheet, table, standing }: StandingPlace, plan: Update): void {
  if (!isResized(standing, plan)) return;
  const { headerRow, firstColumn } = standing;
  table.resize(sheet.getRangeByIndexes(headerRow, firstColumn, Math.max(plan.rowCount, 1) + 1, plan.width));
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
    if (index >= headings.length) {
      const contents = values.slice(0, plan.rowCount);
      writeColumn(at(headerRow, 1), table, column, contents.length === 0 ? [null] : contents);
      return;
    }
    if (headings[index] !== definition.heading) at(headerRow, 1).values = [[definition.heading]];
    if (growth > 0) styleColumn(at(headerRow + 1 + body.length, growth), definition, column === 0);
    if (values.length > 0) writeCells(at(headerRow + 1, values.length), definition.format, values);
  });
  for (const { index } of plan.emptied) {
    const cells = sheet.getRangeByIndexes(headerRow + 1, firstColumn + index, body.length, 1);
    if (body.length > 0) cells.values = body.map(() => [""]);
  }
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

function pointChart({ chart, table }: Report, place: StandingPlace, plan: Update): void {
  const { sheet, standing, chart: drawn } = place;
  if (!drawn || !chart) return;
  const left = movedChart(place, plan);
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
  if (left !== null) drawn.drawn.left = left;
}

/** Where a chart that stands beside the table must move, so that new columns do not come to lie under it; else null. */
function movedChart({ standing, chart, columnWidths }: StandingPlace, { width }: Update): number | null {
  const edgeAfter = (count: number) =>
    columnWidths.slice(0, standing.firstColumn + count).reduce((sum, points) => sum + points, 0);
  const before = edgeAfter(standing.headings.length);
  if (chart === null || width === standing.headings.length || chart.left < before) return null;
  return chart.left + edgeAfter(width) - before;
}

/** What puts back everything that the renewal writes, and nothing else. */
function restorations(
  report: Report,
  place: StandingPlace,
  last: WrittenReport,
  plan: Update,
  foot: FootPlan,
): Restoration[] {
  const { table, standing, image, looks, looksBeside, chart } = place;
  const { headerRow, firstColumn, headings, body } = standing;
  const { sheetId, anchor } = image;
  const width = headings.length;
  const end = headerRow + 1 + body.length;
  const growth = Math.max(plan.rowCount - body.length, 0);
  const steps: Restoration[] = [];

  if (isResized(standing, plan)) {
    steps.push({
      kind: "resizeTable",
      tableId: table.id,
      sheetId,
      address: areaAddress(headerRow, firstColumn, body.length + 1, width),
      written: areaAddress(headerRow, firstColumn, Math.max(plan.rowCount, 1) + 1, plan.width),
    });
  }
  if (plan.width > width) {
    const rowCount = Math.max(plan.rowCount, 1) + 1;
    steps.push({
      kind: "restoreLook",
      sheetId,
      anchor,
      address: areaAddress(headerRow, firstColumn + width, rowCount, plan.width - width),
      looks: looksBeside.slice(0, rowCount) as Excel.SettableCellProperties[][],
    });
    steps.push(restoreCells(image, headerRow, firstColumn + width, rowCount, plan.width - width));
  }
  for (const { index } of plan.emptied) {
    if (body.length > 0) steps.push(restoreCells(image, headerRow + 1, firstColumn + index, body.length, 1));
  }
  plan.columns.forEach(({ index }, column) => {
    if (index >= width) return;
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
      ...(movedChart(place, plan) === null ? {} : { left: chart.left }),
    });
  }
  return steps;
}
