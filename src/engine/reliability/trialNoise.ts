import { confidenceRefusals, type Estimate, transformEstimate } from "../confidence";
import { isRoundingOnly, sumOfSquares } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, notPositive, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { standardDeviationEstimate } from "./standardDeviationEstimate";

export type TrialNoise = {
  /** Pooled standard deviation of ln(trial) within a set. */
  readonly logStandardDeviation: number;
  readonly degreesOfFreedom: number;
  /** Sets that had at least two trials, hence count. */
  readonly setCount: number;
  /** The same noise in percent, with its confidence limits. */
  readonly coefficientOfVariation: Estimate;
};

/**
 * Noise from trial to trial, pooled over sets. A set is the trials of one athlete, one side, one session:
 *
 *     s = sqrt(sum over sets of SS(ln trials) / sum over sets of (m - 1)),   CV % = 100 * (exp(s) - 1)
 *
 * with chi-square limits. This is noise within a session: it says whether two sides measured in the same session
 * differ, not whether an athlete changed from one day to another.
 *
 * Refuses values that are not above zero, sets without any pair of trials, and trials that are all equal.
 * Source: Hopkins 2000, Sports Med 30:1-15, for the logarithm and the percentage (from memory); pooling is analysis of variance.
 */
export function trialNoise(
  sets: readonly (readonly (number | null)[])[],
  { confidence }: { readonly confidence: number },
): Result<TrialNoise> {
  const present = sets.map(presentValues);
  const repeated = present.filter((set) => set.length >= 2);
  const badValue = present.flat().find((value) => value <= 0);
  const reasons = confidenceRefusals(confidence);
  if (badValue !== undefined) reasons.push(notPositive("every trial", badValue));
  if (repeated.length === 0) reasons.push(tooFew("sets with two trials", 1, 0));
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
  const noise = Math.sqrt(squares / degreesOfFreedom);
  if (isRoundingOnly(noise, magnitude)) return refuse(noSpread("trials of each set"));
  return ok({
    logStandardDeviation: noise,
    degreesOfFreedom,
    setCount: repeated.length,
    coefficientOfVariation: transformEstimate(
      standardDeviationEstimate(noise, degreesOfFreedom, confidence),
      (s) => 100 * Math.expm1(s),
    ),
  });
}
