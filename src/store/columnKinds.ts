import { day, numberFrom, words } from "./cellSchemas";

/* Columns that many tables have, each in one way. `open` ones may stay empty. */

const open = { absent: () => null, write: <Value>(value: Value) => value } as const;

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

/** Day of the first serial number of the sheet: 1899-12-30, since the sheet holds a 29 February 1900. */
const epoch = Date.UTC(1899, 11, 30);

/** A day without which a row means nothing; a date on the sheet, ISO with us. */
export const date = {
  format: "yyyy-mm-dd",
  cell: day(),
  need: "filled",
  absent: () => "",
  write: (isoDay: string) => Math.round((Date.parse(isoDay) - epoch) / 86_400_000),
} as const;
