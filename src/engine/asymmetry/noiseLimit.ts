import { say } from "../../language/say";
import { confidenceRefusals } from "../confidence";
import { studentTQuantile } from "../distributions/studentT";
import { notPositive, tooFew } from "../refusals";
import type { Noise } from "../reliability/pooledNoise";
import { ok, type Result, refuse } from "../result";
import { reducedScoreMoments } from "../trials/reducedScoreMoments";
import { fewestTrials, type Reduction } from "../trials/reduction";

export type NoiseLimit = {
  /** On the scale of |ln(right / left)|. */
  readonly logLimit: number;
  /** In percent of the larger side, the scale of `percentDifference`. */
  readonly percent: number;
};

/**
 * The size that an observed left-right difference stays below, with the given confidence, if the sides are truly equal:
 *
 *     L = t((1 + confidence) / 2; df) * s * sqrt(v(leftCount) + v(rightCount)) + s * |e(leftCount) - e(rightCount)|
 *     percent of the larger side = 100 * (1 - exp(-L))
 *
 * s is the squad's trial-to-trial noise on logarithms with its df; v and e are variance and expectation of the reduced
 * score (`reducedScoreMoments`). The last term is zero for equal counts and for mean and median: it is the head start
 * that more trials give to the best.
 *
 * On the scale of another formula: `asymmetry(1, Math.exp(logLimit), formula)`.
 * Refuses too few trials on a side and noise that is not above zero.
 *
 * Source: the t interval for a difference with a pooled standard deviation, on logarithms (Hopkins 2000, Sports Med
 * 30:1-15, from memory); v and e from normal order statistics.
 */
export function noiseLimit({
  noise,
  leftCount,
  rightCount,
  reduction,
  confidence,
}: {
  readonly noise: Noise;
  readonly leftCount: number;
  readonly rightCount: number;
  readonly reduction: Reduction;
  readonly confidence: number;
}): Result<NoiseLimit> {
  const needed = fewestTrials(reduction);
  const reasons = confidenceRefusals(confidence);
  if (leftCount < needed) reasons.push(tooFew(say`left trials`, needed, leftCount));
  if (rightCount < needed) reasons.push(tooFew(say`right trials`, needed, rightCount));
  if (!(noise.logStandardDeviation > 0)) reasons.push(notPositive(say`the noise`, noise.logStandardDeviation));
  if (!(noise.degreesOfFreedom > 0)) reasons.push(notPositive(say`the degrees of freedom`, noise.degreesOfFreedom));
  if (reasons.length > 0) return refuse(...reasons);

  const left = reducedScoreMoments(leftCount, reduction);
  const right = reducedScoreMoments(rightCount, reduction);
  const spread =
    studentTQuantile((1 + confidence) / 2, noise.degreesOfFreedom) * Math.sqrt(left.variance + right.variance);
  const headStart = Math.abs(left.expectation - right.expectation);
  const logLimit = noise.logStandardDeviation * (spread + headStart);
  return ok({ logLimit, percent: -100 * Math.expm1(-logLimit) });
}
