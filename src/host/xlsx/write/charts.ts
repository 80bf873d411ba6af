import { type Chart, type ChartData, type ChartPart, type ChartSeries, labelsOf } from "../../engine/charts";
import { blanks, fileWord, legendPlaces, markers, tickLabelPlaces, tickMarks, trendlines } from "../chartWords";
import { perPoint } from "../measures";
import {
  inner,
  type LabelledKind,
  labelContent,
  lineTag,
  number,
  shapeTag,
  solid,
  text,
  titleTag,
  wordsLook,
} from "./chartParts";
import { fileColour } from "./colours";
import { escaped, part, relationships, tag } from "./markup";

const chartSpace = "http://schemas.openxmlformats.org/drawingml/2006/chart";
const drawing = "http://schemas.openxmlformats.org/drawingml/2006/main";
const sheetDrawing = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";

/** A chart and the numbers it shows now: whoever opens the file sees them before anything is calculated. */
export type ChartToSave = { readonly chart: Chart; readonly data: ChartData };

/** The sheet's drawing: where each chart lies. `links` leads to the charts, in their order. */
export function drawingPart(charts: readonly Chart[], links: readonly string[]): Uint8Array {
  const anchors = charts.map(({ left, top, width, height, name }, index) =>
    tag("xdr:absoluteAnchor", {}, [
      tag("xdr:pos", { x: emu(left), y: emu(top) }),
      tag("xdr:ext", { cx: emu(width), cy: emu(height) }),
      tag("xdr:graphicFrame", { macro: "" }, [
        tag("xdr:nvGraphicFramePr", {}, [tag("xdr:cNvPr", { id: index + 2, name }), tag("xdr:cNvGraphicFramePr")]),
        tag("xdr:xfrm", {}, [tag("a:off", { x: 0, y: 0 }), tag("a:ext", { cx: 0, cy: 0 })]),
        tag(
          "a:graphic",
          {},
          tag("a:graphicData", { uri: chartSpace }, tag("c:chart", { "xmlns:c": chartSpace, "r:id": links[index] })),
        ),
      ]),
      tag("xdr:clientData"),
    ]),
  );
  const names = { "xmlns:xdr": sheetDrawing, "xmlns:a": drawing, "xmlns:r": relationships };
  return part(tag("xdr:wsDr", names, anchors));
}

/** The kinds of chart the file gets as they are. Others are saved as columns, and said so. */
export const isKeptKind = (type: string): boolean => /^(Column|Bar)(Clustered|Stacked)|^Line|^XYScatter/.test(type);

export function chartPart({ chart, data }: ChartToSave): Uint8Array {
  const points = /^XY/.test(chart.type);
  const lying = /^Bar/.test(chart.type);
  const series = chart.series.map((one, index) => ({ one, index, data: data.series[index] }));
  const lines = series.filter(({ one }) => points || isLine(chart, one));
  const bars = series.filter((each) => !lines.includes(each));
  const axes = [tag("c:axId", { val: 1 }), tag("c:axId", { val: 2 })];
  const { title, legend } = chart;
  const groups = [
    bars.length > 0
      ? barGroup(
          chart,
          bars.map((each) => seriesTag(chart, data, each.one, each.index)),
          axes,
        )
      : "",
    lines.length > 0
      ? lineGroup(
          chart,
          lines.map((each) => seriesTag(chart, data, each.one, each.index)),
          axes,
        )
      : "",
  ];
  const category = axisTag(points ? "c:valAx" : "c:catAx", 1, 2, lying ? "l" : "b", chart.axes.category, false);
  const value = axisTag("c:valAx", 2, 1, lying ? "b" : "l", chart.axes.value, true);
  const heading =
    title.visible === false
      ? ""
      : titleTag(title, text(title.text) ?? (series.length === 1 ? data.series[0]?.name : undefined));
  return part(
    tag("c:chartSpace", { "xmlns:c": chartSpace, "xmlns:a": drawing, "xmlns:r": relationships }, [
      tag("c:roundedCorners", { val: chart.fill.roundedCorners === true ? 1 : 0 }),
      tag("c:chart", {}, [
        heading,
        tag("c:autoTitleDeleted", { val: heading ? 0 : 1 }),
        tag("c:plotArea", {}, [
          tag("c:layout"),
          ...groups,
          category,
          value,
          shapeTag(inner(chart.plotArea, "format"), "border"),
        ]),
        legend.visible === false || (legend.visible === undefined && series.length < 2)
          ? ""
          : tag("c:legend", {}, [
              tag("c:legendPos", { val: fileWord(legendPlaces, legend.position) ?? "b" }),
              tag("c:overlay", { val: legend.overlay === true ? 1 : 0 }),
              shapeTag(inner(legend, "format"), "border"),
              wordsLook(legend),
            ]),
        tag("c:plotVisOnly", { val: chart.look.plotVisibleOnly === false ? 0 : 1 }),
        tag("c:dispBlanksAs", { val: fileWord(blanks, chart.look.displayBlanksAs) ?? "gap" }),
      ]),
      shapeTag(chart.fill, "border"),
      wordsLook({ format: chart.fill }),
    ]),
  );
}

