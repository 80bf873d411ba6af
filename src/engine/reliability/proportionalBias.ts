import type { Result } from "../result";
import { type Correlation, correlation } from "./correlation";
import { completePairs, type RepeatedResults } from "./repeatedResults";

/**
 * Whether one method reads ever higher as values grow: correlation and slope of first - second on their mean over the first
 * two columns. Not zero either when the two merely have different spreads.
 *
 * Refuses fewer than three pairs and differences or means that are all equal.
 * Source: Bland & Altman 1999, Stat Methods Med Res 8:135-160 (from memory).
 */
export function proportionalBias(results: RepeatedResults): Result<Correlation> {
  const pairs = completePairs(results, 0, 1);
  return correlation(
    pairs.map(([first, second]) => (first + second) / 2),
    pairs.map(([first, second]) => first - second),
  );
}
