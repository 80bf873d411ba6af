import { BaselineOffset, BooleanNumber } from "@univerjs/core";
import {
  autofitColumns,
  columnWidth,
  rowHeight,
  setColumnWidth,
  setRowHeight,
  standardHeight,
  standardWidth,
} from "../../engine/layout";
import { hexColour } from "../../engine/styles";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass, type Scalar } from "../proxies/proxyClass";
import { adjustIndent, alignment } from "./alignment";
import { oneOf, wordsOf } from "./arguments";
import { namedColour } from "./colours";
import { keptMark, type Looked, lookOf, markOf, putLook, putMark, shade, truth } from "./looked";
import type { Areas } from "./rangeAreas";
import { RangeBorderCollection } from "./rangeBorders";

/** One size of all columns or rows, null where they differ. */
function size(
  areas: Areas,
  count: (area: Areas[number]) => number,
  read: (area: Areas[number], index: number) => number,
) {
  const sizes = new Set<number>();
  for (const area of areas) {
    for (let index = 0; index < Math.min(count(area), 20_000); index += 1) sizes.add(read(area, index));
  }
  return sizes.size === 1 ? [...sizes][0]! : null;
}

export const RangeFormat: ProxyClass<Excel.RangeFormat, Areas> = proxyClass<Excel.RangeFormat, Areas>("RangeFormat", {
  scalars: {
    ...alignment,
    columnWidth: {
      get: (areas) =>
        size(
          areas,
          (area) => area.columnCount,
          (area, index) => columnWidth(area, area.column + index),
        ),
      set: (areas, points) => {
        if (!(points >= 0)) refuse("InvalidArgument", "A width is a number of points.");
        for (const area of areas) setColumnWidth(area, points);
      },
    },
    rowHeight: {
      get: (areas) =>
        size(
          areas,
          (area) => area.rowCount,
          (area, index) => rowHeight(area, area.row + index),
        ),
      set: (areas, points) => {
        if (!(points >= 0 && points <= 409.5)) refuse("InvalidArgument", "A height is from 0 to 409.5 points.");
        for (const area of areas) setRowHeight(area, points);
      },
    },
    useStandardHeight: {
      get: (areas) =>
        size(
          areas,
          (a) => a.rowCount,
          (a, i) => Number(rowHeight(a, a.row + i) === standardHeight(a)),
        ) === 1,
      set: (areas, standard) => {
        if (standard) for (const area of areas) setRowHeight(area, standardHeight(area));
      },
    },
    useStandardWidth: {
      get: (areas) =>
        size(
          areas,
          (a) => a.columnCount,
          (a, i) => Number(columnWidth(a, a.column + i) === standardWidth(a)),
        ) === 1,
      set: (areas, standard) => {
        if (standard) for (const area of areas) setColumnWidth(area, standardWidth(area));
      },
    },
  },
  objects: {
    borders: { of: () => RangeBorderCollection, at: (areas) => areas },
    fill: { of: () => RangeFill, at: (areas) => areas },
    font: { of: () => RangeFont, at: (areas) => areas },
    protection: { of: () => FormatProtection, at: (areas) => areas },
  },
  methods: {
    adjustIndent,
    autofitColumns: (areas) => {
      for (const area of areas) autofitColumns(area);
    },
    autofitRows: (areas) => {
      for (const area of areas) setRowHeight(area, standardHeight(area));
    },
  },
});

/** What protection of the sheet does to cells; without it, nothing. The same of ranges and of styles. */
export const cellProtection = {
  formulaHidden: keptMark("formulaHidden", false, truth),
  locked: keptMark("locked", true, truth),
};

export const FormatProtection: ProxyClass<Excel.FormatProtection, Areas> = proxyClass<Excel.FormatProtection, Areas>(
  "FormatProtection",
  { scalars: cellProtection },
);

