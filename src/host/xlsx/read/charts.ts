import type { IWorksheetData } from "@univerjs/core";
import { type Chart, type ChartPart, type ChartSeries, newSeries } from "../../engine/charts";
import { apiWord, blanks, legendPlaces, markers, tickLabelPlaces, tickMarks } from "../chartWords";
import { perPoint } from "../measures";
import type { WorkbookPackage } from "../package/workbookPackage";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";
import {
  colourOf,
  defined,
  isOn,
  partsLeft,
  readLabels,
  readLine,
  readLook,
  readPoints,
  readTrendlines,
  wordOf,
} from "./chartParts";
import type { Colours } from "./colours";

/** A chart of the file, ready to be added to the open workbook. */
export type ReadChart = {
  readonly sheetId: string;
  readonly type: string;
  readonly given: Partial<Omit<Chart, "id" | "sheetId" | "type">>;
  /** What of it is neither drawn nor kept, in words. */
  readonly left: readonly string[];
};

const pointsPerPixel = 0.75;

/** The charts that lie on a sheet, as far as they are of a kind that is drawn here. */
export function readCharts(
  file: WorkbookPackage,
  sheetPath: string,
  sheet: Partial<IWorksheetData>,
  sheetId: string,
  colours: Colours,
): ReadChart[] {
  const charts: ReadChart[] = [];
  for (const path of file.linked(sheetPath, "drawing")) {
    const targets = new Map(file.linksOf(path).map((link) => [link.id, link.target]));
    for (const anchor of file.xml(path)?.children ?? []) {
      const frame = childOf(anchor, "graphicFrame");
      const link = descendant(frame, "chart")?.attributes.id;
      const source = link && file.xml(targets.get(link) ?? "");
      if (!source) continue;
      const name = descendant(frame, "cNvPr")?.attributes.name;
      const read = readChart(source, colours);
      if (read)
        charts.push({
          sheetId,
          type: read.type,
          given: { ...read.given, ...placeOf(anchor, sheet), ...(name && { name }) },
          left: partsLeft(source),
        });
    }
  }
  return charts;
}

/** Where an anchor lies, in points: given outright, or by the cells in which its corners are. */
function placeOf(anchor: XmlElement, sheet: Partial<IWorksheetData>) {
  const [position, size] = [childOf(anchor, "pos"), childOf(anchor, "ext")];
  const corner = (name: string) => {
    const at = childOf(anchor, name);
    const whole = (key: string) => Number(childOf(at, key)?.text ?? 0);
    return {
      left:
        extent(sheet.columnData ?? {}, "w", whole("col"), sheet.defaultColumnWidth ?? 64) + whole("colOff") / perPoint,
      top: extent(sheet.rowData ?? {}, "h", whole("row"), sheet.defaultRowHeight ?? 20) + whole("rowOff") / perPoint,
    };
  };
  const from = position
    ? { left: (numberOf(position, "x") ?? 0) / perPoint, top: (numberOf(position, "y") ?? 0) / perPoint }
    : corner("from");
  if (size)
    return { ...from, width: (numberOf(size, "cx") ?? 0) / perPoint, height: (numberOf(size, "cy") ?? 0) / perPoint };
  const to = corner("to");
  return { ...from, width: Math.max(60, to.left - from.left), height: Math.max(60, to.top - from.top) };
}

/** Width of the first columns (or height of the first rows), in points. */
function extent(lines: object, key: "w" | "h", count: number, standard: number): number {
  const sized = lines as Record<number, { w?: number; h?: number; hd?: number }>;
  let pixels = 0;
  for (let index = 0; index < count; index += 1) pixels += sized[index]?.hd ? 0 : (sized[index]?.[key] ?? standard);
  return pixels * pointsPerPixel;
}

