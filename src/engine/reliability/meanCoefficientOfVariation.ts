import { mean } from "../moments";
import { ok, type Result } from "../result";
import { athleteVariations } from "./athleteVariations";
import type { RepeatedResults } from "./repeatedResults";

/**
 * Average within-athlete coefficient of variation in percent: the number most papers of the field print. Low by its
 * making, by a factor of 0.80 with two results each, because the mean of standard deviations is below the root of the
 * mean variance. Refuses what `athleteVariations` refuses.
 */
export function meanCoefficientOfVariation(results: RepeatedResults): Result<number> {
  const variations = athleteVariations(results);
  return variations.ok ? ok(mean(variations.value)) : variations;
}
