import type { ChartPart } from "../../engine/charts";
import { dashes, fileWord, labelContents, labelPlaces } from "../chartWords";
import { perPoint } from "../measures";
import { fileColour } from "./colours";
import { escaped, tag } from "./markup";

export const text = (value: unknown) => (typeof value === "string" ? value : undefined);
export const number = (value: unknown) => (typeof value === "number" ? value : undefined);
export const inner = (part: ChartPart | undefined, name: string): ChartPart => (part?.[name] ?? {}) as ChartPart;

export const solid = (colour: string) => tag("a:solidFill", {}, tag("a:srgbClr", { val: colour.slice(2) }));

/** The typeface of a part of a chart, as `a:rPr` or `a:defRPr`; nothing where nothing was set. */
function fontTag(name: string, font: ChartPart): string {
  const [size, face, colour] = [number(font.size), text(font.name), fileColour(text(font.color))];
  const underline = { Single: "sng", Double: "dbl", None: "none" }[text(font.underline) ?? ""];
  const attributes = {
    sz: size === undefined ? undefined : Math.round(size * 100),
    b: typeof font.bold === "boolean" ? Number(font.bold) : undefined,
    i: typeof font.italic === "boolean" ? Number(font.italic) : undefined,
    u: underline,
  };
  const content = [colour ? solid(colour) : "", face ? tag("a:latin", { typeface: face }) : ""];
  const isEmpty = Object.values(attributes).every((value) => value === undefined) && content.join("") === "";
  return isEmpty ? "" : tag(name, attributes, content);
}

/** How the words of a part are turned; the API says 180 for letters on top of each other. */
function bodyTag(orientation: unknown): string {
  const degrees = number(orientation);
  if (degrees === undefined) return tag("a:bodyPr");
  return degrees === 180
    ? tag("a:bodyPr", { rot: 0, vert: "wordArtVert" })
    : tag("a:bodyPr", { rot: -degrees * 60000 });
}

/** The look of words that the chart itself writes, such as the labels of an axis. */
export function wordsLook(part: ChartPart): string {
  const font = fontTag("a:defRPr", inner(inner(part, "format"), "font"));
  if (font === "" && number(part.textOrientation) === undefined) return "";
  return tag("c:txPr", {}, [
    bodyTag(part.textOrientation),
    tag("a:p", {}, [tag("a:pPr", {}, font || tag("a:defRPr")), tag("a:endParaRPr", { lang: "en-US" })]),
  ]);
}

/** A title of a chart or an axis; without words, nothing. */
export function titleTag(part: ChartPart, words: string | undefined): string {
  if (words === undefined || words === "") return "";
  const look = fontTag("a:rPr", inner(inner(part, "format"), "font"));
  const paragraphs = words
    .split("\n")
    .map((line) => tag("a:p", {}, tag("a:r", {}, [look, tag("a:t", {}, escaped(line))])));
  return tag("c:title", {}, [
    tag("c:tx", {}, tag("c:rich", {}, [bodyTag(part.textOrientation), ...paragraphs])),
    tag("c:overlay", { val: part.overlay === true ? 1 : 0 }),
    shapeTag(inner(part, "format"), "border"),
  ]);
}

/** Fill and edge of a part; nothing where neither was set. */
export function shapeTag(format: ChartPart, edge: "border" | "line"): string {
  const fill = fileColour(text(inner(format, "fill").color));
  const content = (fill ? solid(fill) : "") + lineTag(inner(format, edge));
  return content === "" ? "" : tag("c:spPr", {}, content);
}

/** A line; nothing where nothing of it was set. */
export function lineTag({ color, weight, lineStyle }: ChartPart): string {
  if (lineStyle === "None") return tag("a:ln", {}, tag("a:noFill"));
  const paint = fileColour(text(color));
  const dash = fileWord(dashes, lineStyle);
  const width = number(weight);
  if (!paint && !dash && width === undefined) return "";
  return tag("a:ln", { w: width === undefined ? undefined : Math.round(width * perPoint) }, [
    paint ? solid(paint) : "",
    dash ? tag("a:prstDash", { val: dash }) : "",
  ]);
}

/** Where labels may stand, by the kind of the series: programs call a file damaged that says otherwise. */
const places = {
  bars: ["ctr", "inBase", "inEnd", "outEnd"],
  stacked: ["ctr", "inBase", "inEnd"],
  lines: ["ctr", "l", "r", "t", "b"],
} as const;

export type LabelledKind = keyof typeof places;

/** The labels at the points of a series, all of them or one. */
export function labelContent(part: ChartPart, kind: LabelledKind): string[] {
  const format = text(part.numberFormat);
  const place = fileWord(labelPlaces, part.position);
  return [
    format ? tag("c:numFmt", { formatCode: format, sourceLinked: part.linkNumberFormat === true ? 1 : 0 }) : "",
    shapeTag(inner(part, "format"), "border"),
    wordsLook(part),
    place && (places[kind] as readonly string[]).includes(place) ? tag("c:dLblPos", { val: place }) : "",
    ...Object.entries(labelContents).map(([name, element]) => {
      const isShown = typeof part[name] === "boolean" ? part[name] : name === "showValue";
      return tag(`c:${element}`, { val: isShown ? 1 : 0 });
    }),
    text(part.separator) === undefined ? "" : tag("c:separator", {}, escaped(String(part.separator))),
  ];
}
