import { say } from "../../language/say";
import { positiveRefusals } from "../quantities";
import { tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { belowLightest, type LoadRounding, pickLoad } from "./rounding";

export type Dumbbell = { readonly load: number; readonly percentOfTarget: number };

/**
 * The dumbbell nearest to a target, or nearest from below (the default, for safety), out of the weights owned.
 * Refuses a target below the lightest one, an empty list and weights that are not positive.
 */
export function roundToDumbbells(
  target: number,
  { weights, rule = "down" }: { readonly weights: readonly number[]; readonly rule?: LoadRounding },
): Result<Dumbbell> {
  if (weights.length === 0) return refuse(tooFew(say`dumbbells`, 1, 0));
  const refusals = [
    ...positiveRefusals({ "target load": target }),
    ...weights.flatMap((weight) => positiveRefusals({ weight })),
  ];
  if (refusals.length > 0) return refuse(...refusals);
  const load = pickLoad(weights, target, rule);
  if (load === null) return refuse(belowLightest(say`the lightest dumbbell`, Math.min(...weights), target));
  return ok({ load, percentOfTarget: (100 * load) / target });
}