const isLine = (chart: Chart, { look }: ChartSeries) => /^Line/.test(text(look.chartType) ?? chart.type);

function barGroup(chart: Chart, series: readonly string[], axes: readonly string[]): string {
  const stacked = /Stacked/.test(chart.type);
  const look = chart.series[0]?.look ?? {};
  return tag("c:barChart", {}, [
    tag("c:barDir", { val: /^Bar/.test(chart.type) ? "bar" : "col" }),
    tag("c:grouping", { val: stacked ? "stacked" : "clustered" }),
    tag("c:varyColors", { val: 0 }),
    ...series,
    tag("c:gapWidth", { val: number(look.gapWidth) ?? 150 }),
    tag("c:overlap", { val: number(look.overlap) ?? (stacked ? 100 : 0) }),
    ...axes,
  ]);
}

function lineGroup(chart: Chart, series: readonly string[], axes: readonly string[]): string {
  if (/^XY/.test(chart.type)) {
    const style = /Lines|Smooth/.test(chart.type) ? "line" : "lineMarker";
    return tag("c:scatterChart", {}, [
      tag("c:scatterStyle", { val: style }),
      tag("c:varyColors", { val: 0 }),
      ...series,
      ...axes,
    ]);
  }
  return tag("c:lineChart", {}, [
    tag("c:grouping", { val: "standard" }),
    tag("c:varyColors", { val: 0 }),
    ...series,
    tag("c:marker", { val: 1 }),
    ...axes,
  ]);
}

function seriesTag(chart: Chart, data: ChartData, series: ChartSeries, index: number): string {
  const points = /^XY/.test(chart.type);
  const shown = data.series[index];
  const values = shown?.values ?? [];
  const linear = points || isLine(chart, series);
  const joined = isLine(chart, series) || /Lines|Smooth/.test(chart.type);
  return tag("c:ser", {}, [
    tag("c:idx", { val: index }),
    tag("c:order", { val: index }),
    tag(
      "c:tx",
      {},
      series.name.startsWith("=")
        ? texts("c:strRef", series.name.slice(1), [shown?.name ?? ""])
        : tag("c:v", {}, escaped(series.name)),
    ),
    seriesShape(series, linear, joined),
    linear ? markerTag(series, points && !joined) : tag("c:invertIfNegative", { val: 0 }),
    ...Object.entries(series.points).map(([place, point]) => pointTag(Number(place), point, linear)),
    labelsTag(chart, series, linear ? "lines" : /Stacked/.test(chart.type) ? "stacked" : "bars"),
    ...series.trendlines.map(trendlineTag),
    series.categories
      ? points
        ? tag("c:xVal", {}, numbers(series.categories, shown?.x ?? []))
        : tag("c:cat", {}, texts("c:strRef", series.categories, data.categories))
      : "",
    series.values ? tag(points ? "c:yVal" : "c:val", {}, numbers(series.values, values)) : "",
    linear ? tag("c:smooth", { val: series.look.smooth === true ? 1 : 0 }) : "",
  ]);
}

