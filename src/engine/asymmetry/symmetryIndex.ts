/**
 * Symmetry index: the difference in percent of the mean of the sides; positive when the right side is larger.
 * From -200 to 200, both sides > 0.
 *
 *     100 * (right - left) / ((right + left) / 2)
 *
 * Source: Robinson, Herzog & Nigg 1987, J Manipulative Physiol Ther 10:172-176 (from memory).
 */
export const symmetryIndex = (left: number, right: number): number => (200 * (right - left)) / (right + left);
