import { say } from "../../language/say";
import { confidenceRefusals } from "../confidence";
import { errorMultiplier } from "../distributions/errorMultiplier";
import { notPositive } from "../refusals";
import { ok, type Result, refuse } from "../result";

/**
 * The size a change between two results must exceed to be more than noise at the given confidence:
 *
 *     z * sqrt(2) * TE     with z = 1.96 at 95 %, 1.645 at 90 %; t of `degreesOfFreedom` in place of z when given
 *
 * in the unit of the typical error, which must be that of the reduced score between sessions. The t is the honest choice
 * when the error comes from a squad: with 9 degrees of freedom 3.20 TE in place of 2.77 TE. Also published as smallest
 * detectable change, smallest real difference and repeatability coefficient.
 *
 * Refuses an error or degrees of freedom not above zero.
 * Source: Weir 2005, J Strength Cond Res 19:231-240 (from memory); Hopkins 2000 argues that 95 % is strict for coaching.
 */
export function minimalDetectableChange({
  typicalError,
  confidence,
  degreesOfFreedom,
}: {
  readonly typicalError: number;
  readonly confidence: number;
  readonly degreesOfFreedom?: number;
}): Result<number> {
  const reasons = confidenceRefusals(confidence);
  if (!(typicalError > 0)) reasons.push(notPositive(say`the typical error`, typicalError));
  if (degreesOfFreedom !== undefined && !(degreesOfFreedom > 0)) {
    reasons.push(notPositive(say`the degrees of freedom`, degreesOfFreedom));
  }
  if (reasons.length > 0) return refuse(...reasons);
  return ok(errorMultiplier(confidence, degreesOfFreedom) * Math.SQRT2 * typicalError);
}
