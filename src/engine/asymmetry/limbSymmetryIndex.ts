/**
 * Limb symmetry index: right in percent of left; 100 when the sides are equal, both sides > 0.
 *
 *     100 * right / left
 *
 * In rehabilitation it is involved over uninvolved: pass the uninvolved limb as `left`. It never clears an athlete: the
 * uninvolved limb loses strength too (Wellsandt et al. 2017, J Orthop Sports Phys Ther 47:334-338, abstract read).
 */
export const limbSymmetryIndex = (left: number, right: number): number => (100 * right) / left;