/** A single point in a colour of its own. */
function pointTag(idx: number, point: ChartPart, linear: boolean): string {
  const inside = fileColour(text(inner(inner(point, "format"), "fill").color) ?? text(point.markerBackgroundColor));
  if (!inside) return "";
  const shape = tag("c:spPr", {}, solid(inside));
  return tag("c:dPt", {}, [
    tag("c:idx", { val: idx }),
    linear ? tag("c:marker", {}, [tag("c:symbol", { val: "circle" }), shape]) : tag("c:invertIfNegative", { val: 0 }),
    tag("c:bubble3D", { val: 0 }),
    linear ? "" : shape,
  ]);
}

/** The labels of a series, and of those points that have their own or none. */
function labelsTag(chart: Chart, series: ChartSeries, kind: LabelledKind): string {
  const all = labelsOf(chart, series);
  const single = Object.entries(series.points).flatMap(([place, point]) => {
    const idx = tag("c:idx", { val: Number(place) });
    if (point.hasDataLabel === false) return all ? [tag("c:dLbl", {}, [idx, tag("c:delete", { val: 1 })])] : [];
    const own = inner(point, "dataLabel");
    if (point.hasDataLabel !== true && Object.keys(own).length === 0) return [];
    return [tag("c:dLbl", {}, [idx, ...labelContent({ ...all, ...own }, kind)])];
  });
  if (!all && single.length === 0) return "";
  return tag("c:dLbls", {}, [...single, ...labelContent(all ?? { showValue: false }, kind)]);
}

function trendlineTag(line: ChartPart): string {
  const type = fileWord(trendlines, line.type) ?? "linear";
  const name = text(line.name);
  return tag("c:trendline", {}, [
    name ? tag("c:name", {}, escaped(name)) : "",
    shapeTag(inner(line, "format"), "line"),
    tag("c:trendlineType", { val: type }),
    type === "poly" ? tag("c:order", { val: number(line.polynomialOrder) ?? 2 }) : "",
    type === "movingAvg" ? tag("c:period", { val: number(line.movingAveragePeriod) ?? 2 }) : "",
    number(line.forwardPeriod) ? tag("c:forward", { val: number(line.forwardPeriod) }) : "",
    number(line.backwardPeriod) ? tag("c:backward", { val: number(line.backwardPeriod) }) : "",
    number(line.intercept) === undefined ? "" : tag("c:intercept", { val: number(line.intercept) }),
    tag("c:dispRSqr", { val: line.showRSquared === true ? 1 : 0 }),
    tag("c:dispEq", { val: line.showEquation === true ? 1 : 0 }),
  ]);
}

function seriesShape({ fill, line, look }: ChartSeries, linear: boolean, joined: boolean): string {
  const colour = fileColour(text(line.color) ?? text(fill.color) ?? text(look.markerBackgroundColor));
  if (linear && !joined) return tag("c:spPr", {}, tag("a:ln", {}, tag("a:noFill")));
  if (linear) {
    const drawn = lineTag({ weight: 2, ...line, ...(colour && { color: `#${colour.slice(2)}` }) });
    return colour || Object.keys(line).length > 0 ? tag("c:spPr", {}, drawn) : "";
  }
  return shapeTag({ fill, line }, "line");
}

function markerTag({ look, fill, line }: ChartSeries, isAlone: boolean): string {
  if (look.markerStyle === "None") return tag("c:marker", {}, tag("c:symbol", { val: "none" }));
  const colour = fileColour(text(look.markerBackgroundColor) ?? text(fill.color) ?? text(line.color));
  const edge = fileColour(text(look.markerForegroundColor));
  const [symbol, size] = [fileWord(markers, look.markerStyle), number(look.markerSize)];
  if (!colour && !edge && !symbol && size === undefined) return "";
  return tag("c:marker", {}, [
    tag("c:symbol", { val: symbol ?? "circle" }),
    tag("c:size", { val: size ?? (isAlone ? 7 : 5) }),
    shapeTag(
      {
        fill: colour ? { color: `#${colour.slice(2)}` } : {},
        line: edge ? { color: `#${edge.slice(2)}` } : {},
      },
      "line",
    ),
  ]);
}

