import { customaryGravity, type Gravity } from "../gravity";
import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Jump height in metres from vertical take-off velocity in m/s: v^2 / (2 g). Refuses a velocity that is not positive.
 *
 * Source: uniform motion under gravity.
 */
export function heightFromTakeoffVelocity(
  takeoffVelocity: number,
  { gravity = customaryGravity }: { readonly gravity?: Gravity } = {},
): Result<number> {
  const refusals = positiveRefusals({ "take-off velocity": takeoffVelocity });
  return refusals.length > 0 ? refuse(...refusals) : ok(takeoffVelocity ** 2 / (2 * gravity));
}
