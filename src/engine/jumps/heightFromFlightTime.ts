import { say } from "../../language/say";
import { customaryGravity, type Gravity } from "../gravity";
import { positiveRefusals, rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/** A jump stays in the air for less; a number above is in milliseconds. */
const longestFlight = 2;

/**
 * Jump height in metres from flight time in seconds: g t^2 / 8. True only when take-off and landing posture are equal; a landing
 * with bent knees inflates it. 10 ms of error at 0.5 s are 1.2 cm. Refuses times that are not positive or above 2 s.
 *
 * Source: uniform motion under gravity. Heights by flight time, impulse, displacement or reach are not comparable
 * (Moir 2008, Meas Phys Educ Exerc Sci 12:207-218, abstract read).
 */
export function heightFromFlightTime(
  flightTimeSeconds: number,
  { gravity = customaryGravity }: { readonly gravity?: Gravity } = {},
): Result<number> {
  const what = say`flight time in seconds`;
  const refusals = positiveRefusals({ [what]: flightTimeSeconds });
  if (refusals.length === 0) refusals.push(...rangeRefusals(what, 0, longestFlight, flightTimeSeconds));
  return refusals.length > 0 ? refuse(...refusals) : ok((gravity * flightTimeSeconds ** 2) / 8);
}
