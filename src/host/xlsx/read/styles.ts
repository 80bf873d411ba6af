import { BooleanNumber, type IBorderData, type IStyleData, WrapStrategy } from "@univerjs/core";
import { horizontalAlignments, verticalAlignments } from "../alignments";
import { borderLines } from "../borders";
import { builtInFormats } from "../numberFormats";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";
import type { Colours } from "./colours";

/** The looks a file defines: of cells by their number, of conditional formats by theirs, and of the plain cell. */
export type Styles = {
  readonly cells: readonly IStyleData[];
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
  const cells = childrenOf(childOf(source, "cellXfs"), "xf").map((xf): IStyleData => {
    const at = (attribute: string) => numberOf(xf, attribute) ?? 0;
    return {
      ...(at("fontId") > 0 ? fonts[at("fontId")] : {}),
      ...fills[at("fillId")],
      ...borders[at("borderId")],
      ...readFormat(formats.get(at("numFmtId"))),
      ...readAlignment(childOf(xf, "alignment")),
    };
  });
  const conditional = childrenOf(childOf(source, "dxfs"), "dxf").map((dxf): IStyleData => {
    const [font, fill, border] = ["font", "fill", "border"].map((name) => childOf(dxf, name));
    return {
      ...(font && readFont(font, colours)),
      ...(fill && readFill(fill, colours, "bgColor")),
      ...(border && readBorder(border, colours)),
    };
  });
  return { cells, conditional, plain: withoutBlack(fonts[0] ?? {}) };
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
  return colour && kind === "solid" ? { bg: { rgb: colour } } : {};
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
  return {
    ...(horizontal && { ht: horizontal }),
    ...(vertical && { vt: vertical }),
    ...(truthOf(alignment, "wrapText") && { tb: WrapStrategy.WRAP }),
    // The file counts up to 90 anticlockwise and from 91 clockwise; the grid counts clockwise; 255 is stacked letters.
    ...(rotation === 255 && { tr: { a: 0, v: BooleanNumber.TRUE } }),
    ...(rotation > 0 && rotation <= 180 && { tr: { a: rotation <= 90 ? -rotation : rotation - 90 } }),
  };
}
