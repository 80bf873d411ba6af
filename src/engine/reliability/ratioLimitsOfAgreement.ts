import { transformEstimate } from "../confidence";
import { ok, type Result } from "../result";
import { type AgreementLimitsMethod, type BlandAltman, blandAltman } from "./blandAltman";
import { logarithms } from "./logarithms";
import type { RepeatedResults } from "./repeatedResults";

/** As `BlandAltman`, with ratios first / second in place of differences; the spread is that of the logarithms. */
export type RatioLimitsOfAgreement = Omit<BlandAltman, "standardDeviation"> & { readonly logStandardDeviation: number };

/**
 * Limits of agreement as ratios, for differences that grow with the value: `blandAltman` on logarithms, turned back.
 * Refuses values that are not above zero. Source: Bland & Altman 1999, Stat Methods Med Res 8:135-160 (from memory).
 */
export function ratioLimitsOfAgreement(
  results: RepeatedResults,
  options: { readonly confidence: number; readonly method?: AgreementLimitsMethod; readonly multiplier?: 1.96 | 2 },
): Result<RatioLimitsOfAgreement> {
  const logs = logarithms(results);
  if (!logs.ok) return logs;
  const agreement = blandAltman(logs.value, options);
  if (!agreement.ok) return agreement;
  const { count, bias, lower, upper, standardDeviation } = agreement.value;
  return ok({
    count,
    bias: transformEstimate(bias, Math.exp),
    lower: transformEstimate(lower, Math.exp),
    upper: transformEstimate(upper, Math.exp),
    logStandardDeviation: standardDeviation,
  });
}
