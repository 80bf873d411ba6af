import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Reactive strength index of a drop or rebound jump in m/s: jump height / contact time. Not the same number as
 * `flightContactRatio`, which some print under the same name. Refuses values that are not positive.
 *
 * Source: Young 1995; Flanagan & Comyns 2008 (from memory).
 */
export function reactiveStrengthIndex(heightMetres: number, contactTimeSeconds: number): Result<number> {
  const refusals = positiveRefusals({ "jump height": heightMetres, "contact time": contactTimeSeconds });
  return refusals.length > 0 ? refuse(...refusals) : ok(heightMetres / contactTimeSeconds);
}
