import { say } from "../../language/say";
import { isRoundingOnly, median } from "../moments";
import { presentValues } from "../presentValues";
import { mostEqual, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import type { Direction } from "../trials/reduction";
import { fillPlaces, higherIsBetter, type SquadScores } from "./squadScores";

/** Beyond this size a modified z score marks an outlier to look into (not to delete). Source: as below. */
export const outlierLimit = 3.5;

/**
 * Modified z score of each athlete, 0.6745 (score - median) / MAD with MAD the median of |score - median|, sign turned so that
 * higher is better. One wild value does not move it. Refuses fewer than three scores, and more than half of them equal.
 * Source: Iglewicz & Hoaglin 1993, How to Detect and Handle Outliers (from memory).
 */
export function modifiedZScores(
  scores: SquadScores,
  { direction }: { readonly direction: Direction },
): Result<(number | null)[]> {
  const present = presentValues(higherIsBetter(scores, { direction }));
  if (present.length < 3) return refuse(tooFew(say`scores`, 3, present.length));
  const centre = median(present);
  const spread = median(present.map((score) => Math.abs(score - centre)));
  if (isRoundingOnly(spread, Math.abs(centre))) return refuse(mostEqual(say`scores`));
  return ok(
    fillPlaces(
      scores,
      present.map((score) => (0.6745 * (score - centre)) / spread),
    ),
  );
}
