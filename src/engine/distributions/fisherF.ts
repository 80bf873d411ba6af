import cumulative from "@stdlib/stats-base-dists-f-cdf";
import quantile from "@stdlib/stats-base-dists-f-quantile";

/** P(F > f) of the F distribution. */
export const fisherFUpperTail = (f: number, numerator: number, denominator: number): number =>
  f <= 0 ? 1 : cumulative(1 / f, denominator, numerator);

/**
 * The f below which a share `p` (0 to 1) of the F distribution lies. With a denominator below 1 degree of freedom it can
 * lie beyond any number; 1e30 then stands for "as far as you like", and all that divides by it is at its limit.
 */
export const fisherFQuantile = (p: number, numerator: number, denominator: number): number =>
  Math.min(quantile(p, numerator, denominator), 1e30);
