import { confidenceRefusals, type Estimate, transformEstimate } from "../confidence";
import { ok, type Result, refuse } from "../result";
import { type Noise, pooledNoise } from "./pooledNoise";
import { standardDeviationEstimate } from "./standardDeviationEstimate";

export type TrialNoise = Noise & {
  /** Sets that had at least two trials, hence count. */
  readonly setCount: number;
  /** The noise in percent, with its confidence limits. */
  readonly coefficientOfVariation: Estimate;
};

/**
 * Noise from trial to trial, pooled over sets (`pooledNoise`), and the same in percent with chi-square limits:
 *
 *     CV % = 100 * (exp(s) - 1)
 *
 * Refuses what `pooledNoise` refuses.
 * Source: Hopkins 2000, Sports Med 30:1-15, for the logarithm and the percentage (from memory).
 */
export function trialNoise(
  sets: readonly (readonly (number | null)[])[],
  { confidence }: { readonly confidence: number },
): Result<TrialNoise> {
  const pooled = pooledNoise(sets);
  const reasons = [...confidenceRefusals(confidence), ...(pooled.ok ? [] : pooled.reasons)];
  if (!pooled.ok || reasons.length > 0) return refuse(...reasons);
  const { logStandardDeviation, degreesOfFreedom } = pooled.value;
  return ok({
    ...pooled.value,
    coefficientOfVariation: transformEstimate(
      standardDeviationEstimate(logStandardDeviation, degreesOfFreedom, confidence),
      (s) => 100 * Math.expm1(s),
    ),
  });
}
