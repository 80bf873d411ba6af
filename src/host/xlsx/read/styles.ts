import { BooleanNumber, type IBorderData, type IStyleData, WrapStrategy } from "@univerjs/core";
import type { CellMarks } from "../../engine/cellMarks";
import { indentLevel } from "../../engine/styles";
import {
  horizontalAlignments,
  markedHorizontal,
  markedVertical,
  readingOrders,
  verticalAlignments,
} from "../alignments";
import { borderLines } from "../borders";
import { fillPatterns } from "../fillPatterns";
import { builtInFormats } from "../numberFormats";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";
import type { Colours } from "./colours";

/** The looks a file defines: of cells by their number, of conditional formats by theirs, and of the plain cell. */
export type Styles = {
  readonly cells: readonly IStyleData[];
  /** What the grid cannot show of each of these looks, and keeps as marks of the cell; `undefined` for nothing. */
  readonly marks: readonly (CellMarks | undefined)[];
  readonly conditional: readonly IStyleData[];
  readonly plain: IStyleData;
};

export function readStyles(source: XmlElement | undefined, colours: Colours): Styles {
  const fonts = childrenOf(childOf(source, "fonts"), "font").map((font) => readFont(font, colours));
  const fills = childrenOf(childOf(source, "fills"), "fill").map((fill) => readFill(fill, colours, "fgColor"));
  const borders = childrenOf(childOf(source, "borders"), "border").map((border) => readBorder(border, colours));
  const formats = new Map<number, string>(Object.entries(builtInFormats).map(([id, code]) => [Number(id), code]));
  for (const format of childrenOf(childOf(source, "numFmts"), "numFmt")) {
    formats.set(numberOf(format, "numFmtId") ?? -1, format.attributes.formatCode ?? "General");
  }
  const looks = childrenOf(childOf(source, "cellXfs"), "xf");
  const cells = looks.map((xf): IStyleData => {
    const at = (attribute: string) => numberOf(xf, attribute) ?? 0;
    return {
      ...(at("fontId") > 0 ? fonts[at("fontId")] : {}),
      ...fills[at("fillId")],
      ...borders[at("borderId")],
      ...readFormat(formats.get(at("numFmtId"))),
      ...readAlignment(childOf(xf, "alignment")),
    };
  });
  const patterns = childrenOf(childOf(source, "fills"), "fill").map((fill) => readPattern(fill, colours));
  const marks = looks.map((xf): CellMarks | undefined => {
    const own = { ...readMarks(xf), ...patterns[numberOf(xf, "fillId") ?? 0] };
    return Object.keys(own).length > 0 ? own : undefined;
  });
  const conditional = childrenOf(childOf(source, "dxfs"), "dxf").map((dxf): IStyleData => {
    const [font, fill, border] = ["font", "fill", "border"].map((name) => childOf(dxf, name));
    return {
      ...(font && readFont(font, colours)),
      ...(fill && readFill(fill, colours, "bgColor")),
      ...(border && readBorder(border, colours)),
    };
  });
  return { cells, marks, conditional, plain: withoutBlack(fonts[0] ?? {}) };
}

/** Black is what the grid writes in anyway; as a colour of its own it would stand in every cell's look. */
const withoutBlack = ({ cl, ...plain }: IStyleData): IStyleData =>
  cl && cl.rgb !== "#000000" ? { ...plain, cl } : plain;

function readFont(font: XmlElement, colours: Colours): IStyleData {
  const has = (name: string) => {
    const child = childOf(font, name);
    return child !== undefined && truthOf(child, "val", true);
  };
  const family = childOf(font, "name")?.attributes.val;
  const size = numberOf(childOf(font, "sz"), "val");
  const colour = colours(childOf(font, "color"));
  const underline = childOf(font, "u");
  return {
    ...(family && { ff: family }),
    ...(size && { fs: size }),
    ...(colour && { cl: { rgb: colour } }),
    ...(has("b") && { bl: BooleanNumber.TRUE }),
    ...(has("i") && { it: BooleanNumber.TRUE }),
    ...(has("strike") && { st: { s: BooleanNumber.TRUE } }),
    ...(underline && underline.attributes.val !== "none" && { ul: { s: BooleanNumber.TRUE } }),
  };
}

