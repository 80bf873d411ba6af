import { customaryGravity, type Gravity } from "../gravity";
import { positiveRefusals } from "../quantities";
import { type Result, refuse } from "../result";
import { heightFromTakeoffVelocity } from "./heightFromTakeoffVelocity";

/**
 * Jump height in metres from net vertical impulse: v = impulse / mass, height = v^2 / (2 g).
 * The impulse (N s) is the force above body weight summed from quiet standing to take-off; mass in kg.
 * Refuses values that are not positive.
 *
 * Source: impulse-momentum theorem.
 */
export function heightFromImpulse(
  netImpulseNewtonSeconds: number,
  bodyMassKilograms: number,
  { gravity = customaryGravity }: { readonly gravity?: Gravity } = {},
): Result<number> {
  const refusals = positiveRefusals({ "net impulse": netImpulseNewtonSeconds, "body mass": bodyMassKilograms });
  if (refusals.length > 0) return refuse(...refusals);
  return heightFromTakeoffVelocity(netImpulseNewtonSeconds / bodyMassKilograms, { gravity });
}
