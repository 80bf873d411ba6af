import quantile from "@stdlib/stats-base-dists-f-quantile";

/**
 * The f below which a share `p` (0 to 1) of the F distribution lies. With a denominator below 1 degree of freedom it can
 * lie beyond any number; 1e30 then stands for "as far as you like", and all that divides by it is at its limit.
 */
export const fisherFQuantile = (p: number, numerator: number, denominator: number): number =>
  Math.min(quantile(p, numerator, denominator), 1e30);
