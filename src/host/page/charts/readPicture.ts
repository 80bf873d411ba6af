import type { Book } from "../../engine/book";
import { type Chart, type ChartPart, type ChartSeries, labelsOf } from "../../engine/charts";
import type { ChartPicture, PictureAxis, PictureSeries } from "./picture";

/** Reads what a chart shows now; what was not set has the defaults that the API's reference gives a new chart. */
export function readPicture(book: Book, chart: Chart): ChartPicture {
  const data = book.charts.dataOf(chart);
  const kind = kindOf(chart.type);
  const stacked = /Stacked/.test(chart.type);
  const { category, value } = chart.axes;
  const onlyName = data.series.length === 1 ? (data.series[0]?.name ?? "") : "Chart Title";
  const { title, legend } = chart;
  const shown = chart.series
    .map((series, index) => ({ series, data: data.series[index]! }))
    .filter(({ series }) => series.look.filtered !== true);
  const firstLook = shown[0]?.series.look ?? {};
  return {
    kind,
    stacked,
    title: isOn(title.visible, true) ? textOr(title.text, onlyName) : null,
    categories: kind === "points" ? [] : data.categories,
    series: shown.map(({ series, data: { name, values, x } }) => readSeries(chart, series, name, values, x)),
    categoryAxis: readAxis(category, kind === "points"),
    valueAxis: readAxis(value, true),
    legend: isOn(legend.visible, chart.series.length > 1) ? sideOf(legend.position) : null,
    overlap: numberOr(firstLook.overlap, stacked ? 100 : kind === "bars" ? 0 : -27),
    gapWidth: numberOr(firstLook.gapWidth, kind === "bars" ? 182 : 219),
  };
}

/** Kinds that are drawn; what else there is (pies, areas) is shown by its numbers, as columns. */
function kindOf(type: string): ChartPicture["kind"] {
  if (/^XY|^Bubble/.test(type)) return "points";
  if (/^Line/.test(type)) return "lines";
  return /^Bar/.test(type) ? "bars" : "columns";
}

function readSeries(
  chart: Chart,
  series: ChartSeries,
  name: string,
  values: readonly (number | null)[],
  horizontal: readonly (number | null)[],
): PictureSeries {
  const type = textOr(series.look.chartType, chart.type);
  const isLine = /^Line|Lines|Smooth/.test(type);
  const pointColours: Record<number, string> = {};
  for (const [index, point] of Object.entries(series.points)) {
    const format = (point.format ?? {}) as { fill?: ChartPart };
    const colour = colourOf(point.markerBackgroundColor) ?? colourOf(format.fill?.color);
    if (colour) pointColours[Number(index)] = colour;
  }
  return {
    name,
    values,
    horizontal: horizontal.some((place) => place !== null) ? horizontal : [],
    isLine,
    hasMarks: series.look.markerStyle !== "None" && !/NoMarkers/.test(type) && type !== "Line",
    colour: isLine
      ? (colourOf(series.line.color) ?? colourOf(series.look.markerBackgroundColor) ?? colourOf(series.fill.color))
      : (colourOf(series.fill.color) ?? colourOf(series.look.markerBackgroundColor) ?? colourOf(series.line.color)),
    pointColours,
    hasLabels: labelsOf(chart, series) !== null,
  };
}

function readAxis(axis: ChartPart, gridlines: boolean): PictureAxis {
  const title = (axis.title ?? {}) as ChartPart;
  const lines = (axis.majorGridlines ?? {}) as ChartPart;
  return {
    title: isOn(title.visible, false) ? textOr(title.text, "Axis Title") : null,
    minimum: typeof axis.minimum === "number" ? axis.minimum : null,
    maximum: typeof axis.maximum === "number" ? axis.maximum : null,
    reversed: axis.reversePlotOrder === true,
    gridlines: isOn(lines.visible, gridlines),
    visible: isOn(axis.visible, true) && axis.tickLabelPosition !== "None",
  };
}

function sideOf(position: unknown): NonNullable<ChartPicture["legend"]> {
  switch (position) {
    case "Top":
      return "top";
    case "Left":
      return "left";
    case "Right":
    case "Corner":
      return "right";
    default:
      return "bottom";
  }
}

const isOn = (value: unknown, otherwise: boolean) => (typeof value === "boolean" ? value : otherwise);
const textOr = (value: unknown, otherwise: string) => (typeof value === "string" ? value : otherwise);
const numberOr = (value: unknown, otherwise: number) => (typeof value === "number" ? value : otherwise);
const colourOf = (value: unknown) => (typeof value === "string" && /^#[0-9a-f]{6}$/i.test(value) ? value : null);
