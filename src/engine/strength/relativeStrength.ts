import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Strength per body mass: strength / mass, both in kg (or N and kg). Favours light athletes; see `allometricStrength`.
 * The mass must be of the same week. Refuses values that are not positive.
 */
export function relativeStrength(strength: number, bodyMass: number): Result<number> {
  const refusals = positiveRefusals({ strength, "body mass": bodyMass });
  return refusals.length > 0 ? refuse(...refusals) : ok(strength / bodyMass);
}
