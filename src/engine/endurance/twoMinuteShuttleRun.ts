import { say } from "../../language/say";
import { groupEstimate } from "../caution";
import { rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";
import type { OxygenUptake } from "./oxygenUptake";

/**
 * Maximal oxygen uptake (ml/kg/min) of adults from the final speed (km/h) of the older 20 m shuttle run with two-minute stages:
 * 5.857 S - 19.458. Another protocol than `shuttleRun`. Refuses a speed outside 8 to 20 km/h.
 *
 * Source: Leger & Lambert 1982 (abstract read; r 0.84, standard error 5.4).
 */
export function twoMinuteShuttleRun(finalSpeed: number): Result<OxygenUptake> {
  const refusals = rangeRefusals(say`final speed in km/h`, 8, 20, finalSpeed);
  if (refusals.length > 0) return refuse(...refusals);
  return ok({
    oxygenUptake: 5.857 * finalSpeed - 19.458,
    cautions: [groupEstimate(say`maximal oxygen uptake`, say`standard error 5.4 ml/kg/min`)],
  });
}
