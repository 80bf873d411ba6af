import type { Caution } from "../caution";
import { positiveRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";
import { type StrengthEquationName, strengthEquation, strengthEquations } from "./equations";
import { repetitionsToFailure } from "./repetitionsToFailure";

export type EstimatedMaximum = {
  /** In the unit of the load. */
  readonly maximum: number;
  /** A single taken to failure is measured; everything else is estimated. */
  readonly origin: "measured" | "estimated";
  /** The lowest and highest answer over all equations: how far the choice of equation alone moves the estimate. */
  readonly lowest: number;
  readonly highest: number;
  readonly repetitions: number;
  readonly cautions: readonly Caution[];
};

/**
 * One-repetition maximum from a load and the repetitions done with it.
 *
 * `load` is everything lifted, bar included. A single to failure is the maximum itself, whatever the equation.
 * Print the chosen equation with the range over all; never compare an estimated with a tested maximum as a change.
 * Refuses a load that is not positive and repetitions outside 1 to 15 (those in reserve included).
 *
 * Error of a single athlete's estimate: about 5 to 7 kg in the bench press, 10 to 14 % of the mean (Hutchins & Gearhart 2010,
 * abstract read); the deadlift is underestimated (LeSuer et al. 1997, J Strength Cond Res 11:211-213, from memory).
 * Source of the equations: equations.ts.
 */
export function estimatedMaximum(
  load: number,
  repetitionsDone: number,
  {
    equation = "epley",
    repetitionsInReserve = 0,
  }: { readonly equation?: StrengthEquationName; readonly repetitionsInReserve?: number } = {},
): Result<EstimatedMaximum> {
  const set = repetitionsToFailure(repetitionsDone, repetitionsInReserve);
  const refusals = [...positiveRefusals({ load }), ...(set.ok ? [] : set.reasons)];
  if (!set.ok || refusals.length > 0) return refuse(...refusals);

  const { repetitions, cautions } = set.value;
  if (repetitions === 1) {
    return ok({ maximum: load, origin: "measured", lowest: load, highest: load, repetitions, cautions });
  }
  const answers = strengthEquations.map(({ maximumPerLoad }) => load * maximumPerLoad(repetitions));
  return ok({
    maximum: load * strengthEquation(equation).maximumPerLoad(repetitions),
    origin: "estimated",
    lowest: Math.min(...answers),
    highest: Math.max(...answers),
    repetitions,
    cautions,
  });
}
