import { BooleanNumber, HorizontalAlign, VerticalAlign, WrapStrategy } from "@univerjs/core";
import { horizontalAlignments, indentLevel, isWrapped, verticalAlignments } from "../../engine/styles";
import { refuse } from "../errors";
import type { Scalar } from "../proxies/proxyClass";
import { oneOf, wholeNumber, wordsOf } from "./arguments";
import { keptMark, type Looked, lookOf, markOf, putLook, putMark, truth, word } from "./looked";

const keyOf = <T extends Record<string, unknown>>(table: T, value: unknown): (keyof T & string) | null =>
  Object.keys(table).find((key) => table[key] === value) ?? null;

/** What the engine cannot draw is kept as a mark, and drawn as the nearest it can. */
const nearestHorizontal: Readonly<Record<string, HorizontalAlign>> = {
  Fill: HorizontalAlign.UNSPECIFIED,
  CenterAcrossSelection: HorizontalAlign.CENTER,
};
const nearestVertical: Readonly<Record<string, VerticalAlign>> = {
  Justify: VerticalAlign.TOP,
  Distributed: VerticalAlign.MIDDLE,
};

// biome-ignore lint/suspicious/noExplicitAny: enumerations of the published types are nominal; their values are words.
const enumeration = (get: (target: Looked) => string | null, set: (target: Looked, value: any) => void) =>
  // biome-ignore lint/suspicious/noExplicitAny: as above.
  ({ get, set }) as Scalar<Looked, any>;

/** How text lies in its cell: the same properties of Excel.RangeFormat and Excel.Style. */
export const alignment = {
  autoIndent: keptMark("autoIndent", false, truth),
  horizontalAlignment: enumeration(
    (target) => {
      const kept = markOf(target, "horizontalAlignment", (value) => value ?? "");
      return kept || (kept === null ? null : lookOf(target, (style) => keyOf(horizontalAlignments, style.ht ?? 0)));
    },
    (target, value) => {
      const known = [...Object.keys(horizontalAlignments), ...Object.keys(nearestHorizontal)];
      const wanted = oneOf(String(value), known, "The alignment");
      const drawn = nearestHorizontal[wanted] ?? horizontalAlignments[wanted as "Left"];
      putLook(target, { ht: drawn || null });
      putMark(target, "horizontalAlignment", wanted in nearestHorizontal ? wanted : null);
    },
  ),
  indentLevel: {
    get: (target) => lookOf(target, (style) => Math.round((style.pd?.l ?? 0) / indentLevel)),
    set: (target, level) => putLook(target, { pd: { l: wholeNumber(level, "The indent", 0) * indentLevel } }),
  } as Scalar<Looked, number>,
  readingOrder: keptMark("readingOrder", "Context", word(wordsOf("ReadingOrder"), "The order")),
  shrinkToFit: keptMark("shrinkToFit", false, truth),
  textOrientation: {
    get: (target) => lookOf(target, (style) => (style.tr?.v ? 180 : -(style.tr?.a ?? 0) + 0)),
    set: (target, degrees) => {
      if (degrees !== 180 && Math.abs(degrees) > 90) refuse("InvalidArgument", "An orientation is -90 to 90, or 180.");
      putLook(target, { tr: degrees === 180 ? { a: 0, v: BooleanNumber.TRUE } : { a: -degrees } });
    },
  } as Scalar<Looked, number>,
  verticalAlignment: enumeration(
    (target) => {
      const kept = markOf(target, "verticalAlignment", (value) => value ?? "");
      return kept || (kept === null ? null : lookOf(target, (s) => keyOf(verticalAlignments, s.vt) ?? "Bottom"));
    },
    (target, value) => {
      const known = [...Object.keys(verticalAlignments), ...Object.keys(nearestVertical)];
      const wanted = oneOf(String(value), known, "The alignment");
      putLook(target, { vt: nearestVertical[wanted] ?? verticalAlignments[wanted as "Top"] });
      putMark(target, "verticalAlignment", wanted in nearestVertical ? wanted : null);
    },
  ),
  wrapText: {
    get: (target) => lookOf(target, isWrapped),
    set: (target, wrap) => putLook(target, { tb: wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW }),
  } as Scalar<Looked, boolean>,
};

/** Moves the text in or out by some levels (Excel.RangeFormat.adjustIndent). */
export function adjustIndent(target: Looked, amount: unknown): void {
  const level = Math.max(0, (alignment.indentLevel.get(target) ?? 0) + wholeNumber(amount, "The amount"));
  alignment.indentLevel.set?.(target, Math.min(level, 250));
}
