import { confidenceRefusals } from "../engine/confidence";
import type { Refused, Result } from "../engine/result";
import { type Direction, type Reduction, reductions } from "../engine/trials/reduction";
import { say } from "../language/say";
import { daySerial } from "../reading/days";
import type { Cell } from "../reading/grid";
import { readDate } from "../reading/readDate";
import { readNumber } from "../reading/readNumber";

/** What Excel hands over for a cell: a number, text, TRUE/FALSE, nothing, or an object for a data type or an error. */
type Argument = unknown;

/** What a cell says: a value, `null` where there is none, or the error that explains why it cannot be read. */
export type Reading<T> = T | null | CustomFunctions.Error;

/** Readings of a range, row by row. */
export type Readings<T> = readonly (readonly Reading<T>[])[];

/**
 * Empty cells, errors and words such as DNS or inj are missing everywhere. Excel on the desktop may hand an empty cell
 * over as 0, so each function decides what a 0 is: missing where no result can be 0 (a jump, a time), a value where it can
 * (a rest day, a change). Any other text is refused rather than skipped: "182 cm" or "1,82" is a result somebody meant.
 */
export const zeroMeanings = ["missing", "value"] as const;
export type ZeroMeaning = (typeof zeroMeanings)[number];

/** Results that cannot be 0: a 0 is a missing one. */
export const measured = (range: Argument[][]): Readings<number> => readingsOf(range, "missing");

/** Counts, ratings, loads, changes: a 0 is a value. */
export const counted = (range: Argument[][]): Readings<number> => readingsOf(range, "value");

/** Results of which the coach says in the formula what a 0 is; missing where it is left out. */
export const scored = (range: Argument[][], zeros: unknown): Readings<number> =>
  readingsOf(range, wordOf(zeros, zeroMeanings, say`meaning of zero`));

function readingsOf(range: Argument[][], zeros: ZeroMeaning): Readings<number> {
  return range.map((row) =>
    row.map((argument) => {
      const reading = numberIn(argument);
      return reading === 0 && zeros === "missing" ? null : reading;
    }),
  );
}

function numberIn(argument: Argument): Reading<number> {
  const cell = cellOf(argument);
  const read = readNumber(cell, null);
  if (read.kind === "empty") return null;
  if (read.kind === "number") {
    return typeof cell === "string" ? invalid(asNumber(cell)) : read.value;
  }
  if (read.code === "absent" || read.code === "error") return null;
  // A formula knows no unit of a column.
  return invalid(read.code === "unit" ? asNumber(cell) : read.why);
}

const asNumber = (cell: Cell): string => say`“${cell}” is text. Type it as a number.`;

/** A data type (an entity, a formatted number) counts by its basic value; any other object is an error cell. */
function cellOf(argument: Argument): Cell {
  if (argument === null || argument === undefined) return null;
  if (typeof argument === "number" || typeof argument === "string" || typeof argument === "boolean") return argument;
  if (typeof argument === "object" && "basicValue" in argument && argument.basicValue !== argument) {
    const { basicValue } = argument as { basicValue: unknown };
    if (typeof basicValue === "number" || (typeof basicValue === "string" && !basicValue.startsWith("#")))
      return basicValue;
  }
  return { error: "#VALUE!" };
}

/** Days as serial numbers, from dates or from text with one meaning. */
export const dated = (range: Argument[][]): Readings<number> => range.map((row) => row.map(dayIn));

function dayIn(argument: Argument): Reading<number> {
  const cell = cellOf(argument);
  // The desktop's 0 for an empty cell.
  const read = readDate(cell === 0 ? null : cell);
  if (read.kind === "empty") return null;
  return read.kind === "date" ? daySerial(read.date) : invalid(read.why);
}

/** Cells that each hold one of a closed list of words. */
export const worded = <Word extends string>(range: Argument[][], words: Words<Word>, what: string): Readings<Word> =>
  range.map((row) =>
    row.map((argument) => {
      const cell = cellOf(argument);
      if (cell === null || cell === 0 || cell === "") return null;
      return typeof cell === "object"
        ? invalid(say`The cell shows an error; a ${what} is needed.`)
        : find(cell, words, what);
    }),
  );

/** An optional range; where it is left out, and in its empty cells, the fallback. */
export const orElse = <T>(
  range: Argument[][] | null | undefined,
  read: (range: Argument[][]) => Readings<T>,
  fallback: T,
): Readings<T> =>
  range === null || range === undefined
    ? [[fallback]]
    : read(range).map((row) => row.map((reading) => reading ?? fallback));

