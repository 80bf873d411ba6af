/**
 * 100 times the natural logarithm of right over left, close to a percentage when small; positive when the right side is
 * larger. Swapping sides changes nothing but the sign, and it adds up: the scale for statistics. Both sides > 0.
 *
 *     100 * ln(right / left)
 *
 * Source: Cole 2000, Stat Med 19:3109-3125, "sympercents" (from memory).
 */
export const logRatio = (left: number, right: number): number => 100 * Math.log(right / left);
