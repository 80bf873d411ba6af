import { customaryGravity, type Gravity } from "../gravity";
import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Vertical take-off velocity in m/s of a jump of a height in metres: sqrt(2 g h), the inverse of `heightFromTakeoffVelocity`.
 * Refuses a height that is not positive.
 *
 * Source: uniform motion under gravity.
 */
export function takeoffVelocity(
  heightMetres: number,
  { gravity = customaryGravity }: { readonly gravity?: Gravity } = {},
): Result<number> {
  const refusals = positiveRefusals({ "jump height": heightMetres });
  return refusals.length > 0 ? refuse(...refusals) : ok(Math.sqrt(2 * gravity * heightMetres));
}
