import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

export type MaximalAerobicSpeed = { readonly metresPerSecond: number; readonly kilometresPerHour: number };

/**
 * Maximal aerobic speed as the mean speed of an all-out run of 5 to 6 minutes or 1200 to 2000 m: distance / time.
 * Shorter runs overestimate it, longer ones underestimate it. Refuses values that are not positive.
 *
 * Source: common practice, no source.
 */
export function maximalAerobicSpeed(distanceMetres: number, timeSeconds: number): Result<MaximalAerobicSpeed> {
  const refusals = positiveRefusals({ "distance run": distanceMetres, "running time": timeSeconds });
  if (refusals.length > 0) return refuse(...refusals);
  const metresPerSecond = distanceMetres / timeSeconds;
  return ok({ metresPerSecond, kilometresPerHour: 3.6 * metresPerSecond });
}
