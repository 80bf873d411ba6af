import type { Area } from "../../engine/area";
import type { Book } from "../../engine/book";
import { readText, readTypes } from "../../engine/cells";
import {
  type Chart as BookChart,
  type ChartSeries as BookSeries,
  type ChartPart,
  newSeries,
} from "../../engine/charts";
import { heightOf, offsetOf, widthOf } from "../../engine/layout";
import { addressOf, resolveArea, wholeSheet } from "../../engine/references";
import type { Sheet } from "../../engine/sheets";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass, type Scalar } from "../proxies/proxyClass";
import { oneOf, text, wholeNumber, wordsOf } from "./arguments";
import { namedColour } from "./colours";
import { areaOf } from "./range";
import { Worksheet } from "./worksheet";

/** A chart in its workbook. */
export type ChartTarget = { readonly book: Book; readonly chart: BookChart };
/** A part of a chart: the plain object its properties are kept in. */
type PartTarget = ChartTarget & { readonly part: ChartPart };
type SeriesTarget = ChartTarget & { readonly series: BookSeries };

const chartOf = ({ book, chart }: ChartTarget): BookChart =>
  book.charts.get(chart.id) ?? refuse("ItemNotFound", "The chart is gone.");

/** Where a property of a kind of object is kept. */
type Keep<Target> = (target: Target) => ChartPart;

/**
 * A property that is kept as it is set. `standard` is what Excel says of a new chart; `check` refuses what Excel
 * refuses.
 */
function keptIn<Target extends ChartTarget>(keep: Keep<Target>) {
  return (
    name: string,
    standard: unknown,
    check: (value: unknown) => unknown = (value) => value,
    // biome-ignore lint/suspicious/noExplicitAny: the properties of a chart have all sorts of types.
  ): Scalar<Target, any> => ({
    get: (target) =>
      name in keep(target)
        ? keep(target)[name]
        : typeof standard === "function"
          ? (standard as (target: Target) => unknown)(target)
          : standard,
    set: (target, value) => {
      chartOf(target);
      keep(target)[name] = check(value);
      target.book.charts.changed(target.chart);
    },
  });
}

const isNumber = (value: unknown) =>
  typeof value === "number" ? value : refuse("InvalidArgument", "A number is wanted.");
const isText = (value: unknown) => text(value, "The property");
const isTruth = (value: unknown) =>
  typeof value === "boolean" ? value : refuse("InvalidArgument", "true or false is wanted.");
const within = (least: number, most: number) => (value: unknown) =>
  typeof value === "number" && value >= least && value <= most
    ? value
    : refuse("InvalidArgument", `A number from ${least} to ${most} is wanted.`);
const isOf = (enumeration: string) => (value: unknown) => oneOf(String(value), wordsOf(enumeration), "The property");

const part = keptIn<PartTarget>(({ part }) => part);
const below =
  (name: string) =>
  (target: PartTarget): PartTarget => {
    const inner = (target.part[name] ?? {}) as ChartPart;
    target.part[name] = inner;
    return { ...target, part: inner };
  };
const partOf = (target: ChartTarget, inner: ChartPart): PartTarget => ({
  book: target.book,
  chart: target.chart,
  part: inner,
});

/* -- The look of parts: fill, line and font are the same everywhere -- */

export const ChartFill: ProxyClass<Excel.ChartFill, PartTarget> = proxyClass<Excel.ChartFill, PartTarget>("ChartFill", {
  methods: {
    clear(target) {
      target.part.color = null;
      target.book.charts.changed(target.chart);
    },
    getSolidColor: { answer: (target) => (typeof target.part.color === "string" ? target.part.color : "") },
    setSolidColor(target, colour) {
      chartOf(target);
      target.part.color = namedColour(colour);
      target.book.charts.changed(target.chart);
    },
  },
});

export const ChartLineFormat: ProxyClass<Excel.ChartLineFormat, PartTarget> = proxyClass<
  Excel.ChartLineFormat,
  PartTarget
>("ChartLineFormat", {
  scalars: {
    color: part("color", "#000000", namedColour),
    lineStyle: part("lineStyle", "Automatic", isOf("ChartLineStyle")),
    weight: part("weight", 0.75, within(0, 1584)),
  },
  methods: {
    clear(target) {
      target.part.lineStyle = "None";
      target.book.charts.changed(target.chart);
    },
  },
});

export const ChartFont: ProxyClass<Excel.ChartFont, PartTarget> = proxyClass<Excel.ChartFont, PartTarget>("ChartFont", {
  scalars: {
    bold: part("bold", false, isTruth),
    color: part("color", "#595959", namedColour),
    italic: part("italic", false, isTruth),
    name: part("name", "Calibri", isText),
    size: part("size", 9, within(1, 409)),
    underline: part("underline", "None", isOf("ChartUnderlineStyle")),
  },
});

export const ChartBorder: ProxyClass<Excel.ChartBorder, PartTarget> = proxyClass<Excel.ChartBorder, PartTarget>(
  "ChartBorder",
  {
    scalars: {
      color: part("color", "#D9D9D9", namedColour),
      lineStyle: part("lineStyle", "Continuous", isOf("ChartLineStyle")),
      weight: part("weight", 0.75, within(0, 1584)),
    },
    methods: {
      clear(target) {
        target.part.lineStyle = "None";
        target.book.charts.changed(target.chart);
      },
    },
  },
);

const fill = { of: () => ChartFill, at: below("fill") };
const line = { of: () => ChartLineFormat, at: below("line") };
const font = { of: () => ChartFont, at: below("font") };
const border = { of: () => ChartBorder, at: below("border") };

export const ChartAreaFormat: ProxyClass<Excel.ChartAreaFormat, PartTarget> = proxyClass<
  Excel.ChartAreaFormat,
  PartTarget
>("ChartAreaFormat", {
  scalars: {
    colorScheme: part("colorScheme", "ColorfulPalette1", isOf("ChartColorScheme")),
    roundedCorners: part("roundedCorners", false, isTruth),
  },
  objects: { border, fill, font },
});

/* -- Title, legend, labels -- */

export const ChartTitleFormat: ProxyClass<Excel.ChartTitleFormat, PartTarget> = proxyClass<
  Excel.ChartTitleFormat,
  PartTarget
