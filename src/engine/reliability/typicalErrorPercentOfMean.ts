import { ok, type Result } from "../result";
import { logarithms } from "./logarithms";
import type { RepeatedResults } from "./repeatedResults";
import { twoWayLayout } from "./twoWayLayout";

/**
 * Typical error in percent of the grand mean, 100 * TE / mean, for results whose error is the same over their range
 * (times). Refuses values that are not above zero and what `twoWayLayout` refuses.
 * Source: Atkinson & Nevill 1998, Sports Med 26:217-238 (from memory).
 */
export function typicalErrorPercentOfMean(results: RepeatedResults): Result<number> {
  const positive = logarithms(results);
  if (!positive.ok) return positive;
  const layout = twoWayLayout(results);
  return layout.ok ? ok((100 * Math.sqrt(layout.value.residual)) / layout.value.grandMean) : layout;
}
