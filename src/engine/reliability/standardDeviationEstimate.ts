import type { Estimate } from "../confidence";
import { chiSquareQuantile } from "../distributions/chiSquare";

/**
 * A standard deviation of normal noise with its confidence limits, in the unit of the standard deviation:
 *
 *     s * sqrt(df / chi2((1 + confidence) / 2; df))   to   s * sqrt(df / chi2((1 - confidence) / 2; df))
 */
export function standardDeviationEstimate(value: number, degreesOfFreedom: number, confidence: number): Estimate {
  const limit = (share: number): number =>
    value * Math.sqrt(degreesOfFreedom / chiSquareQuantile(share, degreesOfFreedom));
  return { value, low: limit((1 + confidence) / 2), high: limit((1 - confidence) / 2) };
}
