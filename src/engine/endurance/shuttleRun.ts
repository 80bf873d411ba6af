import { say } from "../../language/say";
import { groupEstimate } from "../caution";
import { rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";
import type { OxygenUptake } from "./oxygenUptake";

/** From this age on the equation is used with age 18: a greater age in it gives nonsense. */
const adultAge = 18;
const speeds = [8, 20] as const;

/**
 * Maximal oxygen uptake (ml/kg/min) from the final speed of the 20 m shuttle run with one-minute stages:
 * 31.025 + 3.238 S - 3.248 A + 0.1536 S A, S the speed of the last stage completed in km/h, A the age in years.
 * The equation is for 8 to 19 years; adults count as 18 (then about 6.0 S - 27.4). Whether the first stage is 8.0 or 8.5 km/h
 * depends on the version: give the speed, not the stage. Refuses a speed outside 8 to 20 km/h and an age outside 8 to 80.
 *
 * Source: Leger et al. 1988, J Sports Sci 6:93-101 (from memory). It underestimates young adults: `shuttleRunOfAdults`.
 */
export function shuttleRun(finalSpeed: number, { age }: { readonly age: number }): Result<OxygenUptake> {
  const refusals = [
    ...rangeRefusals(say`final speed in km/h`, ...speeds, finalSpeed),
    ...rangeRefusals("age", 8, 80, age),
  ];
  if (refusals.length > 0) return refuse(...refusals);
  const countedAge = Math.min(age, adultAge);
  return ok({
    oxygenUptake: 31.025 + 3.238 * finalSpeed - 3.248 * countedAge + 0.1536 * finalSpeed * countedAge,
    cautions: [groupEstimate(say`maximal oxygen uptake`, say`standard error about 6 ml/kg/min, from memory`)],
  });
}
