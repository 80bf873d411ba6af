import { say } from "../language/say";
import { type Cell, isCellError } from "./grid";
import { convert, type Unit, unitOf } from "./units";
import { absenceWords } from "./vocabulary";

/** What one cell says where a number is expected. */
export type NumberReading =
  | { readonly kind: "number"; readonly value: number; readonly remark: string | null }
  | { readonly kind: "empty" }
  | { readonly kind: "unread"; readonly code: UnreadCode; readonly why: string };

export type UnreadCode = "absent" | "text" | "error" | "boolean" | "unit" | "notPositive" | "unitSlip";

/**
 * A cell as a number in `unit`. Numbers typed as text are understood ("182 cm", "1.82 m", "182,5") and told in
 * `remark`; nothing is guessed: what has two meanings or none stays unread, with the reason.
 */
export function readNumber(cell: Cell, unit: Unit | null): NumberReading {
  if (cell === null) return { kind: "empty" };
  if (typeof cell === "number")
    return isPlausible(cell) ? { kind: "number", value: cell, remark: null } : tooLarge(cell);
  if (typeof cell === "boolean") return unread("boolean", say`${cell ? "TRUE" : "FALSE"} is not a number.`);
  if (isCellError(cell)) return unread("error", say`The cell shows the error ${cell.error}.`);

  const text = cell.replace(/[\u00a0\u202f]/g, " ").trim();
  if (text === "") return { kind: "empty" };
  const absence = absenceWords[text.toLowerCase()];
  if (absence !== undefined) return unread("absent", say`“${shorten(text)}” stands for ${absence}: no trial.`);

  const match = /^([+-]?\d+(?:[.,]\d+)?)\s*([^\d\s].*)?$/.exec(text);
  if (!match) return unread("text", say`“${shorten(text)}” is text; a number is needed.`);
  if (/^[+-]?[1-9]\d{0,2}[.,]\d{3}$/.test(match[1]!)) {
    return unread("text", say`“${shorten(text)}” could be thousands or decimals; type it as a number.`);
  }
  const value = Number(match[1]!.replace(",", "."));
  if (!isPlausible(value)) return tooLarge(value);
  const spelling = match[2];
  if (spelling === undefined)
    return { kind: "number", value, remark: say`Text “${shorten(text)}” was read as ${value}.` };

  const given = unitOf(spelling);
  if (!given) return unread("text", say`“${shorten(text)}” is text; a number is needed.`);
  if (!unit) return unread("unit", say`“${shorten(text)}” carries a unit, but the column's unit is not set.`);
  const converted = convert(value, given, unit);
  if (converted === null)
    return unread("unit", say`“${shorten(text)}” is in ${given.symbol}, the column in ${unit.symbol}.`);
  // The product of two decimal factors is rounded to the digits a tape can give, so that 1.82 m is 182 cm.
  const rounded = Number(converted.toPrecision(12));
  return {
    kind: "number",
    value: rounded,
    remark: say`Text “${shorten(text)}” was read as ${rounded} ${unit.symbol}.`,
  };
}

/** No test gives a billion of anything, nor a billionth; such a number is a slip, and squares of it would overflow. */
const isPlausible = (value: number): boolean => value === 0 || (Math.abs(value) < 1e9 && Math.abs(value) > 1e-9);

const tooLarge = (value: number): NumberReading => unread("text", say`${value} cannot be a result.`);

const unread = (code: UnreadCode, why: string): NumberReading => ({ kind: "unread", code, why });

/** Long cell text is quoted by its beginning only. */
export const shorten = (text: string): string => (text.length > 24 ? `${text.slice(0, 23)}…` : text);