>("ChartTitleFormat", { objects: { border, fill, font } });

/** A new chart names its only series as its title; with several it says "Chart Title". */
const standardTitle = ({ book, chart }: PartTarget): string =>
  chart.series.length === 1 ? (book.charts.dataOf(chart).series[0]?.name ?? "") : "Chart Title";

/** What a text's formula shows: the cell it points at. */
function formulaText({ book, chart, part: own }: PartTarget): string | null {
  if (typeof own.formula !== "string" || own.formula === "") return null;
  const area = resolveArea(book, own.formula, { book, id: chart.sheetId });
  return area ? readText({ ...area, rowCount: 1, columnCount: 1 })[0]![0]! : own.formula.replace(/^=/, "");
}

/** Points a text at a cell, as "=Sheet1!A1" in A1 style. Excel says what the cell shows from then on. */
function setTextFormula(target: PartTarget, formula: unknown): void {
  target.part.formula = isText(formula);
  target.part.text = formulaText(target) ?? "";
  target.part.visible = true;
  target.book.charts.changed(target.chart);
}

const titleText = (target: PartTarget): string =>
  formulaText(target) ?? (typeof target.part.text === "string" ? target.part.text : standardTitle(target));

/** Without a screen there are no measured letters: each counts six tenths of its height. In points. */
function textSize({ part: own }: PartTarget, shown: string, standard: number): { width: number; height: number } {
  const look = (own.format as ChartPart | undefined)?.font as ChartPart | undefined;
  const points = typeof look?.size === "number" ? look.size : standard;
  return { width: Math.round(shown.length * points * 0.6 + 12), height: Math.round(points * 1.3 + 8) };
}

export const ChartTitle: ProxyClass<Excel.ChartTitle, PartTarget> = proxyClass<Excel.ChartTitle, PartTarget>(
  "ChartTitle",
  {
    scalars: {
      horizontalAlignment: part("horizontalAlignment", "Center", isOf("ChartTextHorizontalAlignment")),
      left: part("left", 0, isNumber),
      overlay: part("overlay", false, isTruth),
      position: part("position", "Top", isOf("ChartTitlePosition")),
      showShadow: part("showShadow", false, isTruth),
      text: {
        get: titleText,
        set: (target, value) => {
          target.part.text = isText(value);
          target.part.visible = true;
          target.book.charts.changed(target.chart);
        },
      },
      textOrientation: part("textOrientation", 0, within(-90, 180)),
      top: part("top", 0, isNumber),
      verticalAlignment: part("verticalAlignment", "Center", isOf("ChartTextVerticalAlignment")),
      visible: part("visible", true, isTruth),
      height: { get: (target) => textSize(target, titleText(target), 14).height },
      width: { get: (target) => textSize(target, titleText(target), 14).width },
    },
    objects: { format: { of: () => ChartTitleFormat, at: below("format") } },
    methods: {
      setFormula: setTextFormula,
      getSubstring: {
        of: () => ChartFormatString,
        at: (target, start, length) => substring.at(target, start, length),
      },
    },
  },
);

export const ChartLegendFormat: ProxyClass<Excel.ChartLegendFormat, PartTarget> = proxyClass<
  Excel.ChartLegendFormat,
  PartTarget
>("ChartLegendFormat", { objects: { border, fill, font } });

export const ChartLegend: ProxyClass<Excel.ChartLegend, PartTarget> = proxyClass<Excel.ChartLegend, PartTarget>(
  "ChartLegend",
  {
    scalars: {
      height: part("height", 18, isNumber),
      left: part("left", 0, isNumber),
      overlay: part("overlay", false, isTruth),
      position: part("position", "Bottom", isOf("ChartLegendPosition")),
      showShadow: part("showShadow", false, isTruth),
      top: part("top", 0, isNumber),
      visible: part("visible", ({ chart }: ChartTarget) => chart.series.length > 1, isTruth),
      width: part("width", 120, isNumber),
    },
    objects: {
      format: { of: () => ChartLegendFormat, at: below("format") },
      legendEntries: { of: () => ChartLegendEntryCollection, at: (target) => target },
    },
  },
);

type EntryTarget = PartTarget & { readonly index: number };

const entryHeight = 15;

/** One line of the legend; lines stand below each other, as they do at the right of a chart. */
export const ChartLegendEntry: ProxyClass<Excel.ChartLegendEntry, EntryTarget> = proxyClass<
  Excel.ChartLegendEntry,
  EntryTarget
>("ChartLegendEntry", {
  scalars: {
    height: { get: () => entryHeight },
    index: { get: ({ index }) => index },
    left: { get: () => 0 },
    top: { get: ({ index }) => index * entryHeight },
    visible: part("visible", true, isTruth),
    width: { get: ({ book, chart, index }) => (entryNames({ book, chart })[index] ?? "").length * 5.4 + 24 },
  },
});

/** A legend names the series, or of a pie its slices. */
const entryNames = ({ book, chart }: ChartTarget): readonly string[] => {
  const data = book.charts.dataOf(chart);
  return /Pie|Doughnut/.test(chart.type) ? data.categories : data.series.map(({ name }) => name);
};

const entriesOf = (target: PartTarget): EntryTarget[] =>
  entryNames(target).map((_, index) => ({ ...below(`entry ${index}`)(target), index }));

export const ChartLegendEntryCollection: ProxyClass<Excel.ChartLegendEntryCollection, PartTarget> = proxyClass<
  Excel.ChartLegendEntryCollection,
  PartTarget
>("ChartLegendEntryCollection", {
  items: { of: () => ChartLegendEntry, list: entriesOf },
  methods: {
    getCount: { answer: (target) => entriesOf(target).length },
    getItemAt: {
      of: () => ChartLegendEntry,
      at: (target, index) => entriesOf(target)[wholeNumber(index, "The index", 0)] ?? null,
    },
  },
});

export const ChartDataLabelFormat: ProxyClass<Excel.ChartDataLabelFormat, PartTarget> = proxyClass<
  Excel.ChartDataLabelFormat,
  PartTarget
>("ChartDataLabelFormat", { objects: { border, fill, font } });

