import type { IBorderData, IBorderStyleData } from "@univerjs/core";
import { BorderStyleTypes } from "@univerjs/core";
import type { Area } from "../../engine/area";
import { applyStyle, type Edge, edgeOf, hexColour, uniform } from "../../engine/styles";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { oneOf, wholeNumber } from "./arguments";
import { namedColour } from "./colours";
import { isNamedStyle, keptMark, type Looked, lookOf, putLook, shade } from "./looked";

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
type BorderTarget = { readonly areas: Looked; readonly side: Side };

/** The edge of a cell that a style's border is; a style has no inner lines. */
const styleEdges: Partial<Record<Side, Edge>> = { EdgeTop: "t", EdgeBottom: "b", EdgeLeft: "l", EdgeRight: "r" };
const styleEdge = (side: Side): Edge => styleEdges[side] ?? refuse("InvalidArgument", `A style has no border ${side}.`);

/** Which edges of a cell make up a side of the area: each inner line is the edge of the cells on both sides. */
function edgesAt(area: Area, side: Side, row: number, column: number): Edge[] {
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
  if (isNamedStyle(areas)) {
    const edge = styleEdges[side];
    return edge ? lookOf(areas, (style) => read(edgeOf(style, edge) ?? null)) : read(null);
  }
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
  if (isNamedStyle(areas)) {
    const edge = styleEdge(side);
    putLook(areas, { bd: { [edge]: border(lookOf(areas, (style) => edgeOf(style, edge) ?? null)) } });
    return;
  }
  for (const area of areas) {
    applyStyle([area], (row, column) => {
      const edges = edgesAt(area, side, row, column);
      if (edges.length === 0) return null;
      const at = { ...area, row, column, rowCount: 1, columnCount: 1 };
      const bd: IBorderData = {};
      for (const edge of edges) {
        bd[edge] = border(uniform([at], (style) => edgeOf(style, edge) ?? null));
      }
      return { bd };
    });
  }
}

const currentLine = (border: IBorderStyleData | null) => lines.find(({ line }) => line === border?.s);

// ASSUMPTION: one shade is kept for all borders of a cell; Excel keeps one for each.
const tint = keptMark("borderTint", 0, shade);

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
      tintAndShade: {
        get: ({ areas }) => tint.get(areas),
        set: ({ areas }, value) => tint.set?.(areas, value),
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

export const RangeBorderCollection: ProxyClass<Excel.RangeBorderCollection, Looked> = proxyClass<
  Excel.RangeBorderCollection,
  Looked
>("RangeBorderCollection", {
  items: { of: () => RangeBorder, list: (areas) => sides.slice(0, 6).map((side) => ({ areas, side })) },
  scalars: { count: { get: () => sides.length }, tintAndShade: tint },
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
