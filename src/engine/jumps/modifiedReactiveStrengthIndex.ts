import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Modified reactive strength index of a countermovement jump in m/s: jump height / time from the start of the movement to
 * take-off. Refuses values that are not positive.
 *
 * Source: Ebben & Petushek 2010, J Strength Cond Res 24:1983-1987 (from memory).
 */
export function modifiedReactiveStrengthIndex(heightMetres: number, timeToTakeoffSeconds: number): Result<number> {
  const refusals = positiveRefusals({ "jump height": heightMetres, "time to take-off": timeToTakeoffSeconds });
  return refusals.length > 0 ? refuse(...refusals) : ok(heightMetres / timeToTakeoffSeconds);
}
