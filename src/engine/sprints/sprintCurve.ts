import { say } from "../../language/say";
import { rangeRefusals } from "../quantities";
import type { Refusal } from "../result";

/**
 * The mono-exponential curve of a sprint: velocity rises towards its maximum like
 * v(t) = maximalVelocity (1 - exp(-t / timeConstant)); metres, seconds, m/s.
 *
 * Source: Furusawa, Hill & Parkinson 1927; Samozino et al. 2016, Scand J Med Sci Sports 26:648-658 (abstract read).
 */
export type SprintCurve = { readonly maximalVelocity: number; readonly timeConstant: number };

/** Reasons why a curve is no human sprint (4 to 13 m/s, 0.4 to 2.5 s): common practice, no source. */
export const curveRefusals = ({ maximalVelocity, timeConstant }: SprintCurve): Refusal[] => [
  ...rangeRefusals(say`maximal velocity`, 4, 13, maximalVelocity),
  ...rangeRefusals(say`time constant`, 0.4, 2.5, timeConstant),
];

/** v(t) in m/s. */
export const velocityAt = (time: number, { maximalVelocity, timeConstant }: SprintCurve): number =>
  -maximalVelocity * Math.expm1(-time / timeConstant);

/** x(t) in metres: v summed from the start. */
export const distanceAt = (time: number, { maximalVelocity, timeConstant }: SprintCurve): number =>
  maximalVelocity * (time + timeConstant * Math.expm1(-time / timeConstant));

/** a(t) in m/s^2. */
export const accelerationAt = (time: number, { maximalVelocity, timeConstant }: SprintCurve): number =>
  (maximalVelocity / timeConstant) * Math.exp(-time / timeConstant);

const mostSteps = 60;

/**
 * Seconds to cover a distance of zero or more metres: the inverse of `distanceAt`, by Newton's method. In units of the time
 * constant the equation is convex and the start lies above the root, so the steps fall towards it without overshooting.
 */
export function timeToDistance(distance: number, { maximalVelocity, timeConstant }: SprintCurve): number {
  const covered = distance / (maximalVelocity * timeConstant);
  if (covered === 0) return 0;
  let time = covered + 1;
  for (let step = 0; step < mostSteps; step++) {
    const next = time - (time + Math.expm1(-time) - covered) / -Math.expm1(-time);
    if (!(next < time)) break;
    time = next;
  }
  return timeConstant * time;
}
