import { CellValueType, type ICellData, numfmt } from "@univerjs/core";

/** The error values of Excel that can be typed into a cell. */
export const errorValues: ReadonlySet<string> = new Set([
  "#NULL!",
  "#DIV/0!",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#NUM!",
  "#N/A",
  "#GETTING_DATA",
  "#SPILL!",
  "#CALC!",
  "#BUSY!",
  "#FIELD!",
  "#BLOCKED!",
  "#CONNECT!",
  "#UNKNOWN!",
  "#CYCLE!",
]);

export type CellEntry =
  | { readonly kind: "formula"; readonly formula: string }
  | { readonly kind: "value"; readonly cell: Pick<ICellData, "v" | "t">; readonly format?: string }
  | { readonly kind: "empty" };

const text = (v: string): CellEntry => ({ kind: "value", cell: { v, t: CellValueType.STRING } });

/** Text that stays text whatever it looks like: after a leading apostrophe or in a cell of format "@". */
const literal = (v: string): CellEntry => ({ kind: "value", cell: { v, t: CellValueType.FORCE_STRING } });

/** Commas that part no thousands make text of a number: "1,82" and "14,37" stay as they are. */
const isOddlyGrouped = (typed: string): boolean => {
  const number = /[\d,.]*\d[\d,.]*/.exec(typed)?.[0] ?? "";
  return number.includes(",") && !/^\d{1,3}(,\d{3})+(\.\d*)?$/.test(number);
};

/** A day with dots, "11.8.2026", is text to a program that writes days with slashes (from memory). */
const isDotted = (typed: string): boolean => /^\d{1,2}\.\d{1,2}\.(\d{2}|\d{4})$/.test(typed.trim());

/**
 * What a cell holds after a value is entered, as if typed: text with a leading =, + or - that is no number is a
 * formula (Range.values in the reference), @ begins a formula too, an apostrophe makes text, and text that looks like
 * a number, a date, a truth value or an error becomes one, unless the cell's number format is text.
 */
export function enter(value: unknown, format: string): CellEntry {
  if (typeof value === "number") {
    // ASSUMPTION: a number written into a cell of format "@" becomes text, as typing it does.
    if (format === "@") return literal(String(value));
    // Adding zero turns negative zero into zero: a cell knows no other.
    return { kind: "value", cell: { v: value + 0, t: CellValueType.NUMBER } };
  }
  if (typeof value === "boolean") return { kind: "value", cell: { v: value ? 1 : 0, t: CellValueType.BOOLEAN } };
  const typed = String(value);
  if (typed === "") return { kind: "empty" };
  if (format === "@") return literal(typed);
  if (typed.startsWith("'")) return literal(typed.slice(1));
  if (typed.length > 1 && typed.startsWith("=")) return { kind: "formula", formula: typed };
  const read = isOddlyGrouped(typed) || isDotted(typed) ? null : numfmt.parseValue(typed);
  if (read !== null && typeof read.v === "number") {
    return {
      kind: "value",
      cell: { v: read.v, t: CellValueType.NUMBER },
      ...(read.z && format === "General" ? { format: read.z } : {}),
    };
  }
  if (read !== null && typeof read.v === "boolean") {
    return { kind: "value", cell: { v: read.v ? 1 : 0, t: CellValueType.BOOLEAN } };
  }
  if (errorValues.has(typed.toUpperCase())) return text(typed.toUpperCase());
  if (/^[+-]./.test(typed)) return { kind: "formula", formula: `=${typed}` };
  if (/^@./.test(typed)) return { kind: "formula", formula: `=${typed.slice(1)}` };
  return text(typed);
}
