import { say } from "../../language/say";
import { presentValues } from "../presentValues";
import { tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { placings } from "./placing";
import { fillPlaces, higherIsBetter, type ScoreReading, type SquadScores } from "./squadScores";

/**
 * Ties in rank: `competition` (1, 2, 2, 4) for a list, `average` (1, 2.5, 2.5, 4) for statistics.
 */
export type TieRule = "competition" | "average";

/**
 * Rank of each athlete, 1 for the best. Ties are judged at the recorded resolution when one is given.
 * Refuses a squad without scores. Source: textbook; same as R rank(ties.method = "min" or "average").
 */
export function squadRanks(
  scores: SquadScores,
  { ties = "competition", ...reading }: ScoreReading & { readonly ties?: TieRule },
): Result<(number | null)[]> {
  const present = presentValues(higherIsBetter(scores, reading));
  if (present.length < 1) return refuse(tooFew(say`scores`, 1, 0));
  const ranks = placings(present).map(({ below, equal }) => {
    const best = present.length - below - equal + 1;
    return ties === "competition" ? best : best + (equal - 1) / 2;
  });
  return ok(fillPlaces(scores, ranks));
}
