import { say } from "../../language/say";
import { negative, outOfRange } from "../refusals";
import { ok, type Result, refuse } from "../result";

/**
 * Standard error of measurement from a published standard deviation and intraclass correlation, SD * sqrt(1 - ICC), in
 * the unit of the SD. With the root of the mean of the session variances and ICC(3,1) it equals the typical error
 * exactly; with other pairs it does not, which is why published values differ. With results at hand use `typicalError`.
 *
 * Refuses an SD below zero and a correlation outside -1 to 1.
 * Source: Weir 2005, J Strength Cond Res 19:231-240 (from memory).
 */
export function standardErrorOfMeasurement(standardDeviation: number, intraclassCorrelation: number): Result<number> {
  const reasons = [];
  if (!(standardDeviation >= 0)) reasons.push(negative(say`the standard deviation`, standardDeviation));
  if (!(Math.abs(intraclassCorrelation) <= 1)) {
    reasons.push(outOfRange(say`the intraclass correlation`, -1, 1, intraclassCorrelation));
  }
  if (reasons.length > 0) return refuse(...reasons);
  return ok(standardDeviation * Math.sqrt(1 - intraclassCorrelation));
}
