import { say } from "../../language/say";
import { confidenceRefusals, type Estimate } from "../confidence";
import { errorMultiplier } from "../distributions/errorMultiplier";
import { normalCumulative } from "../distributions/normal";
import { studentTCumulative } from "../distributions/studentT";
import { presentValues } from "../presentValues";
import { missing, notPositive } from "../refusals";
import { ok, type Result, refuse } from "../result";
import type { Direction } from "../trials/reduction";
import { type ChangeVerdict, judgeChange } from "./judgeChange";

export type IndividualChange = {
  /** Later minus earlier in the unit of the test, with the limits of the true change. */
  readonly change: Estimate;
  /** The change with the sign turned so that positive is better. */
  readonly improvement: number;
  readonly minimalDetectableChange: number;
  /**
   * Shares (0 to 1) for a true change that is better or worse by more than the smallest worthwhile change, or trivial. They
   * describe the data under a flat prior: no test, and optimistic, since large true changes are rare.
   */
  readonly chances: { readonly better: number; readonly trivial: number; readonly worse: number };
  readonly verdict: ChangeVerdict;
};

/**
 * One athlete's change between two sessions beside the noise of the test:
 *
 *     change -/+ multiplier * sqrt(2) * TE,   P(true change > SWC) = PHI((change - SWC) / (sqrt(2) TE))
 *
 * `typicalError` is that between sessions of the score in use; with its `degreesOfFreedom` Student's t takes the place of the
 * normal distribution (the honest choice for an error from a squad). Multipliers as in `minimalDetectableChange`.
 *
 * Refuses a missing score and an error or smallest worthwhile change that is not above zero.
 * Sources: Hopkins 2000, Sports Med 30:1-15 (from memory); Swinton et al. 2018, Front Nutr 5:41 (abstract read).
 */
export function individualChange({
  earlier,
  later,
  typicalError,
  degreesOfFreedom,
  smallestWorthwhileChange,
  direction,
  confidence,
}: {
  readonly earlier: number | null;
  readonly later: number | null;
  readonly typicalError: number;
  readonly degreesOfFreedom?: number;
  readonly smallestWorthwhileChange: number;
  readonly direction: Direction;
  readonly confidence: number;
}): Result<IndividualChange> {
  const [before] = presentValues([earlier]);
  const [after] = presentValues([later]);
  const reasons = confidenceRefusals(confidence);
  if (before === undefined) reasons.push(missing(say`the earlier score`));
  if (after === undefined) reasons.push(missing(say`the later score`));
  if (!(typicalError > 0)) reasons.push(notPositive(say`the typical error`, typicalError));
  if (!(smallestWorthwhileChange > 0)) {
    reasons.push(notPositive(say`the smallest worthwhile change`, smallestWorthwhileChange));
  }
  if (degreesOfFreedom !== undefined && !(degreesOfFreedom > 0)) {
    reasons.push(notPositive(say`the degrees of freedom`, degreesOfFreedom));
  }
  if (before === undefined || after === undefined || reasons.length > 0) return refuse(...reasons);

  const change = after - before;
  const improvement = direction === "higher" ? change : -change;
  const standardError = Math.SQRT2 * typicalError;
  const margin = errorMultiplier(confidence, degreesOfFreedom) * standardError;
  const cumulative = (value: number): number =>
    degreesOfFreedom === undefined ? normalCumulative(value) : studentTCumulative(value, degreesOfFreedom);
  const better = cumulative((improvement - smallestWorthwhileChange) / standardError);
  const worse = cumulative((-improvement - smallestWorthwhileChange) / standardError);
  return ok({
    change: { value: change, low: change - margin, high: change + margin },
    improvement,
    minimalDetectableChange: margin,
    chances: { better, trivial: Math.max(0, 1 - better - worse), worse },
    verdict: judgeChange({ improvement, margin, smallestWorthwhileChange }),
  });
}