export const ChartDataLabels: ProxyClass<Excel.ChartDataLabels, PartTarget> = proxyClass<
  Excel.ChartDataLabels,
  PartTarget
>("ChartDataLabels", {
  scalars: {
    autoText: part("autoText", true, isTruth),
    horizontalAlignment: part("horizontalAlignment", "Center", isOf("ChartTextHorizontalAlignment")),
    showAsStickyCallout: { get: () => false },
    verticalAlignment: part("verticalAlignment", "Center", isOf("ChartTextVerticalAlignment")),
    linkNumberFormat: part("linkNumberFormat", true, isTruth),
    numberFormat: part("numberFormat", "General", isText),
    position: part("position", "OutsideEnd", isOf("ChartDataLabelPosition")),
    separator: part("separator", ", ", isText),
    showBubbleSize: part("showBubbleSize", false, isTruth),
    showCategoryName: part("showCategoryName", false, isTruth),
    showLeaderLines: part("showLeaderLines", true, isTruth),
    showLegendKey: part("showLegendKey", false, isTruth),
    showPercentage: part("showPercentage", false, isTruth),
    showSeriesName: part("showSeriesName", false, isTruth),
    showValue: part("showValue", true, isTruth),
    geometricShapeType: part("geometricShapeType", "Rectangle", isOf("GeometricShapeType")),
    textOrientation: part("textOrientation", 0, within(-90, 180)),
  },
  objects: {
    format: { of: () => ChartDataLabelFormat, at: below("format") },
    leaderLines: { of: () => ChartLeaderLines, at: below("leaderLines") },
  },
});

export const ChartLeaderLinesFormat: ProxyClass<Excel.ChartLeaderLinesFormat, PartTarget> = proxyClass<
  Excel.ChartLeaderLinesFormat,
  PartTarget
>("ChartLeaderLinesFormat", { objects: { line } });

export const ChartLeaderLines: ProxyClass<Excel.ChartLeaderLines, PartTarget> = proxyClass<
  Excel.ChartLeaderLines,
  PartTarget
>("ChartLeaderLines", { objects: { format: { of: () => ChartLeaderLinesFormat, at: below("format") } } });

/** A letter or word of a title or label with a look of its own. */
export const ChartFormatString: ProxyClass<Excel.ChartFormatString, PartTarget> = proxyClass<
  Excel.ChartFormatString,
  PartTarget
>("ChartFormatString", { objects: { font } });

const substring = {
  of: () => ChartFormatString,
  at: (target: PartTarget, start: unknown, length: unknown) =>
    below(`letters ${wholeNumber(start, "The start", 0)} ${wholeNumber(length, "The length", 1)}`)(target),
};

/** A size that was set, or that of the text. */
const measured = (target: PartTarget, which: "height" | "width"): number =>
  typeof target.part[which] === "number"
    ? target.part[which]
    : textSize(target, typeof target.part.text === "string" ? target.part.text : "0000", 9)[which];

function setMeasure(target: PartTarget, which: "height" | "width", points: unknown): void {
  target.part[which] = within(0, 100_000)(points);
  target.book.charts.changed(target.chart);
}

/** Where the tail of a label that is a callout points to. */
export const ChartDataLabelAnchor: ProxyClass<Excel.ChartDataLabelAnchor, PartTarget> = proxyClass<
  Excel.ChartDataLabelAnchor,
  PartTarget
>("ChartDataLabelAnchor", { scalars: { left: part("left", 0, isNumber), top: part("top", 0, isNumber) } });

export const ChartDataLabel: ProxyClass<Excel.ChartDataLabel, PartTarget> = proxyClass<
  Excel.ChartDataLabel,
  PartTarget
>("ChartDataLabel", {
  scalars: {
    autoText: part("autoText", true, isTruth),
    formula: part("formula", "", isText),
    geometricShapeType: part("geometricShapeType", "Rectangle", isOf("GeometricShapeType")),
    left: part("left", 0, isNumber),
    linkNumberFormat: part("linkNumberFormat", true, isTruth),
    numberFormat: part("numberFormat", "General", isText),
    position: part("position", "OutsideEnd", isOf("ChartDataLabelPosition")),
    separator: part("separator", ", ", isText),
    showCategoryName: part("showCategoryName", false, isTruth),
    showLegendKey: part("showLegendKey", false, isTruth),
    showPercentage: part("showPercentage", false, isTruth),
    showSeriesName: part("showSeriesName", false, isTruth),
    showValue: part("showValue", true, isTruth),
    text: part("text", "", isText),
    textOrientation: part("textOrientation", 0, within(-90, 180)),
    top: part("top", 0, isNumber),
    height: { get: (target) => measured(target, "height") },
    horizontalAlignment: part("horizontalAlignment", "Center", isOf("ChartTextHorizontalAlignment")),
    showAsStickyCallout: { get: () => false },
    showBubbleSize: part("showBubbleSize", false, isTruth),
    verticalAlignment: part("verticalAlignment", "Center", isOf("ChartTextVerticalAlignment")),
    width: { get: (target) => measured(target, "width") },
  },
  objects: { format: { of: () => ChartDataLabelFormat, at: below("format") } },
  methods: {
    getSubstring: substring,
    getTailAnchor: { of: () => ChartDataLabelAnchor, at: below("tailAnchor") },
    setHeight: (target, points) => setMeasure(target, "height", points),
    setWidth: (target, points) => setMeasure(target, "width", points),
  },
});

/* -- Axes -- */

export const ChartAxisFormat: ProxyClass<Excel.ChartAxisFormat, PartTarget> = proxyClass<
  Excel.ChartAxisFormat,
  PartTarget
>("ChartAxisFormat", { objects: { fill, font, line } });

export const ChartAxisTitleFormat: ProxyClass<Excel.ChartAxisTitleFormat, PartTarget> = proxyClass<
  Excel.ChartAxisTitleFormat,
  PartTarget
>("ChartAxisTitleFormat", { objects: { border, fill, font } });

export const ChartAxisTitle: ProxyClass<Excel.ChartAxisTitle, PartTarget> = proxyClass<
  Excel.ChartAxisTitle,
  PartTarget