function readChart(source: XmlElement, colours: Colours) {
  const chart = childOf(source, "chart");
  const plot = childOf(chart, "plotArea");
  const groups = (plot?.children ?? []).filter(({ name }) => /^(bar|line|scatter)Chart$/.test(name));
  const first = groups[0];
  if (
    !first ||
    (plot?.children ?? []).some(({ name }) => /Chart$/.test(name) && !/^(bar|line|scatter)Chart$/.test(name))
  )
    return undefined;
  const type = typeOf(first);
  const look = {
    gapWidth: numberOf(childOf(first, "gapWidth"), "val"),
    overlap: numberOf(childOf(first, "overlap"), "val"),
  };
  const series = groups.flatMap((group) =>
    childrenOf(group, "ser").map((one) =>
      readSeries(one, group, { ...defined(look), ...(group !== first && { chartType: typeOf(group) }) }, colours),
    ),
  );
  const [category, value] = axesOf(plot, first);
  const legend = childOf(chart, "legend");
  const titleText = titleOf(childOf(chart, "title"));
  const hasTitle =
    childOf(chart, "title") !== undefined ||
    (series.length === 1 && childOf(chart, "autoTitleDeleted")?.attributes.val !== "1");
  const title: ChartPart = {
    visible: hasTitle,
    ...(titleText && { text: titleText }),
    ...(isOn(childOf(chart, "title"), "overlay") && { overlay: true }),
    ...readLook(childOf(chart, "title"), "border", colours),
  };
  return {
    type,
    given: {
      title,
      legend: {
        visible: legend !== undefined,
        position: apiWord(legendPlaces, wordOf(legend, "legendPos") ?? "r") ?? "Right",
        ...(isOn(legend, "overlay") && { overlay: true }),
        ...readLook(legend, "border", colours),
      },
      axes: { category: readAxis(category, false, colours), value: readAxis(value, true, colours), series: {} },
      series,
      look: defined<unknown>({
        plotVisibleOnly: isOn(chart, "plotVisOnly") === false ? false : undefined,
        displayBlanksAs: apiWord(blanks, wordOf(chart, "dispBlanksAs")),
      }),
      fill: {
        ...(readLook(source, "border", colours).format as ChartPart | undefined),
        ...(isOn(source, "roundedCorners") && { roundedCorners: true }),
      },
      plotArea: readLook(plot, "border", colours),
    },
  };
}

function typeOf(group: XmlElement): string {
  const grouping = childOf(group, "grouping")?.attributes.val ?? "";
  if (group.name === "scatterChart") {
    // Whatever the group says of its style, a series is drawn as a line unless it says that it has none.
    const isJoined = childrenOf(group, "ser").some((one) => !childOf(childOf(childOf(one, "spPr"), "ln"), "noFill"));
    return isJoined ? "XYScatterLines" : "XYScatter";
  }
  if (group.name === "lineChart") return grouping === "stacked" ? "LineStacked" : "LineMarkers";
  const kind = childOf(group, "barDir")?.attributes.val === "bar" ? "Bar" : "Column";
  return `${kind}${grouping === "stacked" || grouping === "percentStacked" ? "Stacked" : "Clustered"}`;
}

function readSeries(source: XmlElement, group: XmlElement, look: ChartPart, colours: Colours): ChartSeries {
  const reference = (...names: readonly string[]) => {
    for (const name of names) {
      const address = descendant(childOf(source, name), "f")?.text;
      if (address) return relative(address);
    }
    return "";
  };
  const named = descendant(childOf(source, "tx"), "f")?.text;
  const name = named ? `=${relative(named)}` : (descendant(childOf(source, "tx"), "v")?.text ?? "");
  const shape = childOf(source, "spPr");
  const inside = colourOf(childOf(shape, "solidFill"), colours);
  const marker = childOf(source, "marker");
  const labels = readLabels(childOf(source, "dLbls") ?? childOf(group, "dLbls"), colours);
  const spot = colourOf(childOf(childOf(marker, "spPr"), "solidFill"), colours);
  return {
    ...newSeries(name),
    values: reference("val", "yVal"),
    categories: reference("cat", "xVal"),
    look: {
      ...look,
      ...defined<unknown>({
        markerStyle: apiWord({ ...markers, None: "none" }, wordOf(marker, "symbol")),
        markerSize: numberOf(childOf(marker, "size"), "val"),
        markerBackgroundColor: spot,
        markerForegroundColor: readLine(childOf(childOf(marker, "spPr"), "ln"), colours).color,
        smooth: isOn(source, "smooth"),
        hasDataLabels: labels ? true : undefined,
      }),
    },
    fill: inside ? { color: inside } : {},
    line: readLine(childOf(shape, "ln"), colours),
    dataLabels: labels ?? {},
    trendlines: readTrendlines(source, colours),
    points: readPoints(source, colours),
  };
}

