import { meanOfNeighbours, normalOrderStatistic, type ScoreMoments } from "./normalOrderStatistics";
import { fewestTrials, type Reduction } from "./reduction";

/**
 * Expectation and variance of the score that `count` trials with independent standard normal noise reduce to, when
 * higher is better. Multiply the expectation by the trial-to-trial standard deviation, the variance by its square;
 * when lower is better the expectation changes sign.
 *
 * - best: expectation e_m, the amount by which noise alone lifts the best of m, and the variance of a maximum;
 * - mean: 0 and 1/m;
 * - median: 0 and the variance of the middle value or of the mean of the two middle ones;
 * - mean of the best two: mean of the two largest order statistics.
 *
 * @throws RangeError when `count` is not a whole number or too small for the reduction.
 */
export function reducedScoreMoments(count: number, reduction: Reduction): ScoreMoments {
  if (!Number.isInteger(count) || count < fewestTrials(reduction)) {
    throw new RangeError(`${count} trials cannot be reduced by ${reduction}.`);
  }
  const key = `${reduction} of ${count}`;
  const known = computed.get(key);
  if (known !== undefined) return known;
  const moments = compute(count, reduction);
  computed.set(key, moments);
  return moments;
}

/** A squad asks for the same few moments again and again, and each takes a quadrature. */
const computed = new Map<string, ScoreMoments>();

function compute(count: number, reduction: Reduction): ScoreMoments {
  if (count === 1) return { expectation: 0, variance: 1 };
  switch (reduction) {
    case "mean":
      return { expectation: 0, variance: 1 / count };
    case "best":
      return normalOrderStatistic(count, count);
    case "meanOfBestTwo":
      return meanOfNeighbours(count - 1, count);
    case "median":
      return {
        ...(count % 2 === 1 ? normalOrderStatistic((count + 1) / 2, count) : meanOfNeighbours(count / 2, count)),
        expectation: 0,
      };
  }
}
