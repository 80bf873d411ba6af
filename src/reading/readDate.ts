import { say } from "../language/say";
import { dayOfSerial } from "./days";
import { type Cell, isCellError } from "./grid";

/** What one cell says where a day is expected: ISO (YYYY-MM-DD), or why it does not. */
export type DateReading =
  | { readonly kind: "date"; readonly date: string }
  | { readonly kind: "empty" }
  | { readonly kind: "unread"; readonly why: string };

/** Serial numbers of the days from 1 January 1990 to 31 December 2099: a number outside is not meant as a day. */
const firstSerial = 32_874;
const lastSerial = 73_050;

/**
 * A cell as a day. Spreadsheets keep days as serial numbers (1900 date system). Of days typed as text only those with
 * one meaning are read: 2026-08-11, 11.8.2026, 11.8.26, 11/25/2026 or 25/11/2026, 11 August 2026 or August 11, 2026
 * (German months too), but not 8/11/2026.
 */
export function readDate(cell: Cell): DateReading {
  if (cell === null || (typeof cell === "string" && cell.trim() === "")) return { kind: "empty" };
  if (isCellError(cell)) return unread(say`The cell shows the error ${cell.error}; a date is needed.`);
  if (typeof cell === "boolean") return unread(say`${cell ? "TRUE" : "FALSE"} is not a date.`);
  if (typeof cell === "number") {
    if (!(cell >= firstSerial && cell < lastSerial + 1)) return unread(say`${cell} is not a date from 1990 to 2099.`);
    return { kind: "date", date: dayOfSerial(cell) };
  }
  const text = cell.trim();
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})(?:[T ].*)?$/.exec(text);
  if (iso) return dayOf(text, Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const dotted = /^(\d{1,2})\.\s?(\d{1,2})\.\s?(\d{4}|\d{2})$/.exec(text);
  if (dotted) {
    const year = Number(dotted[3]);
    return dayOf(text, year < 100 ? 2000 + year : year, Number(dotted[2]), Number(dotted[1]));
  }
  const dayFirst = /^(\d{1,2})\.?\s(\p{L}{3,9})\.?,?\s(\d{4})$/u.exec(text);
  const named = dayFirst ? monthOf(dayFirst[2]!) : null;
  if (dayFirst && named !== null) return dayOf(text, Number(dayFirst[3]), named, Number(dayFirst[1]));
  const monthFirst = /^(\p{L}{3,9})\.?\s(\d{1,2}),?\s(\d{4})$/u.exec(text);
  const namedFirst = monthFirst ? monthOf(monthFirst[1]!) : null;
  if (monthFirst && namedFirst !== null) return dayOf(text, Number(monthFirst[3]), namedFirst, Number(monthFirst[2]));
  const slashed = /^(\d{1,2})\/(\d{1,2})\/(\d{4})$/.exec(text);
  if (!slashed) return unread(say`“${text.slice(0, 24)}” is not a date.`);
  const [first, second, year] = [Number(slashed[1]), Number(slashed[2]), Number(slashed[3])];
  if (first <= 12 && second <= 12 && first !== second) {
    return unread(say`“${text}” could be two days; type it as a date, or as ${year}-MM-DD.`);
  }
  return first > 12 ? dayOf(text, year, second, first) : dayOf(text, year, first, second);
}

function dayOf(text: string, year: number, month: number, day: number): DateReading {
  const date = new Date(Date.UTC(year, month - 1, day));
  const exists = date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return exists && year >= 1990 && year <= 2099
    ? { kind: "date", date: isoOf(date) }
    : unread(say`“${text}” is not a date from 1990 to 2099.`);
}

/** The months by their first three letters, English and German. */
const months = ["jan", "feb", "mar|mär", "apr", "may|mai", "jun", "jul", "aug", "sep", "oct|okt", "nov", "dec|dez"];

function monthOf(word: string): number | null {
  const at = months.findIndex((start) => new RegExp(`^(?:${start})`, "i").test(word));
  return at < 0 ? null : at + 1;
}

const isoOf = (date: Date): string => date.toISOString().slice(0, 10);

const unread = (why: string): DateReading => ({ kind: "unread", why });