function axisTag(name: string, id: number, crosses: number, side: string, axis: ChartPart, isValue: boolean): string {
  const title = (axis.title ?? {}) as ChartPart;
  const lines = (axis.majorGridlines ?? {}) as ChartPart;
  const hasLines = typeof lines.visible === "boolean" ? lines.visible : isValue;
  const reversed = axis.reversePlotOrder === true;
  const minor = inner(axis, "minorGridlines");
  const format = text(axis.numberFormat);
  const [major, finer] = [number(axis.majorUnit), number(axis.minorUnit)];
  const isValueAxis = name === "c:valAx";
  return tag(name, {}, [
    tag("c:axId", { val: id }),
    tag("c:scaling", {}, [
      axis.scaleType === "Logarithmic" ? tag("c:logBase", { val: number(axis.logBase) ?? 10 }) : "",
      tag("c:orientation", { val: reversed ? "maxMin" : "minMax" }),
      number(axis.maximum) === undefined ? "" : tag("c:max", { val: number(axis.maximum) }),
      number(axis.minimum) === undefined ? "" : tag("c:min", { val: number(axis.minimum) }),
    ]),
    tag("c:delete", { val: axis.visible === false ? 1 : 0 }),
    tag("c:axPos", { val: side }),
    hasLines ? tag("c:majorGridlines", {}, shapeTag(inner(lines, "format"), "line")) : "",
    minor.visible === true ? tag("c:minorGridlines", {}, shapeTag(inner(minor, "format"), "line")) : "",
    title.visible === true || (title.visible === undefined && typeof title.text === "string")
      ? titleTag(title, text(title.text))
      : "",
    format ? tag("c:numFmt", { formatCode: format, sourceLinked: axis.linkNumberFormat === true ? 1 : 0 }) : "",
    tag("c:majorTickMark", { val: fileWord(tickMarks, axis.majorTickMark) ?? "none" }),
    tag("c:minorTickMark", { val: fileWord(tickMarks, axis.minorTickMark) ?? "none" }),
    tag("c:tickLblPos", { val: fileWord(tickLabelPlaces, axis.tickLabelPosition) ?? "nextTo" }),
    shapeTag(inner(axis, "format"), "line"),
    wordsLook(axis),
    tag("c:crossAx", { val: crosses }),
    tag("c:crosses", { val: "autoZero" }),
    isValueAxis && major ? tag("c:majorUnit", { val: major }) : "",
    isValueAxis && finer ? tag("c:minorUnit", { val: finer }) : "",
  ]);
}

function numbers(address: string, values: readonly (number | null)[]): string {
  const cached = values.flatMap((value, idx) =>
    value === null ? [] : [tag("c:pt", { idx }, tag("c:v", {}, String(value)))],
  );
  return tag("c:numRef", {}, [
    tag("c:f", {}, escaped(absolute(address))),
    tag("c:numCache", {}, [tag("c:formatCode", {}, "General"), tag("c:ptCount", { val: values.length }), ...cached]),
  ]);
}

function texts(name: string, address: string, words: readonly string[]): string {
  const cached = words.map((word, idx) => tag("c:pt", { idx }, tag("c:v", {}, escaped(word))));
  return tag(name, {}, [
    tag("c:f", {}, escaped(absolute(address))),
    tag("c:strCache", {}, [tag("c:ptCount", { val: words.length }), ...cached]),
  ]);
}

/** "Hops!A1:B2" as charts want it: "Hops!$A$1:$B$2". */
function absolute(address: string): string {
  const at = address.lastIndexOf("!") + 1;
  return address.slice(0, at) + address.slice(at).replace(/\$?([A-Z]{1,3})\$?(\d+)/g, "$$$1$$$2");
}

const emu = (points: number) => Math.round(points * perPoint);
