import { say } from "../../language/say";
import { bisect } from "../bisect";
import { confidenceRefusals, type Estimate } from "../confidence";
import { isRoundingOnly } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { type Design, designOf, leastSquaresAt } from "./athleteEffect";
import { fewestAthletes, largestSize, type RepeatedResults } from "./repeatedResults";
import { standardDeviationEstimate } from "./standardDeviationEstimate";

export type MixedModel = {
  /** Athletes with at least one result, and their results. */
  readonly athletes: number;
  readonly resultCount: number;
  readonly varianceBetween: number;
  readonly varianceWithin: number;
  readonly typicalError: Estimate;
  readonly degreesOfFreedom: number;
  /** Of one result, consistency; 0 when no difference between athletes is seen beyond noise. */
  readonly intraclassCorrelation: number;
};

/**
 * Typical error and intraclass correlation from all results when some are missing:
 *
 *     result = session (fixed) + athlete (random) + error,   restricted maximum likelihood
 *
 * One ratio, lambda = between / within variance, is searched; everything else follows from it in closed form, in time
 * proportional to the number of results. For complete data it equals the analysis of variance when athletes differ beyond
 * noise. Limits of the typical error are chi-square with N - athletes - sessions + 1 degrees of freedom, those of the
 * contrasts within athletes, so for complete data they are `typicalError`'s.
 *
 * Refuses fewer than three athletes with two results, a single session and results without noise.
 * Source: Patterson & Thompson 1971, Biometrika 58:545-554 (from memory); same numbers as lme4::lmer.
 */
export function mixedModel(
  results: RepeatedResults,
  { confidence }: { readonly confidence: number },
): Result<MixedModel> {
  const reasons = confidenceRefusals(confidence);
  const present = results.map(presentValues).filter((row) => row.length > 0);
  const repeated = present.filter((row) => row.length >= 2).length;
  if (repeated < fewestAthletes) reasons.push(tooFew(say`athletes with two results`, fewestAthletes, repeated));
  if (reasons.length > 0) return refuse(...reasons);

  const design = designOf(results);
  const { resultCount } = design;
  const degreesOfFreedom = resultCount - present.length - design.sessions + 1;
  if (degreesOfFreedom < 1)
    return refuse(tooFew(say`repeated results`, resultCount + 1 - degreesOfFreedom, resultCount));

  const isRounding = (squares: number): boolean =>
    isRoundingOnly(Math.sqrt(squares / degreesOfFreedom), largestSize(present));
  if (isRounding(leastSquaresAt(design, 0).squares)) return refuse(noSpread(say`results`));
  const likeliest = likeliestRatio(design);
  const ratio = likeliest < smallestRatio ? 0 : likeliest;
  const { squares } = leastSquaresAt(design, ratio);
  if (ratio === largestRatio || isRounding(squares)) return refuse(noSpread(say`repeated results`));
  const varianceWithin = squares / (resultCount - design.sessions);
  return ok({
    athletes: present.length,
    resultCount,
    varianceBetween: ratio * varianceWithin,
    varianceWithin,
    typicalError: standardDeviationEstimate(Math.sqrt(varianceWithin), degreesOfFreedom, confidence),
    degreesOfFreedom,
    intraclassCorrelation: ratio / (1 + ratio),
  });
}

/** Noise of a hundred-thousandth of the spread between athletes or less: copied results. */
const largestRatio = 1e10;

/**
 * A spread between athletes of a thousandth of the noise or less is none: where there is none, the likelihood is so flat
 * that rounding alone, another in another unit, would place its top anywhere below.
 */
const smallestRatio = 1e-6;

/** The ratio of least deviance: the best cell of a coarse grid over 20 powers of ten, then the root of the slope in it. */
function likeliestRatio(design: Design): number {
  const grid = [0, ...Array.from({ length: 40 }, (_, index) => 10 ** (index / 2 - 10)), largestRatio];
  const deviances = grid.map((ratio) => leastSquaresAt(design, ratio).deviance);
  const best = deviances.indexOf(Math.min(...deviances));
  const slope = (ratio: number): number => leastSquaresAt(design, ratio).devianceSlope;
  const [low, high] = [grid[Math.max(0, best - 1)]!, grid[Math.min(grid.length - 1, best + 1)]!];
  if (slope(low) >= 0) return low;
  if (slope(high) <= 0) return high;
  return bisect(slope, low, high);
}
