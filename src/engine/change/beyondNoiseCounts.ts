import { say } from "../../language/say";
import { confidenceRefusals } from "../confidence";
import { presentValues } from "../presentValues";
import { notPositive, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";

export type BeyondNoiseCounts = {
  readonly count: number;
  readonly improved: number;
  readonly declined: number;
  readonly within: number;
  /** False flags that noise alone is expected to raise in each direction among this many athletes. */
  readonly expectedFalseEachWay: number;
  /** Chance (0 to 1) that noise alone raises at least one flag. */
  readonly chanceOfAnyFalse: number;
};

/**
 * How many athletes changed by more than the minimal detectable change, beside what noise alone would do:
 * n (1 - confidence) / 2 each way, and 1 - confidence^n for any at all. The count is no success rate.
 *
 * `improvements` have positive as better; missing athletes are left out. `confidence` is that of the minimal detectable
 * change. Refuses no athlete and a minimal detectable change that is not above zero. Source: the definition of confidence.
 */
export function beyondNoiseCounts(
  improvements: readonly (number | null)[],
  { minimalDetectableChange, confidence }: { readonly minimalDetectableChange: number; readonly confidence: number },
): Result<BeyondNoiseCounts> {
  const present = presentValues(improvements);
  const reasons = confidenceRefusals(confidence);
  if (present.length < 1) reasons.push(tooFew(say`athletes with both results`, 1, 0));
  if (!(minimalDetectableChange > 0)) {
    reasons.push(notPositive(say`the minimal detectable change`, minimalDetectableChange));
  }
  if (reasons.length > 0) return refuse(...reasons);

  const count = present.length;
  const improved = present.filter((improvement) => improvement > minimalDetectableChange).length;
  const declined = present.filter((improvement) => improvement < -minimalDetectableChange).length;
  return ok({
    count,
    improved,
    declined,
    within: count - improved - declined,
    expectedFalseEachWay: (count * (1 - confidence)) / 2,
    chanceOfAnyFalse: 1 - confidence ** count,
  });
}
