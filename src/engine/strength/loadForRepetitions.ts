import type { Caution } from "../caution";
import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";
import { type StrengthEquationName, strengthEquation } from "./equations";
import { repetitionsToFailure } from "./repetitionsToFailure";

export type LoadForRepetitions = {
  /** In the unit of the maximum. */
  readonly load: number;
  readonly percentOfMaximum: number;
  readonly cautions: readonly Caution[];
};

/**
 * The load with which a number of repetitions is possible, leaving some in reserve if wished: the inverse of `estimatedMaximum`
 * for the same equation. One repetition with none in reserve is the maximum itself.
 * Refuses a maximum that is not positive and repetitions outside 1 to 15 (those in reserve included).
 *
 * Source of the equations: equations.ts. How many repetitions are possible at a percentage differs much between lifters and
 * exercises (Nuzzo et al. 2024, Sports Med 54:303-321, abstract read): a starting load, to be corrected in the first set.
 */
export function loadForRepetitions(
  maximum: number,
  repetitions: number,
  {
    equation = "epley",
    repetitionsInReserve = 0,
  }: { readonly equation?: StrengthEquationName; readonly repetitionsInReserve?: number } = {},
): Result<LoadForRepetitions> {
  const set = repetitionsToFailure(repetitions, repetitionsInReserve);
  const refusals = [...positiveRefusals({ maximum }), ...(set.ok ? [] : set.reasons)];
  if (!set.ok || refusals.length > 0) return refuse(...refusals);

  const atFailure = set.value.repetitions;
  const share = atFailure === 1 ? 1 : 1 / strengthEquation(equation).maximumPerLoad(atFailure);
  return ok({ load: maximum * share, percentOfMaximum: 100 * share, cautions: set.value.cautions });
}