>("ChartAxisTitle", {
  scalars: {
    text: {
      get: (target) => (typeof target.part.text === "string" ? target.part.text : "Axis Title"),
      set: (target, value) => {
        target.part.text = isText(value);
        target.part.visible = true;
        target.book.charts.changed(target.chart);
      },
    },
    textOrientation: part("textOrientation", 0, within(-90, 180)),
    visible: part("visible", false, isTruth),
  },
  objects: { format: { of: () => ChartAxisTitleFormat, at: below("format") } },
  methods: { setFormula: setTextFormula },
});

export const ChartGridlinesFormat: ProxyClass<Excel.ChartGridlinesFormat, PartTarget> = proxyClass<
  Excel.ChartGridlinesFormat,
  PartTarget
>("ChartGridlinesFormat", { objects: { line } });

export const ChartGridlines: ProxyClass<Excel.ChartGridlines, PartTarget> = proxyClass<
  Excel.ChartGridlines,
  PartTarget
>("ChartGridlines", {
  scalars: { visible: part("visible", ({ part: own }: PartTarget) => own.standard === true, isTruth) },
  objects: { format: { of: () => ChartGridlinesFormat, at: below("format") } },
});

/** "" gives a limit back to the chart's own choice. */
const limit = (name: string) => part(name, "", (value: unknown) => (value === "" ? "" : isNumber(value)));

export const ChartAxis: ProxyClass<Excel.ChartAxis, PartTarget> = proxyClass<Excel.ChartAxis, PartTarget>("ChartAxis", {
  scalars: {
    alignment: part("alignment", "Center", isOf("ChartTickLabelAlignment")),
    axisGroup: { get: () => "Primary" },
    baseTimeUnit: part("baseTimeUnit", "Days", isOf("ChartAxisTimeUnit")),
    customDisplayUnit: { get: ({ part: own }) => Number(own.customDisplayUnit ?? 1) },
    majorTimeUnitScale: part("majorTimeUnitScale", "Days", isOf("ChartAxisTimeUnit")),
    minorTimeUnitScale: part("minorTimeUnitScale", "Days", isOf("ChartAxisTimeUnit")),
    categoryType: part("categoryType", "Automatic", isOf("ChartAxisCategoryType")),
    displayUnit: part("displayUnit", "None", isOf("ChartAxisDisplayUnit")),
    isBetweenCategories: part("isBetweenCategories", true, isTruth),
    linkNumberFormat: part("linkNumberFormat", true, isTruth),
    logBase: part("logBase", 10, isNumber),
    majorTickMark: part("majorTickMark", "None", isOf("ChartAxisTickMark")),
    majorUnit: limit("majorUnit"),
    maximum: limit("maximum"),
    minimum: limit("minimum"),
    minorTickMark: part("minorTickMark", "None", isOf("ChartAxisTickMark")),
    minorUnit: limit("minorUnit"),
    multiLevel: part("multiLevel", true, isTruth),
    numberFormat: part("numberFormat", "General", isText),
    offset: part("offset", 100, within(0, 1000)),
    position: part("position", "Automatic", isOf("ChartAxisPosition")),
    positionAt: { get: ({ part: own }) => Number(own.positionAt ?? 0) },
    reversePlotOrder: part("reversePlotOrder", false, isTruth),
    scaleType: part("scaleType", "Linear", isOf("ChartAxisScaleType")),
    showDisplayUnitLabel: part("showDisplayUnitLabel", true, isTruth),
    textOrientation: part("textOrientation", 0, within(-90, 180)),
    tickLabelPosition: part("tickLabelPosition", "NextToAxis", isOf("ChartAxisTickLabelPosition")),
    tickLabelSpacing: part("tickLabelSpacing", 1, isNumber),
    tickMarkSpacing: part("tickMarkSpacing", 1, isNumber),
    type: {
      get: ({ chart, part: own }) =>
        own === chart.axes.category ? "Category" : own === chart.axes.value ? "Value" : "Series",
    },
    visible: part("visible", true, isTruth),
  },
  objects: {
    format: { of: () => ChartAxisFormat, at: below("format") },
    majorGridlines: {
      of: () => ChartGridlines,
      at: (target) => {
        const lines = below("majorGridlines")(target);
        lines.part.standard = target.part === target.chart.axes.value;
        return lines;
      },
    },
    minorGridlines: { of: () => ChartGridlines, at: below("minorGridlines") },
    title: { of: () => ChartAxisTitle, at: below("title") },
  },
  methods: {
    setCustomDisplayUnit(target, value) {
      target.part.displayUnit = "Custom";
      target.part.customDisplayUnit = isNumber(value);
      target.book.charts.changed(target.chart);
    },
    setPositionAt(target, value) {
      target.part.position = "Custom";
      target.part.positionAt = isNumber(value);
      target.book.charts.changed(target.chart);
    },
    setCategoryNames(target, source) {
      for (const series of target.chart.series) series.categories = sourceAddress(target, source);
      target.book.charts.changed(target.chart);
    },
  },
});

export const ChartAxes: ProxyClass<Excel.ChartAxes, ChartTarget> = proxyClass<Excel.ChartAxes, ChartTarget>(
  "ChartAxes",
  {
    objects: {
      categoryAxis: { of: () => ChartAxis, at: (target) => partOf(target, target.chart.axes.category) },
      seriesAxis: { of: () => ChartAxis, at: (target) => partOf(target, target.chart.axes.series) },
      valueAxis: { of: () => ChartAxis, at: (target) => partOf(target, target.chart.axes.value) },
    },
    methods: {
      getItem: {
        of: () => ChartAxis,
        at: (target, type, group) => {
          if (group === "Secondary") refuse("NotImplemented", "The embedded host does not offer secondary axes.");
          const axis = oneOf(type as string, ["Category", "Value", "Series"], "The axis");
          return partOf(target, target.chart.axes[axis.toLowerCase() as "category"]);
        },
      },
    },
  },
);

/* -- Series -- */

/** The address a series keeps of the range it is given. */
const sourceAddress = (target: ChartTarget, given: unknown): string =>
  addressOf(areaOf(given, wholeSheet({ book: target.book, id: target.chart.sheetId })));

const look = keptIn<SeriesTarget>(({ series }) => series.look);

