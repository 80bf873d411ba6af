import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

/**
 * Hop distance in percent of leg length (anterior superior iliac spine to medial malleolus) or stature, both in the same unit.
 * The asymmetry in percent is unchanged by it; body mass has no part in it. A landing that was not held is a missing trial.
 * Refuses values that are not positive.
 *
 * Source: common practice, no source.
 */
export function normalisedHop(distance: number, referenceLength: number): Result<number> {
  const refusals = positiveRefusals({ "hop distance": distance, "reference length": referenceLength });
  return refusals.length > 0 ? refuse(...refusals) : ok((100 * distance) / referenceLength);
}
