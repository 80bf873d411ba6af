import { mean } from "../moments";
import { ok, type Result } from "../result";
import { athleteVariations } from "./athleteVariations";
import type { RepeatedResults } from "./repeatedResults";

/**
 * Root mean square of the athletes' coefficients of variation, in percent: averages variances, so it is not low as the
 * plain mean is. Refuses what `athleteVariations` refuses.
 * Source: Gluer et al. 1995, Osteoporos Int 5:262-270 (from memory).
 */
export function rootMeanSquareCoefficientOfVariation(results: RepeatedResults): Result<number> {
  const variations = athleteVariations(results);
  return variations.ok ? ok(Math.sqrt(mean(variations.value.map((variation) => variation ** 2)))) : variations;
}
