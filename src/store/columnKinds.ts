import { say } from "../language/say";
import { daySerial } from "../reading/days";
import { type MeasureKey, measureKeys, measureOf } from "../reading/measures";
import { type Side, wordOfSide } from "../reading/vocabulary";
import { day, measureWord, numberFrom, oneOf, sideWord, words } from "./cellSchemas";

/* Columns that many tables have, each in one way. */

/** A column whose cells may stay empty. */
export const open = { absent: () => null, write: <Value>(value: Value) => value } as const;

/** Words that may be missing. */
export const text = { ...open, format: "@", cell: words() } as const;

/** Words without which a row means nothing. */
export const name = {
  format: "@",
  cell: words(),
  need: "filled",
  absent: () => "",
  write: (value: string) => value,
} as const;

/** A number from `lowest` to `highest` that may be missing. */
export const number = (format: string, lowest: number, highest: number, { whole = false } = {}) =>
  ({ ...open, format, cell: numberFrom(lowest, highest, { whole }) }) as const;

/** A whole number without which a row means nothing. */
export const count = (lowest: number, highest: number) =>
  ({
    format: "0",
    cell: numberFrom(lowest, highest, { whole: true }),
    need: "filled",
    absent: () => lowest,
    write: (value: number) => value,
  }) as const;

/** A day without which a row means nothing; a date on the sheet, ISO with us. */
export const date = {
  format: "yyyy-mm-dd",
  cell: day(),
  need: "filled",
  absent: () => "",
  write: daySerial,
} as const;

/** What a number is, where a test gives several; one that cannot be read leaves its row out. */
export const measure = {
  ...open,
  heading: say`Measure`,
  format: "@",
  width: 20,
  choices: measureKeys.map((key) => measureOf(key).label),
  need: "readable",
  cell: measureWord(),
  write: (key: MeasureKey | null) => (key === null ? null : measureOf(key).label),
} as const;

/** One of a few words. Each value has the word that stands for it, in the language spoken. */
export const choice = <Value extends string>(words: Readonly<Record<Value, string>>, needed: string) =>
  ({
    format: "@",
    choices: Object.values<string>(words),
    cell: oneOf(words, needed),
    write: <Written extends Value | null>(value: Written): string | null =>
      value === null ? null : words[value as Value],
  }) as const;

/** A side of the body. */
export const side = {
  format: "@",
  choices: [wordOfSide("left"), wordOfSide("right")],
  absent: () => null,
  cell: sideWord(),
  write: (side: Side | null): string | null => (side === null ? null : wordOfSide(side)),
} as const;
