import { say } from "../../language/say";
import { groupEstimate } from "../caution";
import { rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";
import type { OxygenUptake } from "./oxygenUptake";

/**
 * Maximal oxygen uptake (ml/kg/min) from the final speed V (km/h) of the 30-15 intermittent fitness test:
 * 28.3 - 2.15 G - 0.741 A - 0.0357 W + 0.0586 A V + 1.03 V with G 1 for men and 2 for women, A age, W body mass in kg.
 * V itself is the result to keep. Refuses a speed outside 8 to 28 km/h, an age outside 8 to 80 and a mass outside 15 to 200 kg.
 *
 * Source: Buchheit 2008, J Strength Cond Res 22:365-374 (as quoted by secondary pages).
 */
export function intermittentFitnessTest(
  finalSpeed: number,
  { sex, age, bodyMass }: { readonly sex: "male" | "female"; readonly age: number; readonly bodyMass: number },
): Result<OxygenUptake> {
  const refusals = [
    ...rangeRefusals(say`final speed in km/h`, 8, 28, finalSpeed),
    ...rangeRefusals("age", 8, 80, age),
    ...rangeRefusals(say`body mass`, 15, 200, bodyMass),
  ];
  if (refusals.length > 0) return refuse(...refusals);
  const genderTerm = sex === "male" ? 1 : 2;
  return ok({
    oxygenUptake:
      28.3 - 2.15 * genderTerm - 0.741 * age - 0.0357 * bodyMass + 0.0586 * age * finalSpeed + 1.03 * finalSpeed,
    cautions: [groupEstimate(say`maximal oxygen uptake`, say`error not known here`)],
  });
}