/** Readings for a method that needs all of them: one cell that cannot be read stops it. */
export function values<T>(readings: Readings<T>): (T | null)[][] {
  return readings.map((row) =>
    row.map((reading) => {
      if (isError(reading)) throw reading;
      return reading;
    }),
  );
}

export const isError = (reading: unknown): reading is CustomFunctions.Error => reading instanceof CustomFunctions.Error;

/** Trials from a range, `null` where there is none; a 0 is none. */
export const trialsOf = (range: Argument[][]): (number | null)[] => values(measured(range)).flat();

/** Trials row by row: each row of the range is one athlete's set. */
export const trialRowsOf = (range: Argument[][]): (number | null)[][] => values(measured(range));

/** Two lists that belong together cell by cell, for methods that need pairs. */
export function paired<A, B>(
  [first, ofFirst]: readonly [what: string, list: readonly A[]],
  [second, ofSecond]: readonly [what: string, list: readonly B[]],
): [A, B][] {
  if (ofFirst.length !== ofSecond.length) {
    throw invalid(
      say`There are ${ofFirst.length} cells with ${first} and ${ofSecond.length} with ${second}; they belong together one by one.`,
    );
  }
  return ofFirst.map((value, index) => [value, ofSecond[index]!]);
}

/** A single number; the fallback where it is left out, for which Excel passes null. */
export function numberOf(argument: Argument, what: string, fallback?: number): number {
  const reading = numberIn(argument);
  if (isError(reading)) throw reading;
  const value = reading ?? fallback;
  if (value === undefined) throw invalid(say`The ${what} is missing.`);
  return value;
}

/** A single whole number of at least 1. */
export function wholeNumberOf(argument: Argument, what: string, fallback?: number): number {
  const value = numberOf(argument, what, fallback);
  if (!Number.isInteger(value) || value < 1) throw invalid(say`The ${what} must be 1, 2, 3 or more; ${value} is not.`);
  return value;
}

/** A single number above zero, or undefined where it is left out. */
export function positiveOf(argument: Argument, what: string): number | undefined {
  const value = numberOf(argument, what, Number.NaN);
  if (Number.isNaN(value)) return undefined;
  if (value <= 0) throw invalid(say`The ${what} must be above zero; ${value} is not.`);
  return value;
}

/** Confidence as a share; 0.95 where it is left out. */
export function confidenceOf(argument: Argument): number {
  const confidence = numberOf(argument, "confidence", 0.95);
  const [refusal] = confidenceRefusals(confidence);
  if (refusal) throw invalid(refusal.message);
  return confidence;
}

/** A single day as a serial number. */
export function dayOf(argument: Argument, what: string): number {
  const reading = dayIn(argument);
  if (isError(reading)) throw reading;
  if (reading === null) throw invalid(say`The ${what} is missing.`);
  return reading;
}

/** A closed list of words for a formula; the first counts where none is named. */
export type Words<Word extends string> = readonly [Word, ...Word[]];

/** One of a closed list of words named in a formula; the first where it is left out, for which Excel passes null. */
export function wordOf<Word extends string>(name: unknown, words: Words<Word>, what: string): Word {
  if (name === null || name === undefined || name === "") return words[0];
  const found = find(name, words, what);
  if (isError(found)) throw found;
  return found;
}

function find<Word extends string>(name: unknown, words: Words<Word>, what: string): Word | CustomFunctions.Error {
  const plain = (text: string) => text.toLowerCase().replace(/[\s_-]/g, "");
  const found = words.find((word) => plain(word) === plain(String(name)));
  return found ?? invalid(say`“${name}” is no ${what}. Use ${words.slice(0, -1).join(", ")} or ${words.at(-1)}.`);
}

export const directions = ["higher", "lower"] as const;

export const reductionOf = (name: unknown): Reduction => wordOf(name, reductions, say`way to score trials`);
export const directionOf = (name: unknown): Direction => wordOf(name, directions, "direction");

/**
 * The value of a result, or #N/A with all its reasons: the data cannot answer. #N/A and #VALUE! are the only errors
 * that carry a message, hence the only ones given on purpose.
 */
export function answer<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw notAvailable(result);
}

export const notAvailable = ({ reasons }: Pick<Refused, "reasons">): CustomFunctions.Error =>
  new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, reasons.map((reason) => reason.message).join(" "));

export const invalid = (message: string): CustomFunctions.Error =>
  new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, message);
