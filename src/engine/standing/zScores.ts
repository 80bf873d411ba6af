import { say } from "../../language/say";
import { isRoundingOnly, mean, standardDeviation, zWithoutRounding } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import type { Direction } from "../trials/reduction";
import { fillPlaces, higherIsBetter, type SquadScores } from "./squadScores";

/**
 * z score of each athlete, (score - mean) / SD with the divisor n - 1, sign turned so that higher is better.
 * Refuses fewer than three scores and scores that are all equal. Source: textbook.
 */
export function zScores(
  scores: SquadScores,
  { direction }: { readonly direction: Direction },
): Result<(number | null)[]> {
  const present = presentValues(higherIsBetter(scores, { direction }));
  if (present.length < 3) return refuse(tooFew(say`scores`, 3, present.length));
  const centre = mean(present);
  const spread = standardDeviation(present);
  if (isRoundingOnly(spread, Math.abs(centre))) return refuse(noSpread(say`scores`));
  return ok(
    fillPlaces(
      scores,
      present.map((score) => zWithoutRounding((score - centre) / spread)),
    ),
  );
}
