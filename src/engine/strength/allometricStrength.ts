import { positiveRefusals, rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Strength scaled for body size: strength / mass^exponent, unit kg/kg^exponent. The exponent is 0.67 by geometric similarity
 * (2/3 is printed too); results with different exponents cannot be compared. Not for children through growth.
 * Refuses values that are not positive and an exponent outside 0 to 1.
 *
 * Source: Jaric 2002, Sports Med 32:615-631 (from memory).
 */
export function allometricStrength(
  strength: number,
  bodyMass: number,
  { exponent = 0.67 }: { readonly exponent?: number } = {},
): Result<number> {
  const refusals = [
    ...positiveRefusals({ strength, "body mass": bodyMass }),
    ...rangeRefusals("exponent", 0, 1, exponent),
  ];
  return refusals.length > 0 ? refuse(...refusals) : ok(strength / bodyMass ** exponent);
}
