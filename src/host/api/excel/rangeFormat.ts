import type { IBorderData, IBorderStyleData, IStyleData } from "@univerjs/core";
import { BooleanNumber, BorderStyleTypes, WrapStrategy } from "@univerjs/core";
import {
  autofitColumns,
  columnWidth,
  rowHeight,
  setColumnWidth,
  setRowHeight,
  standardHeight,
  standardWidth,
} from "../../engine/layout";
import {
  applyStyle,
  type Edge,
  edgeOf,
  hexColour,
  horizontalAlignments,
  isWrapped,
  uniform,
  verticalAlignments,
} from "../../engine/styles";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { oneOf, wholeNumber } from "./arguments";
import { namedColour } from "./colours";
import type { Areas } from "./rangeAreas";

/** Sets one style in all cells. */
const put = (areas: Areas, style: IStyleData): void => applyStyle(areas, () => style);

const keyOf = <T extends Record<string, unknown>>(table: T, value: unknown): (keyof T & string) | null =>
  Object.keys(table).find((key) => table[key] === value) ?? null;

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
    horizontalAlignment: {
      get: (areas) =>
        uniform(areas, (style) => keyOf(horizontalAlignments, style.ht ?? 0) ?? "General") as Excel.HorizontalAlignment,
      set: (areas, value) => {
        const ht = horizontalAlignments[oneOf(value, Object.keys(horizontalAlignments), "The alignment") as "Left"];
        put(areas, { ht: ht || null });
      },
    },
    indentLevel: {
      get: (areas) => uniform(areas, (style) => Math.round((style.pd?.l ?? 0) / 9)),
      set: (areas, level) => put(areas, { pd: { l: wholeNumber(level, "The indent", 0) * 9 } }),
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
    textOrientation: {
      get: (areas) => uniform(areas, (style) => (style.tr?.v ? 180 : -(style.tr?.a ?? 0))),
      set: (areas, degrees) => {
        if (degrees !== 180 && Math.abs(degrees) > 90)
          refuse("InvalidArgument", "An orientation is -90 to 90, or 180.");
        put(areas, { tr: degrees === 180 ? { a: 0, v: BooleanNumber.TRUE } : { a: -degrees } });
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
    verticalAlignment: {
      get: (areas) =>
        uniform(areas, (style) => keyOf(verticalAlignments, style.vt) ?? "Bottom") as Excel.VerticalAlignment,
      set: (areas, value) =>
        put(areas, {
          vt: verticalAlignments[oneOf(value, Object.keys(verticalAlignments), "The alignment") as "Top"],
        }),
    },
    wrapText: {
      get: (areas) => uniform(areas, isWrapped),
      set: (areas, wrap) => put(areas, { tb: wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW }),
    },
  },
  objects: {
    borders: { of: () => RangeBorderCollection, at: (areas) => areas },
    fill: { of: () => RangeFill, at: (areas) => areas },
    font: { of: () => RangeFont, at: (areas) => areas },
  },
  methods: {
    autofitColumns: (areas) => {
      for (const area of areas) autofitColumns(area);
    },
    autofitRows: (areas) => {
      for (const area of areas) setRowHeight(area, standardHeight(area));
    },
  },
});

export const RangeFill: ProxyClass<Excel.RangeFill, Areas> = proxyClass<Excel.RangeFill, Areas>("RangeFill", {
  scalars: {
    color: {
      // Cells without a fill say white, as Excel does.
      get: (areas) => uniform(areas, (style) => hexColour(style.bg?.rgb) ?? "#FFFFFF"),
      set: (areas, colour) => put(areas, { bg: colour === "" ? null : { rgb: namedColour(colour) } }),
    },
  },
  methods: { clear: (areas) => put(areas, { bg: null }) },
});

const standardFont = { name: "Calibri", size: 11, color: "#000000" } as const;