/** A solid cell fill keeps its colour in front, a conditional one behind: a trap of the format. */
function readFill(fill: XmlElement, colours: Colours, solid: "fgColor" | "bgColor"): IStyleData {
  const pattern = childOf(fill, "patternFill");
  const kind = pattern?.attributes.patternType ?? (solid === "bgColor" ? "solid" : "none");
  if (kind === "none") return {};
  const colour =
    colours(childOf(pattern, kind === "solid" ? solid : "bgColor")) ?? colours(childOf(pattern, "fgColor"));
  if (kind === "solid") return colour ? { bg: { rgb: colour } } : {};
  const behind = colours(childOf(pattern, "bgColor"));
  return behind && behind !== "#ffffff" ? { bg: { rgb: behind } } : {};
}

/** The grid draws the colour behind a pattern; the pattern itself is kept. */
function readPattern(fill: XmlElement, colours: Colours): CellMarks {
  const pattern = childOf(fill, "patternFill");
  const [name] = Object.entries(fillPatterns).find(([, kind]) => kind === pattern?.attributes.patternType) ?? [];
  const colour = colours(childOf(pattern, "fgColor"));
  return name ? { fillPattern: name, ...(colour && { fillPatternColor: colour.toUpperCase() }) } : {};
}

function readBorder(border: XmlElement, colours: Colours): IStyleData {
  const sides: IBorderData = {};
  for (const [name, key] of [
    ["top", "t"],
    ["bottom", "b"],
    ["left", "l"],
    ["right", "r"],
  ] as const) {
    const side = childOf(border, name);
    const line = borderLines[side?.attributes.style ?? ""];
    if (side && line) sides[key] = { s: line, cl: { rgb: colours(childOf(side, "color")) ?? "#000000" } };
  }
  return Object.keys(sides).length > 0 ? { bd: sides } : {};
}

const readFormat = (code: string | undefined): IStyleData =>
  code === undefined || code === "General" ? {} : { n: { pattern: code } };

function readAlignment(alignment: XmlElement | undefined): IStyleData {
  if (!alignment) return {};
  const horizontal = horizontalAlignments[alignment.attributes.horizontal ?? ""];
  const vertical = verticalAlignments[alignment.attributes.vertical ?? ""];
  const rotation = numberOf(alignment, "textRotation") ?? 0;
  const indent = numberOf(alignment, "indent") ?? 0;
  return {
    ...(horizontal && { ht: horizontal }),
    ...(vertical && { vt: vertical }),
    ...(truthOf(alignment, "wrapText") && { tb: WrapStrategy.WRAP }),
    ...(indent > 0 && { pd: { l: indent * indentLevel } }),
    // The file counts up to 90 anticlockwise and from 91 clockwise; the grid counts clockwise; 255 is stacked letters.
    ...(rotation === 255 && { tr: { a: 0, v: BooleanNumber.TRUE } }),
    ...(rotation > 0 && rotation <= 180 && { tr: { a: rotation <= 90 ? -rotation : rotation - 90 } }),
  };
}

function readMarks(xf: XmlElement): CellMarks {
  const alignment = childOf(xf, "alignment");
  const protection = childOf(xf, "protection");
  const horizontal = markedHorizontal[alignment?.attributes.horizontal as keyof typeof markedHorizontal];
  const vertical = markedVertical[alignment?.attributes.vertical as keyof typeof markedVertical];
  const reading = readingOrders[numberOf(alignment, "readingOrder") ?? 0];
  return {
    ...(horizontal && { horizontalAlignment: horizontal }),
    ...(vertical && { verticalAlignment: vertical }),
    ...(reading && reading !== "Context" && { readingOrder: reading }),
    ...(truthOf(alignment, "shrinkToFit") && { shrinkToFit: true }),
    ...(!truthOf(protection, "locked", true) && { locked: false }),
    ...(truthOf(protection, "hidden") && { formulaHidden: true }),
  };
}