export const RangeFill: ProxyClass<Excel.RangeFill, Looked> = proxyClass<Excel.RangeFill, Looked>("RangeFill", {
  scalars: {
    color: {
      // Cells without a fill say white, as Excel does.
      get: (target) => lookOf(target, (style) => hexColour(style.bg?.rgb) ?? "#FFFFFF"),
      set: (target, colour) => putLook(target, { bg: colour === "" ? null : { rgb: namedColour(colour) } }),
    },
    // Patterns are kept and told again; the grid draws the fill's colour alone.
    pattern: {
      get: (target) => {
        const kept = markOf(target, "fillPattern", (value) => value ?? "");
        return kept === "" ? lookOf(target, (style) => (style.bg?.rgb ? "Solid" : "None")) : (kept as "Gray25" | null);
      },
      set: (target, value) => {
        const pattern = oneOf(String(value), wordsOf("FillPattern"), "The pattern");
        if (pattern === "None") putLook(target, { bg: null });
        putMark(target, "fillPattern", pattern === "None" || pattern === "Solid" ? null : pattern);
      },
    },
    patternColor: keptMark("fillPatternColor", "#000000", (value) => namedColour(String(value))),
    patternTintAndShade: keptMark("fillPatternTint", 0, shade),
    tintAndShade: keptMark("fillTint", 0, shade),
  },
  methods: {
    clear: (target) => {
      putLook(target, { bg: null });
      putMark(target, "fillPattern", null);
    },
  },
});

const standardFont = { name: "Calibri", size: 11, color: "#000000" } as const;

/** Letters set lower or higher than the line. */
const baseline = (offset: BaselineOffset): Scalar<Looked, boolean> => ({
  get: (target) => lookOf(target, (style) => style.va === offset),
  set: (target, on) => putLook(target, { va: truth(on) ? offset : BaselineOffset.NORMAL }),
});

export const RangeFont: ProxyClass<Excel.RangeFont, Looked> = proxyClass<Excel.RangeFont, Looked>("RangeFont", {
  scalars: {
    bold: {
      get: (target) => lookOf(target, (style) => style.bl === BooleanNumber.TRUE),
      set: (target, bold) => putLook(target, { bl: bold ? BooleanNumber.TRUE : BooleanNumber.FALSE }),
    },
    color: {
      get: (target) => lookOf(target, (style) => hexColour(style.cl?.rgb) ?? standardFont.color),
      set: (target, colour) => putLook(target, { cl: { rgb: namedColour(colour) } }),
    },
    italic: {
      get: (target) => lookOf(target, (style) => style.it === BooleanNumber.TRUE),
      set: (target, italic) => putLook(target, { it: italic ? BooleanNumber.TRUE : BooleanNumber.FALSE }),
    },
    name: {
      get: (target) => lookOf(target, (style) => style.ff ?? standardFont.name),
      set: (target, name) => putLook(target, { ff: name }),
    },
    size: {
      get: (target) => lookOf(target, (style) => style.fs ?? standardFont.size),
      set: (target, points) => {
        if (!(points >= 1 && points <= 409)) refuse("InvalidArgument", "A font size is from 1 to 409.");
        putLook(target, { fs: points });
      },
    },
    strikethrough: {
      get: (target) => lookOf(target, (style) => style.st?.s === BooleanNumber.TRUE),
      set: (target, on) => putLook(target, { st: { s: on ? BooleanNumber.TRUE : BooleanNumber.FALSE } }),
    },
    subscript: baseline(BaselineOffset.SUBSCRIPT),
    superscript: baseline(BaselineOffset.SUPERSCRIPT),
    tintAndShade: keptMark("fontTint", 0, shade),
    underline: {
      get: (target) =>
        lookOf(target, (style) =>
          style.ul?.s === BooleanNumber.TRUE ? (style.ul.t === 9 ? "Double" : "Single") : "None",
        ) as Excel.RangeUnderlineStyle,
      set: (target, value) => {
        const kind = oneOf(
          value,
          ["None", "Single", "Double", "SingleAccountant", "DoubleAccountant"],
          "The underline",
        );
        putLook(target, {
          ul:
            kind === "None"
              ? { s: BooleanNumber.FALSE }
              : { s: BooleanNumber.TRUE, ...(kind.startsWith("Double") ? { t: 9 } : {}) },
        });
      },
    },
  },
});
