import type { ReportChart } from "../analyses/report";
import { look } from "./tableLook";

const tones = { strong: look.accent, soft: look.accentSoft } as const;
const kinds = { bar: "BarClustered", line: "LineMarkers", scatter: "XYScatter" } as const;

/** A column's cells without its heading, by the key of the column. */
export type ColumnCells = (key: string) => Excel.Range;

/**
 * Adds the report's chart to the sheet. Series are named and coloured by us, one by one.
 *
 * @param corner the cell at the chart's top left corner.
 * @param count how many categories there are.
 */
export function addChart(
  sheet: Excel.Worksheet,
  chart: ReportChart,
  name: string,
  cells: ColumnCells,
  corner: Excel.Range,
  count: number,
): void {
  const drawn = sheet.charts.add(kinds[chart.kind], cells(chart.series[0]!.column), "Columns");
  drawn.name = name;
  drawn.title.text = chart.title;
  drawn.title.format.font.color = look.ink;
  drawn.legend.position = "Top";
  drawn.legend.visible = chart.series.length > 1;
  drawn.axes.valueAxis.title.text = chart.valueAxisTitle;
  drawn.axes.valueAxis.majorGridlines.format.line.color = look.rule;
  if (chart.kind === "bar") {
    // Bars run from the top in the table's order, with the names clear of bars that point to the left.
    drawn.axes.categoryAxis.reversePlotOrder = true;
    drawn.axes.categoryAxis.tickLabelPosition = "Low";
  }
  chart.series.forEach((series, index) => {
    const own = index === 0 ? drawn.series.getItemAt(0) : drawn.series.add(series.name);
    own.name = series.name;
    own.setValues(cells(series.column));
    own.setXAxisValues(cells(chart.categories));
    own.format.fill.setSolidColor(tones[series.tone]);
    if (chart.kind === "bar") {
      own.overlap = 100;
      own.gapWidth = 40;
    }
  });
  drawn.setPosition(corner, corner.getOffsetRange(chartRows(chart, count) - 1, 7));
}

/** Rows of the sheet a chart takes: a table row for every name to be read, and title, legend and axis around them. */
export const chartRows = (chart: ReportChart, count: number): number =>
  (chart.kind === "bar" ? Math.min(Math.max(count, 6), 60) : 12) + 7;

/**
 * Points the series of a chart that stands to the cells as they are now; its place and look stay the coach's.
 *
 * @param count how many series the chart has: one that the coach has removed stays away.
 */
export function renewChart(drawn: Excel.Chart, chart: ReportChart, cells: ColumnCells, count: number): void {
  chart.series.slice(0, count).forEach((series, index) => {
    const own = drawn.series.getItemAt(index);
    own.setValues(cells(series.column));
    own.setXAxisValues(cells(chart.categories));
  });
}