export const ChartSeriesFormat: ProxyClass<Excel.ChartSeriesFormat, SeriesTarget> = proxyClass<
  Excel.ChartSeriesFormat,
  SeriesTarget
>("ChartSeriesFormat", {
  objects: {
    fill: { of: () => ChartFill, at: (target) => partOf(target, target.series.fill) },
    line: { of: () => ChartLineFormat, at: (target) => partOf(target, target.series.line) },
  },
});

export const ChartPointFormat: ProxyClass<Excel.ChartPointFormat, PartTarget> = proxyClass<
  Excel.ChartPointFormat,
  PartTarget
>("ChartPointFormat", { objects: { border, fill } });

type PointTarget = PartTarget & { readonly series: BookSeries; readonly index: number };

export const ChartPoint: ProxyClass<Excel.ChartPoint, PointTarget> = proxyClass<Excel.ChartPoint, PointTarget>(
  "ChartPoint",
  {
    scalars: {
      hasDataLabel: keptIn<PointTarget>(({ part: own }) => own)("hasDataLabel", false, isTruth),
      markerBackgroundColor: keptIn<PointTarget>(({ part: own }) => own)("markerBackgroundColor", "", namedColour),
      markerForegroundColor: keptIn<PointTarget>(({ part: own }) => own)("markerForegroundColor", "", namedColour),
      markerSize: keptIn<PointTarget>(({ part: own }) => own)("markerSize", 5, within(2, 72)),
      markerStyle: keptIn<PointTarget>(({ part: own }) => own)("markerStyle", "Automatic", isOf("ChartMarkerStyle")),
      value: {
        get: ({ book, chart, series, index }) =>
          book.charts.dataOf(chart).series[chart.series.indexOf(series)]?.values[index] ?? null,
      },
    },
    objects: {
      dataLabel: { of: () => ChartDataLabel, at: (target) => below("dataLabel")(target) },
      format: { of: () => ChartPointFormat, at: (target) => below("format")(target) },
    },
  },
);

function pointsOf(target: SeriesTarget): PointTarget[] {
  const count = target.book.charts.dataOf(target.chart).series[target.chart.series.indexOf(target.series)]?.values
    .length;
  return Array.from({ length: count ?? 0 }, (_, index) => {
    const own = target.series.points[index] ?? {};
    target.series.points[index] = own;
    return { ...target, part: own, index };
  });
}

export const ChartPointsCollection: ProxyClass<Excel.ChartPointsCollection, SeriesTarget> = proxyClass<
  Excel.ChartPointsCollection,
  SeriesTarget
>("ChartPointsCollection", {
  items: { of: () => ChartPoint, list: pointsOf },
  scalars: { count: { get: (target) => pointsOf(target).length } },
  methods: {
    getCount: { answer: (target) => pointsOf(target).length },
    getItemAt: {
      of: () => ChartPoint,
      at: (target, index) => pointsOf(target)[wholeNumber(index, "The index", 0)] ?? null,
    },
  },
});

export const ChartTrendlineFormat: ProxyClass<Excel.ChartTrendlineFormat, PartTarget> = proxyClass<
  Excel.ChartTrendlineFormat,
  PartTarget
>("ChartTrendlineFormat", { objects: { line } });

export const ChartTrendlineLabelFormat: ProxyClass<Excel.ChartTrendlineLabelFormat, PartTarget> = proxyClass<
  Excel.ChartTrendlineLabelFormat,
  PartTarget
>("ChartTrendlineLabelFormat", { objects: { border, fill, font } });

/** The equation or R squared beside a trendline. */
export const ChartTrendlineLabel: ProxyClass<Excel.ChartTrendlineLabel, PartTarget> = proxyClass<
  Excel.ChartTrendlineLabel,
  PartTarget
>("ChartTrendlineLabel", {
  scalars: {
    autoText: part("autoText", true, isTruth),
    formula: part("formula", "", isText),
    height: { get: (target) => measured(target, "height") },
    horizontalAlignment: part("horizontalAlignment", "Center", isOf("ChartTextHorizontalAlignment")),
    left: part("left", 0, isNumber),
    linkNumberFormat: part("linkNumberFormat", true, isTruth),
    numberFormat: part("numberFormat", "General", isText),
    text: part("text", "", isText),
    textOrientation: part("textOrientation", 0, within(-90, 180)),
    top: part("top", 0, isNumber),
    verticalAlignment: part("verticalAlignment", "Center", isOf("ChartTextVerticalAlignment")),
    width: { get: (target) => measured(target, "width") },
  },
  objects: { format: { of: () => ChartTrendlineLabelFormat, at: below("format") } },
});

export const ChartTrendline: ProxyClass<Excel.ChartTrendline, PartTarget> = proxyClass<
  Excel.ChartTrendline,
  PartTarget
>("ChartTrendline", {
  scalars: {
    backwardPeriod: part("backwardPeriod", 0, isNumber),
    forwardPeriod: part("forwardPeriod", 0, isNumber),
    intercept: part("intercept", "", (value: unknown) => (value === "" ? "" : isNumber(value))),
    movingAveragePeriod: part("movingAveragePeriod", 2, within(2, 255)),
    name: part("name", "Trendline", isText),
    polynomialOrder: part("polynomialOrder", 2, within(2, 6)),
    showEquation: part("showEquation", false, isTruth),
    showRSquared: part("showRSquared", false, isTruth),
    type: part("type", "Linear", isOf("ChartTrendlineType")),
  },
  objects: {
    format: { of: () => ChartTrendlineFormat, at: below("format") },
    label: { of: () => ChartTrendlineLabel, at: below("label") },
  },
  methods: {
    delete(target) {
      for (const series of target.chart.series) {
        series.trendlines = series.trendlines.filter((trendline) => trendline !== target.part);
      }
      target.book.charts.changed(target.chart);
    },
  },
});

export const ChartTrendlineCollection: ProxyClass<Excel.ChartTrendlineCollection, SeriesTarget> = proxyClass<
  Excel.ChartTrendlineCollection,
  SeriesTarget
