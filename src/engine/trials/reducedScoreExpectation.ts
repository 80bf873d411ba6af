import { reducedScoreMoments } from "./reducedScoreMoments";
import type { Reduction } from "./reduction";

/**
 * How far trial-to-trial noise of standard deviation 1 lifts the score of `count` trials on average, in the good
 * direction: 0 for mean and median, 0.846 for the best of three. A best of five against a best of two is unfair by this.
 * @throws RangeError when `count` is too small for the reduction.
 */
export const reducedScoreExpectation = (count: number, reduction: Reduction): number =>
  reducedScoreMoments(count, reduction).expectation;
