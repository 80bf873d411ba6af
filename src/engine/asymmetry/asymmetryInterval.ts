import { say } from "../../language/say";
import { confidenceRefusals, type Estimate, transformEstimate } from "../confidence";
import { studentTQuantile } from "../distributions/studentT";
import { isRoundingOnly, mean, sumOfSquares } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, notPositive, tooFew } from "../refusals";
import type { TrialNoise } from "../reliability/trialNoise";
import { ok, type Result, refuse } from "../result";

export type AsymmetryInterval = {
  /** ln(right) - ln(left), of the means of the logarithms. */
  readonly logRatio: Estimate;
  /** Right above left in percent of left. */
  readonly rightOverLeft: Estimate;
  /** In percent of the larger side, positive when right is larger: the scale of `percentDifference`. */
  readonly percentDifference: Estimate;
  readonly degreesOfFreedom: number;
};

/**
 * Difference between the sides of one athlete from all trials, with its confidence limits, on logarithms:
 *
 *     d = mean(ln right) - mean(ln left),   d -/+ t((1 + confidence) / 2; df) * s * sqrt(1/mLeft + 1/mRight)
 *
 * s is the athlete's own pooled standard deviation (df = mLeft + mRight - 2), or, better with three trials or fewer,
 * the squad's `noise` with its df. The difference is real at that confidence when the limits exclude zero.
 *
 * Refuses a side without trials, values that are not above zero and, without `noise`, fewer than three trials in all or
 * trials that are all equal.
 * Source: two-sample t interval on logarithms; same numbers as R t.test(log(right), log(left), var.equal = TRUE).
 */
export function asymmetryInterval(
  leftTrials: readonly (number | null)[],
  rightTrials: readonly (number | null)[],
  {
    confidence,
    noise,
  }: {
    readonly confidence: number;
    readonly noise?: Pick<TrialNoise, "logStandardDeviation" | "degreesOfFreedom">;
  },
): Result<AsymmetryInterval> {
  const left = presentValues(leftTrials);
  const right = presentValues(rightTrials);
  const reasons = confidenceRefusals(confidence);
  if (left.length < 1) reasons.push(tooFew(say`left trials`, 1, 0));
  if (right.length < 1) reasons.push(tooFew(say`right trials`, 1, 0));
  const badValue = [...left, ...right].find((value) => value <= 0);
  if (badValue !== undefined) reasons.push(notPositive(say`every trial`, badValue));
  if (noise === undefined && left.length + right.length < 3) {
    reasons.push(tooFew(say`trials of both sides together`, 3, left.length + right.length));
  }
  if (reasons.length > 0) return refuse(...reasons);

  const spread = noise ?? ownNoise(left.map(Math.log), right.map(Math.log));
  if (spread === "none") return refuse(noSpread(say`trials of each side`));
  const difference = mean(right.map(Math.log)) - mean(left.map(Math.log));
  const margin =
    studentTQuantile((1 + confidence) / 2, spread.degreesOfFreedom) *
    spread.logStandardDeviation *
    Math.sqrt(1 / left.length + 1 / right.length);
  const logRatio: Estimate = { value: difference, low: difference - margin, high: difference + margin };
  return ok({
    logRatio,
    rightOverLeft: transformEstimate(logRatio, (log) => 100 * Math.expm1(log)),
    percentDifference: transformEstimate(logRatio, (log) => -100 * Math.sign(log) * Math.expm1(-Math.abs(log))),
    degreesOfFreedom: spread.degreesOfFreedom,
  });
}

function ownNoise(leftLogs: readonly number[], rightLogs: readonly number[]) {
  const degreesOfFreedom = leftLogs.length + rightLogs.length - 2;
  const logStandardDeviation = Math.sqrt((sumOfSquares(leftLogs) + sumOfSquares(rightLogs)) / degreesOfFreedom);
  const magnitude = Math.max(1, ...[...leftLogs, ...rightLogs].map(Math.abs));
  return isRoundingOnly(logStandardDeviation, magnitude) ? "none" : { logStandardDeviation, degreesOfFreedom };
}