>("ChartTrendlineCollection", {
  items: { of: () => ChartTrendline, list: (target) => target.series.trendlines.map((own) => partOf(target, own)) },
  methods: {
    add: {
      of: () => ChartTrendline,
      at: (target, type) => {
        const own: ChartPart = { type: isOf("ChartTrendlineType")(type ?? "Linear") };
        target.series.trendlines.push(own);
        target.book.charts.changed(target.chart);
        return partOf(target, own);
      },
    },
    getCount: { answer: (target) => target.series.trendlines.length },
    getItem: {
      of: () => ChartTrendline,
      at: (target, index) => {
        const own = target.series.trendlines[wholeNumber(index, "The index", 0)];
        return own ? partOf(target, own) : null;
      },
    },
  },
});

export const ChartErrorBarsFormat: ProxyClass<Excel.ChartErrorBarsFormat, PartTarget> = proxyClass<
  Excel.ChartErrorBarsFormat,
  PartTarget
>("ChartErrorBarsFormat", { objects: { line } });

export const ChartErrorBars: ProxyClass<Excel.ChartErrorBars, PartTarget> = proxyClass<
  Excel.ChartErrorBars,
  PartTarget
>("ChartErrorBars", {
  scalars: {
    endStyleCap: part("endStyleCap", true, isTruth),
    include: part("include", "Both", isOf("ChartErrorBarsInclude")),
    type: part("type", "FixedValue", isOf("ChartErrorBarsType")),
    visible: part("visible", false, isTruth),
  },
  objects: { format: { of: () => ChartErrorBarsFormat, at: below("format") } },
});

const chartTypes = wordsOf("ChartType").filter((type) => type !== "Invalid");

export const ChartSeries: ProxyClass<Excel.ChartSeries, SeriesTarget> = proxyClass<Excel.ChartSeries, SeriesTarget>(
  "ChartSeries",
  {
    scalars: {
      axisGroup: {
        get: () => "Primary",
        set: (_target, group) => {
          if (group !== "Primary") refuse("NotImplemented", "The embedded host does not offer secondary axes.");
        },
      },
      bubbleScale: look("bubbleScale", 100, within(0, 300)),
      chartType: look(
        "chartType",
        ({ chart }: ChartTarget) => chart.type,
        (type: unknown) => oneOf(String(type), chartTypes, "The type"),
      ),
      doughnutHoleSize: look("doughnutHoleSize", 75, within(10, 90)),
      explosion: look("explosion", 0, within(0, 400)),
      filtered: look("filtered", false, isTruth),
      firstSliceAngle: look("firstSliceAngle", 0, within(0, 360)),
      gapWidth: look(
        "gapWidth",
        ({ chart }: ChartTarget) => (chart.type.startsWith("Bar") ? 182 : 219),
        within(0, 500),
      ),
      hasDataLabels: look("hasDataLabels", false, isTruth),
      invertColor: look("invertColor", "#FFFFFF", namedColour),
      secondPlotSize: look("secondPlotSize", 75, within(5, 200)),
      showConnectorLines: look("showConnectorLines", true, isTruth),
      splitType: look("splitType", "SplitByPosition", isOf("ChartSplitType")),
      splitValue: look("splitValue", 2, isNumber),
      invertIfNegative: look("invertIfNegative", false, isTruth),
      markerBackgroundColor: look("markerBackgroundColor", "", namedColour),
      markerForegroundColor: look("markerForegroundColor", "", namedColour),
      markerSize: look("markerSize", 5, within(2, 72)),
      markerStyle: look("markerStyle", "Automatic", isOf("ChartMarkerStyle")),
      name: {
        get: ({ book, chart, series }) => book.charts.dataOf(chart).series[chart.series.indexOf(series)]?.name ?? "",
        set: (target, name) => {
          target.series.name = text(name, "A series' name");
          target.book.charts.changed(target.chart);
        },
      },
      overlap: look(
        "overlap",
        ({ chart }: ChartTarget) => (/Stacked/.test(chart.type) ? 100 : chart.type.startsWith("Bar") ? 0 : -27),
        within(-100, 100),
      ),
      plotOrder: {
        get: ({ chart, series }) => chart.series.indexOf(series) + 1,
        set: ({ book, chart, series }, order) => {
          const to = Math.min(Math.max(1, wholeNumber(order, "The order")), chart.series.length) - 1;
          chart.series.splice(chart.series.indexOf(series), 1);
          chart.series.splice(to, 0, series);
          book.charts.changed(chart);
        },
      },
      showLeaderLines: look("showLeaderLines", false, isTruth),
      showShadow: look("showShadow", false, isTruth),
      smooth: look("smooth", ({ chart }: ChartTarget) => /Smooth/.test(chart.type), isTruth),
      varyByCategories: look("varyByCategories", ({ chart }: ChartTarget) => /Pie|Doughnut/.test(chart.type), isTruth),
    },
    objects: {
      dataLabels: { of: () => ChartDataLabels, at: (target) => partOf(target, target.series.dataLabels) },
      format: { of: () => ChartSeriesFormat, at: (target) => target },
      points: { of: () => ChartPointsCollection, at: (target) => target },
      trendlines: { of: () => ChartTrendlineCollection, at: (target) => target },
      xErrorBars: { of: () => ChartErrorBars, at: (target) => partOf(target, target.series.errorBars.x) },
      yErrorBars: { of: () => ChartErrorBars, at: (target) => partOf(target, target.series.errorBars.y) },
    },
    methods: {
      delete({ book, chart, series }) {
        chart.series = chart.series.filter((other) => other !== series);
        book.charts.changed(chart);
      },
      getDimensionDataSourceString: { answer: ({ series }, dimension) => dimensionSource(series, dimension) },
      getDimensionDataSourceType: {
        answer: ({ series }, dimension) =>
          (dimensionSource(series, dimension) ? "LocalRange" : "List") as Excel.ChartDataSourceType,
      },
      getDimensionValues: {
        answer: ({ book, chart, series }, dimension) => {
          const data = book.charts.dataOf(chart);
          const own = data.series[chart.series.indexOf(series)];
          const numbers = dimension === "XValues" ? own?.x : own?.values;
          return dimension === "Categories"
            ? [...data.categories]
            : (numbers ?? []).map((value) => String(value ?? ""));
        },
      },
      setBubbleSizes(target, source) {
        target.series.bubbleSizes = sourceAddress(target, source);
        target.book.charts.changed(target.chart);
      },
      setValues(target, source) {
        target.series.values = sourceAddress(target, source);
        target.book.charts.changed(target.chart);
      },
      setXAxisValues(target, source) {
        target.series.categories = sourceAddress(target, source);
        target.book.charts.changed(target.chart);
      },
    },
  },
);