export const RangeFont: ProxyClass<Excel.RangeFont, Areas> = proxyClass<Excel.RangeFont, Areas>("RangeFont", {
  scalars: {
    bold: {
      get: (areas) => uniform(areas, (style) => style.bl === BooleanNumber.TRUE),
      set: (areas, bold) => put(areas, { bl: bold ? BooleanNumber.TRUE : BooleanNumber.FALSE }),
    },
    color: {
      get: (areas) => uniform(areas, (style) => hexColour(style.cl?.rgb) ?? standardFont.color),
      set: (areas, colour) => put(areas, { cl: { rgb: namedColour(colour) } }),
    },
    italic: {
      get: (areas) => uniform(areas, (style) => style.it === BooleanNumber.TRUE),
      set: (areas, italic) => put(areas, { it: italic ? BooleanNumber.TRUE : BooleanNumber.FALSE }),
    },
    name: {
      get: (areas) => uniform(areas, (style) => style.ff ?? standardFont.name),
      set: (areas, name) => put(areas, { ff: name }),
    },
    size: {
      get: (areas) => uniform(areas, (style) => style.fs ?? standardFont.size),
      set: (areas, points) => {
        if (!(points >= 1 && points <= 409)) refuse("InvalidArgument", "A font size is from 1 to 409.");
        put(areas, { fs: points });
      },
    },
    strikethrough: {
      get: (areas) => uniform(areas, (style) => style.st?.s === BooleanNumber.TRUE),
      set: (areas, on) => put(areas, { st: { s: on ? BooleanNumber.TRUE : BooleanNumber.FALSE } }),
    },
    underline: {
      get: (areas) =>
        uniform(areas, (style) =>
          style.ul?.s === BooleanNumber.TRUE ? (style.ul.t === 9 ? "Double" : "Single") : "None",
        ) as Excel.RangeUnderlineStyle,
      set: (areas, value) => {
        const kind = oneOf(
          value,
          ["None", "Single", "Double", "SingleAccountant", "DoubleAccountant"],
          "The underline",
        );
        put(areas, {
          ul:
            kind === "None"
              ? { s: BooleanNumber.FALSE }
              : { s: BooleanNumber.TRUE, ...(kind.startsWith("Double") ? { t: 9 } : {}) },
        });
      },
    },
  },
});

const sides = [
  "EdgeTop",
  "EdgeBottom",
  "EdgeLeft",
  "EdgeRight",
  "InsideVertical",
  "InsideHorizontal",
  "DiagonalDown",
  "DiagonalUp",
] as const;
type Side = (typeof sides)[number];
type BorderTarget = { readonly areas: Areas; readonly side: Side };

/** Which edges of a cell make up a side of the area: each inner line is the edge of the cells on both sides. */
function edgesAt(area: Areas[number], side: Side, row: number, column: number): Edge[] {
  const top = row === area.row;
  const bottom = row === area.row + area.rowCount - 1;
  const left = column === area.column;
  const right = column === area.column + area.columnCount - 1;
  switch (side) {
    case "EdgeTop":
      return top ? ["t"] : [];
    case "EdgeBottom":
      return bottom ? ["b"] : [];
    case "EdgeLeft":
      return left ? ["l"] : [];
    case "EdgeRight":
      return right ? ["r"] : [];
    case "InsideHorizontal":
      return [...(top ? [] : (["t"] as const)), ...(bottom ? [] : (["b"] as const))];
    case "InsideVertical":
      return [...(left ? [] : (["l"] as const)), ...(right ? [] : (["r"] as const))];
    default:
      return refuse("NotImplemented", "The embedded host does not offer diagonal borders.");
  }
}

/** Lines of the API (style and weight) as the engine's one kind of line. */
const lines: readonly { style: string; weight: string; line: BorderStyleTypes }[] = [
  { style: "Continuous", weight: "Thin", line: BorderStyleTypes.THIN },
  { style: "Continuous", weight: "Hairline", line: BorderStyleTypes.HAIR },
  { style: "Continuous", weight: "Medium", line: BorderStyleTypes.MEDIUM },
  { style: "Continuous", weight: "Thick", line: BorderStyleTypes.THICK },
  { style: "Dash", weight: "Thin", line: BorderStyleTypes.DASHED },
  { style: "Dash", weight: "Medium", line: BorderStyleTypes.MEDIUM_DASHED },
  { style: "DashDot", weight: "Thin", line: BorderStyleTypes.DASH_DOT },
  { style: "DashDot", weight: "Medium", line: BorderStyleTypes.MEDIUM_DASH_DOT },
  { style: "DashDotDot", weight: "Thin", line: BorderStyleTypes.DASH_DOT_DOT },
  { style: "DashDotDot", weight: "Medium", line: BorderStyleTypes.MEDIUM_DASH_DOT_DOT },
  { style: "Dot", weight: "Thin", line: BorderStyleTypes.DOTTED },
  { style: "Double", weight: "Thick", line: BorderStyleTypes.DOUBLE },
  { style: "SlantDashDot", weight: "Medium", line: BorderStyleTypes.SLANT_DASH_DOT },
];

