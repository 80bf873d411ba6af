import { ok, type Result, unwrap } from "../result";
import { averageRanks } from "../standing/averageRanks";
import { type Correlation, correlation } from "./correlation";
import { completePairs, type RepeatedResults } from "./repeatedResults";

export type Heteroscedasticity = {
  readonly pearson: Correlation;
  readonly spearman: Correlation;
  /** Advice: use logarithms, coefficients of variation and ratio limits. */
  readonly errorGrows: boolean;
};

/**
 * Whether the difference between two results grows with the result: correlation of |first - second| with their mean over
 * the first two columns. Growing when Pearson's r > 0 with p < .05, or r > 0.3 below 20 pairs (common practice, no source).
 *
 * Refuses fewer than three pairs and differences or means that are all equal.
 * Source: Atkinson & Nevill 1998, Sports Med 26:217-238 (from memory).
 */
export function heteroscedasticity(results: RepeatedResults): Result<Heteroscedasticity> {
  const pairs = completePairs(results, 0, 1);
  const sizes = pairs.map(([first, second]) => Math.abs(first - second));
  const means = pairs.map(([first, second]) => (first + second) / 2);
  const pearson = correlation(means, sizes);
  if (!pearson.ok) return pearson;
  // Values that differ have ranks that differ: where the one was given, so is the other.
  const spearman = unwrap(correlation(averageRanks(means), averageRanks(sizes)));
  const { coefficient, p } = pearson.value;
  return ok({
    pearson: pearson.value,
    spearman,
    errorGrows: coefficient > 0 && (p < 0.05 || (coefficient > 0.3 && pairs.length < 20)),
  });
}
