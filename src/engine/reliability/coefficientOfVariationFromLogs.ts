import { type Estimate, transformEstimate } from "../confidence";
import { ok, type Result } from "../result";
import { logarithms } from "./logarithms";
import type { RepeatedResults } from "./repeatedResults";
import { type SessionShift, typicalError } from "./typicalError";

export type CoefficientOfVariationFromLogs = {
  /** In percent. */
  readonly variation: Estimate;
  /** Typical error of the natural logarithms. */
  readonly logTypicalError: number;
  readonly degreesOfFreedom: number;
  readonly leftOut: number;
};

/**
 * Typical error as a percentage, from logarithms: 100 * (exp(s) - 1) with s the typical error of ln(result). The one to
 * use when error grows with the value (strength, force, throws). Refuses values that are not above zero.
 * Source: Hopkins 2000, Sports Med 30:1-15 (from memory). Some papers print 100 s, close to it below 10 %.
 */
export function coefficientOfVariationFromLogs(
  results: RepeatedResults,
  options: { readonly confidence: number; readonly sessionShift?: SessionShift },
): Result<CoefficientOfVariationFromLogs> {
  const logs = logarithms(results);
  if (!logs.ok) return logs;
  const typical = typicalError(logs.value, options);
  if (!typical.ok) return typical;
  const { error, degreesOfFreedom, leftOut } = typical.value;
  return ok({
    variation: transformEstimate(error, (s) => 100 * Math.expm1(s)),
    logTypicalError: error.value,
    degreesOfFreedom,
    leftOut,
  });
}