function dimensionSource(series: BookSeries, dimension: unknown): string {
  switch (dimension) {
    case "Categories":
    case "XValues":
      return series.categories;
    case "BubbleSizes":
      return series.bubbleSizes;
    default:
      return series.values;
  }
}

const seriesOf = (target: ChartTarget): SeriesTarget[] =>
  chartOf(target).series.map((series) => ({ ...target, series }));

export const ChartSeriesCollection: ProxyClass<Excel.ChartSeriesCollection, ChartTarget> = proxyClass<
  Excel.ChartSeriesCollection,
  ChartTarget
>("ChartSeriesCollection", {
  items: { of: () => ChartSeries, list: seriesOf },
  scalars: { count: { get: (target) => seriesOf(target).length } },
  methods: {
    add: {
      of: () => ChartSeries,
      at: (target, name, index) => {
        const chart = chartOf(target);
        const series = newSeries(name ?? `Series${chart.series.length + 1}`);
        chart.series.splice(index ?? chart.series.length, 0, series);
        target.book.charts.changed(chart);
        return { ...target, series };
      },
    },
    getCount: { answer: (target) => seriesOf(target).length },
    getItemAt: {
      of: () => ChartSeries,
      at: (target, index) => seriesOf(target)[wholeNumber(index, "The index", 0)] ?? null,
    },
  },
});

/* -- The chart and its collection -- */

export const ChartPlotAreaFormat: ProxyClass<Excel.ChartPlotAreaFormat, PartTarget> = proxyClass<
  Excel.ChartPlotAreaFormat,
  PartTarget
>("ChartPlotAreaFormat", { objects: { border, fill } });

export const ChartPlotArea: ProxyClass<Excel.ChartPlotArea, PartTarget> = proxyClass<Excel.ChartPlotArea, PartTarget>(
  "ChartPlotArea",
  {
    scalars: {
      height: part("height", 150, isNumber),
      insideHeight: part("insideHeight", 130, isNumber),
      insideLeft: part("insideLeft", 0, isNumber),
      insideTop: part("insideTop", 0, isNumber),
      insideWidth: part("insideWidth", 280, isNumber),
      left: part("left", 0, isNumber),
      position: part("position", "Automatic", isOf("ChartPlotAreaPosition")),
      top: part("top", 0, isNumber),
      width: part("width", 300, isNumber),
    },
    objects: { format: { of: () => ChartPlotAreaFormat, at: below("format") } },
  },
);

const chartLook = keptIn<ChartTarget>(({ chart }: ChartTarget) => chart.look);

/** A place or size in points, kept in the chart itself. */
const measure = (name: "left" | "top" | "width" | "height"): Scalar<ChartTarget, number> => ({
  get: (target) => chartOf(target)[name],
  set: (target, points) => {
    chartOf(target)[name] = within(0, 100_000)(points);
    target.book.charts.changed(target.chart);
  },
});

type TableTarget = PartTarget;

export const ChartDataTableFormat: ProxyClass<Excel.ChartDataTableFormat, PartTarget> = proxyClass<
  Excel.ChartDataTableFormat,
  PartTarget
>("ChartDataTableFormat", { objects: { border, fill, font } });

/** The table of numbers below the plot. */
export const ChartDataTable: ProxyClass<Excel.ChartDataTable, TableTarget> = proxyClass<
  Excel.ChartDataTable,
  TableTarget
>("ChartDataTable", {
  scalars: {
    showHorizontalBorder: part("showHorizontalBorder", true, isTruth),
    showLegendKey: part("showLegendKey", true, isTruth),
    showOutlineBorder: part("showOutlineBorder", true, isTruth),
    showVerticalBorder: part("showVerticalBorder", true, isTruth),
    visible: part("visible", false, isTruth),
  },
  objects: { format: { of: () => ChartDataTableFormat, at: below("format") } },
});

const dataTable = (target: ChartTarget): TableTarget => below("dataTable")(partOf(target, target.chart.look));

export const Chart: ProxyClass<Excel.Chart, ChartTarget> = proxyClass<Excel.Chart, ChartTarget>("Chart", {
  scalars: {
    categoryLabelLevel: chartLook("categoryLabelLevel", 0, isNumber),
    chartType: {
      get: (target) => chartOf(target).type as Excel.ChartType,
      set: (target, type) => {
        chartOf(target).type = oneOf(String(type), chartTypes, "The type");
        target.book.charts.changed(target.chart);
      },
    },
    displayBlanksAs: chartLook("displayBlanksAs", "NotPlotted", isOf("ChartDisplayBlanksAs")),
    height: measure("height"),
    id: { get: (target) => chartOf(target).id },
    left: measure("left"),
    name: {
      get: (target) => chartOf(target).name,
      set: (target, name) => {
        chartOf(target).name = text(name, "A chart's name");
        target.book.charts.changed(target.chart);
      },
    },
    plotBy: chartLook("plotBy", "Columns", isOf("ChartPlotBy")),
    plotVisibleOnly: chartLook("plotVisibleOnly", true, isTruth),
    seriesNameLevel: chartLook("seriesNameLevel", 0, isNumber),
    showDataLabelsOverMaximum: chartLook("showDataLabelsOverMaximum", true, isTruth),
    style: chartLook("style", 2, isNumber),
    top: measure("top"),
    width: measure("width"),
  },
  objects: {
    axes: { of: () => ChartAxes, at: (target) => target },
    dataLabels: { of: () => ChartDataLabels, at: (target) => partOf(target, target.chart.dataLabels) },
    format: { of: () => ChartAreaFormat, at: (target) => partOf(target, target.chart.fill) },
    legend: { of: () => ChartLegend, at: (target) => partOf(target, target.chart.legend) },
    plotArea: { of: () => ChartPlotArea, at: (target) => partOf(target, target.chart.plotArea) },
    series: { of: () => ChartSeriesCollection, at: (target) => target },
    title: { of: () => ChartTitle, at: (target) => partOf(target, target.chart.title) },
    worksheet: { of: () => Worksheet, at: ({ book, chart }): Sheet => ({ book, id: chart.sheetId }) },
  },
  methods: {
    activate: (target) => target.book.charts.activate(chartOf(target)),
    delete: (target) => target.book.charts.remove(chartOf(target)),
    getDataTable: { of: () => ChartDataTable, at: dataTable },
    getDataTableOrNullObject: { of: () => ChartDataTable, at: dataTable },
    setData(target, source, by) {
      const chart = chartOf(target);
      chart.series = seriesFrom(source as Area, by as string | undefined);
      target.book.charts.changed(chart);
    },
    setPosition(target, startCell, endCell) {
      const chart = chartOf(target);
      const on = wholeSheet({ book: target.book, id: chart.sheetId });
      const start = areaOf(startCell, on);
      const { left, top } = offsetOf(start);
      Object.assign(chart, { left, top });
      if (endCell !== undefined && endCell !== null) {
        const end = areaOf(endCell, on);
        const corner = offsetOf(end);
        chart.width = corner.left + widthOf(end) - left;
        chart.height = corner.top + heightOf(end) - top;
      }
      target.book.charts.changed(chart);
    },
  },
  events: {
    onActivated: ({ book, chart }, tell) => chartEvent(book, "activated", (one) => one.id === chart.id, tell),
    onDeactivated: ({ book, chart }, tell) => chartEvent(book, "deactivated", (one) => one.id === chart.id, tell),
  },
});