/** The two axes a group of series is drawn along: the one for categories first. */
function axesOf(
  plot: XmlElement | undefined,
  group: XmlElement,
): readonly [XmlElement | undefined, XmlElement | undefined] {
  const all = (plot?.children ?? []).filter(({ name }) => /Ax$/.test(name));
  const byId = (id: string | undefined) => all.find((axis) => childOf(axis, "axId")?.attributes.val === id);
  const [first, second] = childrenOf(group, "axId").map((axis) => byId(axis.attributes.val));
  return [first, second];
}

function readAxis(axis: XmlElement | undefined, isValue: boolean, colours: Colours): ChartPart {
  const scaling = childOf(axis, "scaling");
  const title = childOf(axis, "title");
  const format = childOf(axis, "numFmt");
  const logarithm = numberOf(childOf(scaling, "logBase"), "val");
  const lines = (name: string) => readLook(childOf(axis, name), "line", colours);
  const tickMark = (name: string) => {
    const word = apiWord(tickMarks, wordOf(axis, name));
    return word === "None" ? undefined : word;
  };
  return {
    ...(title && {
      title: { visible: true, text: titleOf(title) ?? "Axis Title", ...readLook(title, "border", colours) },
    }),
    ...readLook(axis, "line", colours),
    ...defined<unknown>({
      numberFormat: format?.attributes.formatCode,
      linkNumberFormat: format && truthOf(format, "sourceLinked"),
      majorTickMark: tickMark("majorTickMark"),
      minorTickMark: tickMark("minorTickMark"),
      tickLabelPosition: apiWord(tickLabelPlaces, wordOf(axis, "tickLblPos")),
      majorUnit: numberOf(childOf(axis, "majorUnit"), "val"),
      minorUnit: numberOf(childOf(axis, "minorUnit"), "val"),
      scaleType: logarithm === undefined ? undefined : "Logarithmic",
      logBase: logarithm,
    }),
    ...defined({
      minimum: numberOf(childOf(scaling, "min"), "val"),
      maximum: numberOf(childOf(scaling, "max"), "val"),
    }),
    ...(childOf(scaling, "orientation")?.attributes.val === "maxMin" && { reversePlotOrder: true }),
    ...(childOf(axis, "delete")?.attributes.val === "1" && { visible: false }),
    majorGridlines: {
      visible: childOf(axis, "majorGridlines") !== undefined,
      standard: isValue,
      ...lines("majorGridlines"),
    },
    ...(childOf(axis, "minorGridlines") && { minorGridlines: { visible: true, ...lines("minorGridlines") } }),
  };
}

const titleOf = (title: XmlElement | undefined): string | undefined => texts(title).join("") || undefined;

const texts = (element: XmlElement | undefined): string[] =>
  element ? (element.name === "t" || element.name === "v" ? [element.text] : element.children.flatMap(texts)) : [];

function descendant(element: XmlElement | undefined, name: string): XmlElement | undefined {
  for (const child of element?.children ?? []) {
    const found = child.name === name ? child : descendant(child, name);
    if (found) return found;
  }
  return undefined;
}

const relative = (address: string) => {
  const at = address.lastIndexOf("!") + 1;
  return address.slice(0, at) + address.slice(at).replace(/\$/g, "");
};