const lineFor = (style: string, weight: string): BorderStyleTypes =>
  (lines.find((line) => line.style === style && line.weight === weight) ?? lines.find((line) => line.style === style)!)
    .line;

/** What all edges of the side have, null where they differ. */
function readBorder<T>({ areas, side }: BorderTarget, read: (border: IBorderStyleData | null) => T): T | null {
  const values = new Set<T>();
  for (const area of areas) {
    const seen = { ...area, rowCount: Math.min(area.rowCount, 5_000), columnCount: Math.min(area.columnCount, 500) };
    for (let row = seen.row; row < seen.row + seen.rowCount; row += 1) {
      for (let column = seen.column; column < seen.column + seen.columnCount; column += 1) {
        for (const edge of edgesAt(area, side, row, column)) {
          const at = { ...area, row, column, rowCount: 1, columnCount: 1 };
          values.add(uniform([at], (style) => read(edgeOf(style, edge) ?? null)) as T);
        }
      }
    }
  }
  if (values.size === 0) return read(null);
  return values.size === 1 ? [...values][0]! : null;
}

function writeBorder(
  { areas, side }: BorderTarget,
  border: (before: IBorderStyleData | null) => IBorderStyleData | null,
) {
  for (const area of areas) {
    applyStyle([area], (row, column) => {
      const edges = edgesAt(area, side, row, column);
      if (edges.length === 0) return null;
      const at = { ...area, row, column, rowCount: 1, columnCount: 1 };
      const bd: IBorderData = {};
      for (const edge of edges) {
        let before: IBorderStyleData | null = null;
        uniform([at], (style) => {
          before = edgeOf(style, edge) ?? null;
          return 0;
        });
        bd[edge] = border(before);
      }
      return { bd };
    });
  }
}

const currentLine = (border: IBorderStyleData | null) => lines.find(({ line }) => line === border?.s);

export const RangeBorder: ProxyClass<Excel.RangeBorder, BorderTarget> = proxyClass<Excel.RangeBorder, BorderTarget>(
  "RangeBorder",
  {
    scalars: {
      color: {
        get: (target) => readBorder(target, (border) => hexColour(border?.cl?.rgb) ?? "#000000"),
        set: (target, colour) =>
          writeBorder(target, (before) => ({
            s: before?.s || BorderStyleTypes.THIN,
            cl: { rgb: namedColour(colour) },
          })),
      },
      sideIndex: { get: ({ side }) => side },
      style: {
        get: (target) => readBorder(target, (border) => currentLine(border)?.style ?? "None") as Excel.BorderLineStyle,
        set: (target, value) => {
          const style = oneOf(value as string, ["None", ...new Set(lines.map((line) => line.style))], "The line style");
          writeBorder(target, (before) =>
            style === "None"
              ? null
              : { s: lineFor(style, currentLine(before)?.weight ?? "Thin"), cl: before?.cl ?? { rgb: "#000000" } },
          );
        },
      },
      weight: {
        get: (target) => readBorder(target, (border) => currentLine(border)?.weight ?? "Thin") as Excel.BorderWeight,
        set: (target, value) => {
          const weight = oneOf(value as string, ["Hairline", "Thin", "Medium", "Thick"], "The weight");
          writeBorder(target, (before) => ({
            s: lineFor(currentLine(before)?.style ?? "Continuous", weight),
            cl: before?.cl ?? { rgb: "#000000" },
          }));
        },
      },
    },
  },
);

export const RangeBorderCollection: ProxyClass<Excel.RangeBorderCollection, Areas> = proxyClass<
  Excel.RangeBorderCollection,
  Areas
>("RangeBorderCollection", {
  items: { of: () => RangeBorder, list: (areas) => sides.slice(0, 6).map((side) => ({ areas, side })) },
  scalars: { count: { get: () => sides.length } },
  methods: {
    getItem: {
      of: () => RangeBorder,
      at: (areas, side) => ({ areas, side: oneOf(side as string, sides, "The border") }),
    },
    getItemAt: {
      of: () => RangeBorder,
      at: (areas, index) => {
        const side = sides[wholeNumber(index, "The index", 0)];
        return side ? { areas, side } : null;
      },
    },
  },
});
