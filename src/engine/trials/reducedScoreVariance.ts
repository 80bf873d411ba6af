import { reducedScoreMoments } from "./reducedScoreMoments";
import type { Reduction } from "./reduction";

/**
 * Variance of the score of `count` trials whose own noise has variance 1: 1/m for the mean, 0.559 for the best of three.
 * @throws RangeError when `count` is too small for the reduction.
 */
export const reducedScoreVariance = (count: number, reduction: Reduction): number =>
  reducedScoreMoments(count, reduction).variance;
