import type { Estimate } from "../engine/confidence";
import { missing } from "../engine/refusals";
import { ok, type Result } from "../engine/result";
import { say } from "../language/say";
import { invalid, isError, notAvailable, type Readings } from "./border";

/** What a cell of an answer can hold. `null` is an empty one: Excel would show it as 0, so it leaves as "". */
type Shown = number | string | null;

/** The ranges of a formula by what they hold, in the words of its messages ("body mass"). */
type Ranges = Readonly<Record<string, Readings<number | string>>>;
type Values<R extends Ranges> = { readonly [What in keyof R]: R[What] extends Readings<infer T> ? T : never };
type Rows<R extends Ranges> = { readonly [What in keyof R]: readonly (Values<R>[What] | null)[] };

/**
 * One answer for each cell. A single cell, row or column serves all cells across or below it, as in Excel's own arithmetic.
 * Cells without any value stay empty; one that cannot be answered gets its own error and leaves the others good.
 */
export function cellByCell<R extends Ranges>(ranges: R, compute: (values: Values<R>) => Result<Shown>): any[][] {
  const height = common(ranges, "rows", (readings) => readings.length);
  const width = common(ranges, "columns", (readings) => readings[0]?.length ?? 0);
  return Array.from({ length: height }, (_, row) =>
    Array.from({ length: width }, (_, column) => {
      const read = mapRanges(ranges, (readings) => {
        const across = readings[readings.length === 1 ? 0 : row]!;
        return across[across.length === 1 ? 0 : column]!;
      });
      return shownFor(ranges, read, () => cell(compute(read as Values<R>), (value) => value));
    }),
  );
}

/**
 * One answer of `width` cells for each row: a row is one athlete. A range of a single row serves all of them.
 * Rows without any value stay empty; one that cannot be answered has its own error and leaves the others good.
 */
export function rowByRow<R extends Ranges>(
  ranges: R,
  width: number,
  compute: (rows: Rows<R>, row: number) => Result<readonly Shown[]>,
): any[][] {
  const height = common(ranges, "rows", (readings) => readings.length);
  return Array.from({ length: height }, (_, row) => {
    const rows = mapRanges(ranges, (readings) => readings[readings.length === 1 ? 0 : row]!);
    const unreadable = Object.values(rows).flat().find(isError);
    const own = Object.keys(ranges).filter((what) => ranges[what]!.length > 1 || height === 1);
    if (own.every((what) => rows[what]!.every((reading) => reading === null))) return filled(width, "");
    if (unreadable) return filled(width, unreadable);
    const result = compute(rows as Rows<R>, row);
    return result.ok ? result.value.map(shown) : filled(width, notAvailable(result));
  });
}

/** One cell of a result that spills: its own value or its own error, so that one bad row leaves the others good. */
export const cell = <T>(result: Result<T>, show: (value: T) => Shown): number | string | CustomFunctions.Error =>
  result.ok ? shown(show(result.value)) : notAvailable(result);

/** What of a result a function shows. */
export const part = <T, Part>(result: Result<T>, take: (value: T) => Part): Result<Part> =>
  result.ok ? ok(take(result.value)) : result;

/** Answers in the places of the cells they belong to: `list` is row by row. */
export const inPlaces = (range: readonly (readonly unknown[])[], list: readonly Shown[]): any[][] => {
  let next = 0;
  return range.map((row) => row.map(() => shown(list[next++] ?? null)));
};

/** A table whose lines begin with a label, filled up with empty cells to one width. */
export function labelled(lines: readonly (readonly (Shown | CustomFunctions.Error)[])[]): any[][] {
  const width = Math.max(...lines.map((line) => line.length));
  return lines.map((line) => [...line.map((value) => value ?? ""), ...filled(width - line.length, "")]);
}

/** A value with its limits, side by side. */
export const withLimits = ({ value, low, high }: Estimate): [number, number, number] => [value, low, high];

/** The first line of a table whose values have limits. */
export const limitHeadings = (): string[] => ["", say`Value`, say`Lower`, say`Upper`];

/** A line of a table for a value, or for a value with its limits; its own error where there is none. */
export const line = (label: string, result: Result<number | Estimate>) => {
  if (!result.ok) return [label, notAvailable(result)];
  return typeof result.value === "number" ? [label, result.value] : [label, ...withLimits(result.value)];
};

/** Lines of a table for what a reader must know beside the numbers. */
export const cautionLines = (cautions: readonly { readonly message: string }[]): [string, string][] =>
  cautions.map(({ message }) => [say`Caution`, message]);

const shown = (value: Shown): number | string => value ?? "";
const filled = <T>(length: number, value: T): T[] => new Array<T>(length).fill(value);

/** How many rows (or columns) the answer has: ranges agree, or have one that serves all. */
function common(ranges: Ranges, of: "rows" | "columns", count: (readings: Ranges[string]) => number): number {
  const counts = Object.entries(ranges).map(([what, readings]) => ({ what, count: count(readings) }));
  const largest = counts.reduce((most, one) => (one.count > most.count ? one : most));
  const other = counts.find((one) => one.count !== largest.count && one.count !== 1);
  if (other) {
    throw invalid(
      of === "rows"
        ? say`The ranges do not match: ${largest.what} has ${largest.count} rows, ${other.what} has ${other.count}.`
        : say`The ranges do not match: ${largest.what} has ${largest.count} columns, ${other.what} has ${other.count}.`,
    );
  }
  return largest.count;
}

function shownFor(ranges: Ranges, read: Readonly<Record<string, unknown>>, compute: () => unknown): unknown {
  const isSingle = (what: string) => ranges[what]!.length === 1 && ranges[what]![0]!.length === 1;
  const all = Object.keys(read);
  const own = all.some((what) => !isSingle(what)) ? all.filter((what) => !isSingle(what)) : all;
  if (own.every((what) => read[what] === null)) return "";
  const unreadable = all.map((what) => read[what]).find(isError);
  if (unreadable) return unreadable;
  const gaps = all.filter((what) => read[what] === null);
  return gaps.length > 0 ? notAvailable({ reasons: gaps.map((what) => missing(say`the ${what}`)) }) : compute();
}

const mapRanges = <R extends Ranges, T>(ranges: R, take: (readings: R[string]) => T): Record<string, T> =>
  Object.fromEntries(Object.entries(ranges).map(([what, readings]) => [what, take(readings as R[string])]));
