import { say } from "../../language/say";
import { presentValues } from "../presentValues";
import { tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { placings } from "./placing";
import { fillPlaces, higherIsBetter, type ScoreReading, type SquadScores } from "./squadScores";

/**
 * The published percentile ranks. With L scores worse and E equal (itself included) among n:
 *
 * - `midrank`: 100 (L + E/2) / n; fair with ties, never 0 or 100: the one to use;
 * - `inclusive`: 100 L / (n - 1), as the spreadsheet's PERCENTRANK.INC before it cuts digits off;
 * - `exclusive`: 100 (L + 1) / (n + 1), as PERCENTRANK.EXC;
 * - `weak`: 100 (L + E) / n, "at or below".
 */
export const percentileMethods = ["midrank", "inclusive", "exclusive", "weak"] as const;
export type PercentileMethod = (typeof percentileMethods)[number];

/**
 * Percentile rank of each athlete in this squad, 0 to 100, best highest. It describes the squad, not a population; with few
 * athletes show it by `percentileShown`. Ties are judged at the recorded resolution when one is given.
 *
 * Refuses fewer than two scores. Source: textbook; `midrank` is Hazen's. Same as scipy percentileofscore (mean, weak).
 */
export function percentileRanks(
  scores: SquadScores,
  { method = "midrank", ...reading }: ScoreReading & { readonly method?: PercentileMethod },
): Result<(number | null)[]> {
  const present = presentValues(higherIsBetter(scores, reading));
  const n = present.length;
  if (n < 2) return refuse(tooFew(say`scores`, 2, n));
  const percentile = (below: number, equal: number): number => {
    switch (method) {
      case "midrank":
        return (100 * (below + equal / 2)) / n;
      case "inclusive":
        return (100 * below) / (n - 1);
      case "exclusive":
        return (100 * (below + 1)) / (n + 1);
      case "weak":
        return (100 * (below + equal)) / n;
    }
  };
  return ok(
    fillPlaces(
      scores,
      placings(present).map(({ below, equal }) => percentile(below, equal)),
    ),
  );
}
