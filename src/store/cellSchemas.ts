import { z } from "zod";
import { say } from "../language/say";
import { type Cell, isCellError, textOf } from "../reading/grid";
import { type MeasureKey, measureCalled } from "../reading/measures";
import { readDate } from "../reading/readDate";
import { readNumber, shorten } from "../reading/readNumber";
import { unitOf } from "../reading/units";
import { type Side, sideOf } from "../reading/vocabulary";
import { isWording } from "./sameName";

/** What a cell of a table of ours must hold; null is an empty cell, an issue says in a coach's words what is needed. */
export type CellSchema<Value> = z.ZodType<Value | null>;

type Unread = { readonly why: string };

function cellSchema<Value extends string | number>(read: (cell: Cell) => Value | Unread | null): CellSchema<Value> {
  return z.custom<Cell>().transform((cell, context): Value | null => {
    const value = read(cell);
    if (typeof value !== "object" || value === null) return value;
    context.addIssue({ code: "custom", message: value.why });
    return z.NEVER;
  });
}

/** Words as they stand, without the blanks around them. */
export const words = (): CellSchema<string> => wordsRead<string>((text) => text);

/** Symbol of a unit we know, else the words of the coach: a battery may count in units we never convert. */
export const unitSymbol = (): CellSchema<string> => wordsRead<string>((text) => unitOf(text)?.symbol ?? text);

/** One of a few words, in any case and in any language of ours, each standing for a value. */
export const oneOf = <Value extends string>(
  words: Readonly<Record<Value, string>>,
  needed: string,
): CellSchema<Value> =>
  wordsRead<Value>((text) => {
    const value = (Object.keys(words) as Value[]).find((one) => isWording(text, words[one]));
    return value === undefined ? { why: say`“${shorten(text)}” is ${needed}.` } : value;
  });

export const sideWord = (): CellSchema<Side> =>
  wordsRead<Side>((text) => sideOf(text) ?? { why: say`“${shorten(text)}” is neither left nor right.` });

export const measureWord = (): CellSchema<MeasureKey> =>
  wordsRead<MeasureKey>(
    (text) =>
      measureCalled(text) ?? { why: say`“${shorten(text)}” is no measure we know; leave it empty or choose one.` },
  );

/** @param unit of the column; a number typed with another unit of its kind is converted. */
export const numberFrom = (
  lowest: number,
  highest: number,
  { whole = false, unit = null }: { readonly whole?: boolean; readonly unit?: string | null } = {},
): CellSchema<number> =>
  cellSchema<number>((cell) => {
    const read = readNumber(cell, unit === null ? null : unitOf(unit));
    if (read.kind === "empty" || (read.kind === "unread" && read.code === "absent")) return null;
    if (read.kind === "unread") return { why: read.why };
    if (whole && !Number.isInteger(read.value)) return { why: say`${read.value} is not a whole number.` };
    if (read.value < lowest || read.value > highest) {
      const bounds = highest === Number.POSITIVE_INFINITY ? say`from ${lowest} up` : say`from ${lowest} to ${highest}`;
      return { why: say`${read.value} is not ${bounds}.` };
    }
    return read.value;
  });

/** A number as a column of results holds it: above zero, as `readResults` asks. */
export const resultNumber = (): CellSchema<number> =>
  cellSchema<number>((cell) => {
    const read = readNumber(cell, null);
    if (read.kind === "empty") return null;
    if (read.kind === "unread") return { why: read.why };
    return read.value > 0 ? read.value : { why: say`${read.value} is not a possible result; it must be above zero.` };
  });

/** A day, given as ISO. */
export const day = (): CellSchema<string> =>
  cellSchema<string>((cell) => {
    const read = readDate(cell);
    if (read.kind === "unread") return { why: read.why };
    return read.kind === "empty" ? null : read.date;
  });

const wordsRead = <Value extends string>(read: (text: string) => Value | Unread): CellSchema<Value> =>
  cellSchema<Value>((cell) => {
    if (isCellError(cell)) return { why: say`The cell shows the error ${cell.error}; words are needed.` };
    const text = textOf(cell);
    return text === "" ? null : read(text);
  });