/**
 * The series of a range, as Excel finds them: the longer side runs along a series; a first row of text names the
 * series, a first column of text the categories. Of scatter charts the first column is x.
 */
function seriesFrom(source: Area, by: string | undefined, scatter = false): BookSeries[] {
  const byRows = by === "Rows" || ((by ?? "Auto") === "Auto" && source.columnCount > source.rowCount);
  const types = readTypes(source);
  const at = (series: number, point: number) => (byRows ? types[series]?.[point] : types[point]?.[series]);
  const [count, length] = byRows ? [source.rowCount, source.columnCount] : [source.columnCount, source.rowCount];
  const isName = (type: string | undefined) => type === "String" || type === "Empty";
  const named = length > 1 && Array.from({ length: count }, (_, s) => at(s, 0)).every(isName);
  const firstPoint = named ? 1 : 0;
  const labelled =
    count > 1 &&
    (scatter || Array.from({ length: length - firstPoint }, (_, p) => at(0, p + firstPoint)).every(isName));
  const firstSeries = labelled ? 1 : 0;
  const line = (series: number, from: number, size: number): string =>
    addressOf(
      byRows
        ? { ...source, row: source.row + series, rowCount: 1, column: source.column + from, columnCount: size }
        : { ...source, column: source.column + series, columnCount: 1, row: source.row + from, rowCount: size },
    );
  return Array.from({ length: count - firstSeries }, (_, index) => {
    const series = firstSeries + index;
    return {
      ...newSeries(named ? `=${line(series, 0, 1)}` : `Series${index + 1}`),
      values: line(series, firstPoint, length - firstPoint),
      categories: labelled ? line(0, firstPoint, length - firstPoint) : "",
    };
  });
}

const listed = ({ book, id }: Sheet): ChartTarget[] => book.charts.list(id).map((chart) => ({ book, chart }));

const named = (sheet: Sheet, name: unknown): ChartTarget | null => {
  const wanted = text(name, "A chart's name").toLowerCase();
  return (
    listed(sheet).find(({ chart }: ChartTarget) => chart.name.toLowerCase() === wanted || chart.id === wanted) ?? null
  );
};

export const ChartCollection: ProxyClass<Excel.ChartCollection, Sheet> = proxyClass<Excel.ChartCollection, Sheet>(
  "ChartCollection",
  {
    items: { of: () => Chart, list: listed },
    scalars: { count: { get: (sheet) => listed(sheet).length } },
    methods: {
      add: {
        of: () => Chart,
        reads: true,
        at: (sheet, type, source, by) => {
          const kind = oneOf(String(type), chartTypes, "The type");
          const area = areaOf(source, wholeSheet(sheet));
          const series = seriesFrom(area, by as string | undefined, /^(XY|Bubble)/.test(kind));
          return { book: sheet.book, chart: sheet.book.charts.add(sheet.id, kind, { series }) };
        },
      },
      getCount: { answer: (sheet) => listed(sheet).length },
      getItem: { of: () => Chart, at: named },
      getItemAt: { of: () => Chart, at: (sheet, index) => listed(sheet)[wholeNumber(index, "The index", 0)] ?? null },
      getItemOrNullObject: { of: () => Chart, at: named },
    },
    events: {
      onActivated: (sheet, tell) => chartEvent(sheet.book, "activated", onSheet(sheet), tell),
      onAdded: (sheet, tell) => chartEvent(sheet.book, "added", onSheet(sheet), tell),
      onDeactivated: (sheet, tell) => chartEvent(sheet.book, "deactivated", onSheet(sheet), tell),
      onDeleted: (sheet, tell) => chartEvent(sheet.book, "deleted", onSheet(sheet), tell),
    },
  },
);

const onSheet =
  ({ id }: Sheet) =>
  (chart: BookChart): boolean =>
    chart.sheetId === id;

const eventNames = {
  activated: "ChartActivated",
  added: "ChartAdded",
  deactivated: "ChartDeactivated",
  deleted: "ChartDeleted",
} as const;

function chartEvent<Arguments>(
  book: Book,
  wanted: keyof typeof eventNames,
  isWanted: (chart: BookChart) => boolean,
  tell: (args: Arguments) => void,
): () => void {
  return book.charts.listen((event, chart) => {
    if (event !== wanted || !isWanted(chart) || !book.changes.enabled) return;
    const source = wanted === "added" || wanted === "deleted" ? { source: "Local" } : {};
    tell({ type: eventNames[wanted], chartId: chart.id, worksheetId: chart.sheetId, ...source } as Arguments);
  });
}
