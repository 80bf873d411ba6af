import { say } from "../../language/say";
import { isRoundingOnly, sumOfSquares } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, notPositive, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";

export type Noise = {
  /** Standard deviation of ln(trial) within a set. */
  readonly logStandardDeviation: number;
  readonly degreesOfFreedom: number;
};

/**
 * Noise from trial to trial, pooled over sets. A set is the trials of one athlete, one side, one session:
 *
 *     s = sqrt(sum over sets of SS(ln trials) / sum over sets of (m - 1))
 *
 * This is noise within a session: it says whether two sides measured in the same session differ, not whether an athlete
 * changed from one day to another. `setCount` is the number of sets that had at least two trials, hence count.
 *
 * Refuses values that are not above zero, sets without any pair of trials, and trials that are all equal.
 * Source: Hopkins 2000, Sports Med 30:1-15, for the logarithm (from memory); pooling is analysis of variance.
 */
export function pooledNoise(
  sets: readonly (readonly (number | null)[])[],
): Result<Noise & { readonly setCount: number }> {
  const present = sets.map(presentValues);
  const repeated = present.filter((set) => set.length >= 2);
  const badValue = present.flat().find((value) => value <= 0);
  const reasons = [];
  if (badValue !== undefined) reasons.push(notPositive(say`every trial`, badValue));
  if (repeated.length === 0) reasons.push(tooFew(say`sets with two trials`, 1, 0));
  if (reasons.length > 0) return refuse(...reasons);

  let squares = 0;
  let degreesOfFreedom = 0;
  let magnitude = 0;
  for (const set of repeated) {
    const logs = set.map(Math.log);
    squares += sumOfSquares(logs);
    degreesOfFreedom += logs.length - 1;
    for (const log of logs) magnitude = Math.max(magnitude, Math.abs(log), 1);
  }
  const logStandardDeviation = Math.sqrt(squares / degreesOfFreedom);
  if (isRoundingOnly(logStandardDeviation, magnitude)) return refuse(noSpread(say`trials of each set`));
  return ok({ logStandardDeviation, degreesOfFreedom, setCount: repeated.length });
}
