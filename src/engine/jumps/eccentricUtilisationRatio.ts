import { say } from "../../language/say";
import type { Caution } from "../caution";
import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

export type EccentricUtilisationRatio = { readonly ratio: number; readonly cautions: readonly Caution[] };

/**
 * Eccentric utilisation ratio: countermovement jump / squat jump, heights or powers in the same unit; about 1.0 to 1.2.
 * Print both parts beside it: the ratio carries the noise of both. Refuses values that are not positive.
 *
 * Source: McGuigan et al. 2006, J Strength Cond Res 20:992-995 (from memory).
 */
export function eccentricUtilisationRatio(
  countermovementJump: number,
  squatJump: number,
): Result<EccentricUtilisationRatio> {
  const refusals = positiveRefusals({ "countermovement jump": countermovementJump, "squat jump": squatJump });
  if (refusals.length > 0) return refuse(...refusals);
  const ratio = countermovementJump / squatJump;
  return ok({ ratio, cautions: ratio < 1 ? [hiddenCountermovement(ratio)] : [] });
}

const hiddenCountermovement = (ratio: number): Caution => ({
  code: "hiddenCountermovement",
  message: say`The squat jump was the higher one; it probably began with a small countermovement.`,
  facts: { ratio },
});
