/**
 * Symmetry angle: how far the point (right, left) lies from the line of equal sides, in percent of a right angle;
 * positive when the right side is larger. From -50 to 50 for sides > 0, and no side is the reference.
 *
 *     100 * (45 degrees - atan2(left, right)) / 90 degrees
 *
 * Source: Zifchock et al. 2008, Gait Posture 27:622-627 (from memory). Their second branch, for angles beyond 90
 * degrees, needs a negative side, which is refused here.
 */
export const symmetryAngle = (left: number, right: number): number =>
  100 * (0.5 - Math.atan2(left, right) / (Math.PI / 2));
