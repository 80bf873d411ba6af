import type { ChartPart } from "../../engine/charts";
import { apiWord, dashes, labelContents, labelPlaces, trendlines } from "../chartWords";
import { perPoint } from "../measures";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";
import type { Colours } from "./colours";

/** Only what is there: what a file does not say has the chart's own default. */
export const defined = <Value>(values: { readonly [key: string]: Value | undefined }): ChartPart =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));

const filled = (values: { readonly [key: string]: ChartPart }): ChartPart =>
  Object.fromEntries(Object.entries(values).filter(([, part]) => Object.keys(part).length > 0));

export const wordOf = (element: XmlElement | undefined, name: string): string | undefined =>
  childOf(element, name)?.attributes.val;

/** Truth of a child of charts: present without a value it is true. */
export const isOn = (element: XmlElement | undefined, name: string): boolean | undefined => {
  const child = childOf(element, name);
  return child && truthOf(child, "val", true);
};

/** Colours of drawings: plain ones, and those of the theme by name. */
export function colourOf(fill: XmlElement | undefined, colours: Colours): string | undefined {
  const colour = fill?.children[0];
  if (colour?.name === "srgbClr") return `#${(colour.attributes.val ?? "000000").toUpperCase()}`;
  const place = themeColours.indexOf(colour?.attributes.val ?? "");
  if (colour?.name !== "schemeClr" || place < 0) return undefined;
  // Charts call the theme's light and dark colours background and text.
  const theme = String(place % 10);
  return colours({ name: "color", attributes: { theme }, children: [], text: "" })?.toUpperCase();
}

const themeColours = [
  ...["lt1", "dk1", "lt2", "dk2", "accent1", "accent2", "accent3", "accent4", "accent5", "accent6"],
  ...["bg1", "tx1", "bg2", "tx2"],
];

/** The look of a part: fill, edge (under the API's name for it) and, of its words, typeface and turn. */
export function readLook(part: XmlElement | undefined, edge: "border" | "line", colours: Colours): ChartPart {
  const shape = childOf(part, "spPr");
  const fill = defined({ color: colourOf(childOf(shape, "solidFill"), colours) });
  const words = childOf(part, "txPr") ?? childOf(childOf(part, "tx"), "rich");
  const format = filled({
    fill,
    [edge]: readLine(childOf(shape, "ln"), colours),
    font: readFont(words, colours),
  });
  const body = childOf(words, "bodyPr");
  const turn = numberOf(body, "rot");
  const orientation =
    body?.attributes.vert === "wordArtVert" ? 180 : turn && Math.abs(turn) <= 5400000 ? -turn / 60000 : undefined;
  return { ...filled({ format }), ...defined({ textOrientation: orientation }) };
}

export function readLine(line: XmlElement | undefined, colours: Colours): ChartPart {
  if (childOf(line, "noFill")) return { lineStyle: "None" };
  const width = numberOf(line, "w");
  return defined({
    color: colourOf(childOf(line, "solidFill"), colours),
    weight: width === undefined ? undefined : width / perPoint,
    lineStyle: apiWord(dashes, wordOf(line, "prstDash")),
  });
}

function readFont(words: XmlElement | undefined, colours: Colours): ChartPart {
  const paragraph = childOf(words, "p");
  const look = childOf(childOf(paragraph, "r"), "rPr") ?? childOf(childOf(paragraph, "pPr"), "defRPr");
  if (!look) return {};
  const size = numberOf(look, "sz");
  const truth = (name: string) => (look.attributes[name] === undefined ? undefined : truthOf(look, name));
  const underline = { sng: "Single", dbl: "Double" }[look.attributes.u ?? ""];
  const face = childOf(look, "latin")?.attributes.typeface;
  return defined<unknown>({
    size: size === undefined ? undefined : size / 100,
    bold: truth("b"),
    italic: truth("i"),
    underline,
    color: colourOf(childOf(look, "solidFill"), colours),
    // "+mn-lt" stands for the theme's own typeface.
    name: face?.startsWith("+") ? undefined : face,
  });
}

/** What the labels of a series or of one point show and look like; null where they show nothing. */
export function readLabels(labels: XmlElement | undefined, colours: Colours): ChartPart | null {
  if (!labels || isOn(labels, "delete")) return null;
  const shown = Object.fromEntries(
    Object.entries(labelContents).map(([name, element]) => [name, isOn(labels, element) === true]),
  );
  if (!Object.values(shown).includes(true)) return null;
  const format = childOf(labels, "numFmt");
  return {
    ...shown,
    ...readLook(labels, "border", colours),
    ...defined({
      position: apiWord(labelPlaces, wordOf(labels, "dLblPos")),
      separator: childOf(labels, "separator")?.text,
      numberFormat: format?.attributes.formatCode,
      linkNumberFormat: format && truthOf(format, "sourceLinked"),
    } as Record<string, unknown>),
  };
}

export function readTrendlines(series: XmlElement, colours: Colours): ChartPart[] {
  return childrenOf(series, "trendline").map((line) => ({
    ...readLook(line, "line", colours),
    ...defined<unknown>({
      type: apiWord(trendlines, wordOf(line, "trendlineType")),
      name: childOf(line, "name")?.text,
      polynomialOrder: numberOf(childOf(line, "order"), "val"),
      movingAveragePeriod: numberOf(childOf(line, "period"), "val"),
      forwardPeriod: numberOf(childOf(line, "forward"), "val"),
      backwardPeriod: numberOf(childOf(line, "backward"), "val"),
      intercept: numberOf(childOf(line, "intercept"), "val"),
      showRSquared: isOn(line, "dispRSqr"),
      showEquation: isOn(line, "dispEq"),
    }),
  }));
}

/** Single points of a series that look otherwise, or whose label does, by their places. */
export function readPoints(series: XmlElement, colours: Colours): Record<number, ChartPart> {
  const points: Record<number, ChartPart> = {};
  const at = (element: XmlElement) => numberOf(childOf(element, "idx"), "val") ?? 0;
  for (const point of childrenOf(series, "dPt")) {
    const spot = colourOf(childOf(childOf(childOf(point, "marker"), "spPr"), "solidFill"), colours);
    const format = readLook(point, "border", colours);
    points[at(point)] = { ...format, ...defined({ markerBackgroundColor: spot }) };
  }
  for (const label of childrenOf(childOf(series, "dLbls"), "dLbl")) {
    const own = readLabels(label, colours);
    points[at(label)] = { ...points[at(label)], hasDataLabel: own !== null, ...(own && { dataLabel: own }) };
  }
  return points;
}

/** Parts of a chart that are neither drawn here nor kept, in words. */
export function partsLeft(source: XmlElement): string[] {
  const found = new Set<string>();
  const look = (element: XmlElement): void => {
    const words = leftParts[element.name];
    if (words) found.add(words);
    element.children.forEach(look);
  };
  look(source);
  const plot = childOf(childOf(source, "chart"), "plotArea");
  if ((plot?.children ?? []).filter(({ name }) => /Ax$/.test(name)).length > 2) found.add("a second axis");
  return [...found];
}

const leftParts: Readonly<Record<string, string>> = {
  errBars: "error bars",
  dTable: "a data table",
  view3D: "depth",
  userShapes: "shapes drawn on it",
  upDownBars: "bars between lines",
  hiLowLines: "lines between series",
  gradFill: "a gradient",
  pattFill: "a pattern",
  blipFill: "a picture",
};
