import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Metres to run in an interval at a percentage of a speed: percent / 100 x speed (km/h) / 3.6 x seconds.
 * The speed is a final speed of the 30-15 test or a maximal aerobic speed; the two differ by 2 to 5 km/h, so name which.
 * Refuses values that are not positive.
 *
 * Source: kinematics.
 */
export function intervalRunLength(speedKilometresPerHour: number, percent: number, seconds: number): Result<number> {
  const refusals = positiveRefusals({
    speed: speedKilometresPerHour,
    "percentage of the speed": percent,
    "interval time": seconds,
  });
  return refusals.length > 0 ? refuse(...refusals) : ok(((percent / 100) * speedKilometresPerHour * seconds) / 3.6);
}
