/**
 * Difference in percent of the total of both sides; positive when the right side is larger. From -100 to 100, both
 * sides > 0. For tests of both limbs at once, where the sides share one effort.
 *
 *     100 * (right - left) / (right + left)
 *
 * Source: Bishop et al. 2018, Strength Cond J 40(4):1-6 (formula from memory). Also printed as "symmetry index".
 */
export const percentOfTotal = (left: number, right: number): number => (100 * (right - left)) / (right + left);
