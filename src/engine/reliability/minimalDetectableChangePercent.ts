import { ok, type Result } from "../result";
import { minimalDetectableChange } from "./minimalDetectableChange";

/**
 * `minimalDetectableChange` on logarithms, in percent of the earlier result: 100 * (exp(m) - 1) upwards and
 * 100 * (exp(-m) - 1) downwards, not of one size. `logTypicalError` is the typical error of ln(result).
 */
export function minimalDetectableChangePercent({
  logTypicalError,
  ...options
}: {
  readonly logTypicalError: number;
  readonly confidence: number;
  readonly degreesOfFreedom?: number;
}): Result<{ readonly up: number; readonly down: number }> {
  const change = minimalDetectableChange({ typicalError: logTypicalError, ...options });
  if (!change.ok) return change;
  return ok({ up: 100 * Math.expm1(change.value), down: 100 * Math.expm1(-change.value) });
}
