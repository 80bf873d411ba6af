import { type NoiseSource, noiseSources } from "../engine/reliability/noiseOfAthletes";
import type { Refused, Result } from "../engine/result";
import { type Direction, type Reduction, reductions } from "../engine/trials/reduction";
import type { Cell } from "../reading/grid";
import { readNumber } from "../reading/readNumber";

/** What Excel hands over for a cell: a number, text, TRUE/FALSE, nothing, or an object for a data type or an error. */
type Argument = unknown;

/**
 * Trials from a range, `null` where there is none. Empty cells, zeros, errors and words such as DNS or inj are missing
 * trials: Excel on the desktop hands an empty cell over as 0, and no trial of these tests can be 0. Any other text is
 * refused rather than skipped, since "182 cm" or "1,82" is a result somebody meant.
 */
export function trialsOf(range: Argument[][]): (number | null)[] {
  return range.flat().map(trialOf);
}

/** Trials row by row: each row of the range is one athlete's set. */
export const trialRowsOf = (range: Argument[][]): (number | null)[][] => range.map((row) => row.map(trialOf));

function trialOf(argument: Argument): number | null {
  const read = readNumber(cellOf(argument), null);
  if (read.kind === "empty") return null;
  if (read.kind === "number") {
    if (typeof argument === "string") throw invalid(`“${argument}” is text. Type it as a number.`);
    return read.value === 0 ? null : read.value;
  }
  if (read.code === "absent" || read.code === "error") return null;
  throw invalid(read.why);
}

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

/** One of a closed list of words named in a formula; the first where it is left out, for which Excel passes null. */
function wordOf<Word extends string>(name: unknown, words: readonly [Word, ...Word[]], what: string): Word {
  if (name === null || name === undefined || name === "") return words[0];
  const plain = (text: string) => text.toLowerCase().replace(/[\s_-]/g, "");
  const found = words.find((word) => plain(word) === plain(String(name)));
  if (!found) throw invalid(`“${name}” is no ${what}. Use ${words.slice(0, -1).join(", ")} or ${words.at(-1)}.`);
  return found;
}

export const reductionOf = (name: unknown): Reduction => wordOf(name, reductions, "way to score trials");
export const directionOf = (name: unknown): Direction => wordOf(name, ["higher", "lower"], "direction");
export const noiseSourceOf = (name: unknown): NoiseSource => wordOf(name, noiseSources, "source of noise");

/**
 * The value of a result, or #N/A with all its reasons: the data cannot answer. #N/A and #VALUE! are the only errors
 * that carry a message, hence the only ones given on purpose.
 */
export function answer<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw notAvailable(result);
}

/** One cell of a result that spills: its own value or its own error, so that one bad row leaves the others good. */
export const cell = <T>(result: Result<T>, show: (value: T) => number): number | CustomFunctions.Error =>
  result.ok ? show(result.value) : notAvailable(result);

const notAvailable = ({ reasons }: Refused): CustomFunctions.Error =>
  new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, reasons.map((reason) => reason.message).join(" "));

export const invalid = (message: string): CustomFunctions.Error =>
  new CustomFunctions.Error(CustomFunctions.ErrorCode.invalidValue, message);
