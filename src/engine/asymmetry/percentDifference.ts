/**
 * Percentage difference: how far the smaller side is below the larger one, in percent of the larger; positive when the
 * right side is larger. From -100 to 100, both sides > 0. For tests of one limb at a time.
 *
 *     100 * (right - left) / max(left, right)
 *
 * When lower is better the larger, slower side is still the reference.
 * Source: Bishop et al. 2018, Strength Cond J 40(4):1-6 (formula from memory).
 */
export const percentDifference = (left: number, right: number): number =>
  (100 * (right - left)) / Math.max(left, right);
