/**
 * Bilateral leg asymmetry: the difference in percent of the smaller side; positive when the right side is larger.
 * Can exceed 100; both sides > 0.
 *
 *     100 * (right - left) / min(left, right)
 *
 * Source: one of the formulas counted by Bishop et al. 2016, Strength Cond J 38(6):27-32 (formula from memory).
 */
export const bilateralLegAsymmetry = (left: number, right: number): number =>
  (100 * (right - left)) / Math.min(left, right);
