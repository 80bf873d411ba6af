import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Sprint momentum in kg m/s: body mass (kg) x velocity (m/s), usually the mean velocity of the last measured 10 m.
 * Refuses values that are not positive.
 *
 * Source: mechanics.
 */
export function momentum(bodyMass: number, velocity: number): Result<number> {
  const refusals = positiveRefusals({ "body mass": bodyMass, velocity });
  return refusals.length > 0 ? refuse(...refusals) : ok(bodyMass * velocity);
}
