import { say } from "../../language/say";
import { confidenceRefusals, type Estimate, transformEstimate } from "../confidence";
import { noncentralityOf } from "../distributions/noncentralT";
import { studentTCumulative, studentTQuantile } from "../distributions/studentT";
import { isRoundingOnly, mean, sumOfSquares } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { smallSampleCorrection } from "./smallSampleCorrection";

export type TwoGroups = {
  readonly firstCount: number;
  readonly secondCount: number;
  readonly firstMean: number;
  readonly secondMean: number;
  /** First minus second, limits by Welch. */
  readonly difference: Estimate;
  readonly welch: { readonly t: number; readonly degreesOfFreedom: number; readonly p: number };
  /** Difference over the pooled SD, and the same corrected for small samples; limits by noncentral t. */
  readonly cohenD: Estimate;
  readonly hedgesG: Estimate;
};

/**
 * Difference of two groups of different athletes: Welch's t test, which does not assume equal spreads, and Hedges' g.
 * With five or fewer in a group show the values, not the p (common practice, no source).
 *
 * Missing scores are left out. Refuses fewer than three in a group and groups without any spread.
 * Sources: Welch 1947, Biometrika 34:28-35; Hedges 1981, J Educ Stat 6:107-128 (from memory).
 */
export function twoGroups(
  first: readonly (number | null)[],
  second: readonly (number | null)[],
  { confidence }: { readonly confidence: number },
): Result<TwoGroups> {
  const groups = [presentValues(first), presentValues(second)] as const;
  const reasons = confidenceRefusals(confidence);
  if (groups[0].length < 3) reasons.push(tooFew(say`scores in the first group`, 3, groups[0].length));
  if (groups[1].length < 3) reasons.push(tooFew(say`scores in the second group`, 3, groups[1].length));
  if (reasons.length > 0) return refuse(...reasons);

  const [n1, n2] = [groups[0].length, groups[1].length];
  const [mean1, mean2] = [mean(groups[0]), mean(groups[1])];
  const [squares1, squares2] = [sumOfSquares(groups[0]), sumOfSquares(groups[1])];
  const pooledDegreesOfFreedom = n1 + n2 - 2;
  const pooled = Math.sqrt((squares1 + squares2) / pooledDegreesOfFreedom);
  if (isRoundingOnly(pooled, Math.max(Math.abs(mean1), Math.abs(mean2))))
    return refuse(noSpread(say`scores of each group`));

  const value = mean1 - mean2;
  const [error1, error2] = [squares1 / (n1 - 1) / n1, squares2 / (n2 - 1) / n2];
  const standardError = Math.sqrt(error1 + error2);
  const degreesOfFreedom = (error1 + error2) ** 2 / (error1 ** 2 / (n1 - 1) + error2 ** 2 / (n2 - 1));
  const share = (1 + confidence) / 2;
  const margin = studentTQuantile(share, degreesOfFreedom) * standardError;

  const harmonic = Math.sqrt(1 / n1 + 1 / n2);
  const t = value / (pooled * harmonic);
  const cohenD: Estimate = {
    value: t * harmonic,
    low: noncentralityOf(t, pooledDegreesOfFreedom, share) * harmonic,
    high: noncentralityOf(t, pooledDegreesOfFreedom, 1 - share) * harmonic,
  };
  const factor = smallSampleCorrection(pooledDegreesOfFreedom);
  return ok({
    firstCount: n1,
    secondCount: n2,
    firstMean: mean1,
    secondMean: mean2,
    difference: { value, low: value - margin, high: value + margin },
    welch: {
      t: value / standardError,
      degreesOfFreedom,
      p: 2 * studentTCumulative(-Math.abs(value / standardError), degreesOfFreedom),
    },
    cohenD,
    hedgesG: transformEstimate(cohenD, (d) => factor * d),
  });
}
