import { say } from "../../language/say";
import { mean, median, withoutRounding } from "../moments";
import { presentValues } from "../presentValues";
import { tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { type Direction, fewestTrials, type Reduction } from "./reduction";

/**
 * One score from the trials of one athlete, one limb and one session, in the unit of the trials.
 *
 * - `best`: the largest value, or the smallest when lower is better. Biased by noise, the more so the more trials
 *   there are (`reducedScoreMoments`): compare only scores of equally many trials.
 * - `mean`: of all trials; the smallest random error.
 * - `median`: the middle value; withstands one bad trial.
 * - `meanOfBestTwo`: a compromise common in change-of-direction protocols.
 *
 * `count` is the number of trials that were there. Refuses when there is no trial, or only one for `meanOfBestTwo`.
 *
 * Source: Hopkins 2000, Sports Med 30:1-15, for the mean (from memory); best, and mean of the best two: common practice, no source.
 */
export function reduceTrials(
  trials: readonly (number | null)[],
  { reduction, direction }: { readonly reduction: Reduction; readonly direction: Direction },
): Result<{ readonly score: number; readonly count: number }> {
  const present = presentValues(trials);
  const needed = fewestTrials(reduction);
  if (present.length < needed) return refuse(tooFew(say`trials`, needed, present.length));
  return ok({ score: reduce(present, reduction, direction), count: present.length });
}

function reduce(trials: readonly number[], reduction: Reduction, direction: Direction): number {
  if (reduction === "mean") return withoutRounding(mean(trials));
  if (reduction === "median") return withoutRounding(median(trials));
  const bestFirst = [...trials].sort((a, b) => (direction === "higher" ? b - a : a - b));
  // The best stays the trial it is, to the last digit: its cell is found by it.
  return reduction === "best" ? bestFirst[0]! : withoutRounding(mean(bestFirst.slice(0, 2)));
}
