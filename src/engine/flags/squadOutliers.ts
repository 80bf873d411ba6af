import { say } from "../../language/say";
import { median } from "../moments";
import { presentValues } from "../presentValues";
import { modifiedZScores, outlierLimit } from "../standing/modifiedZScores";
import type { SquadScores } from "../standing/squadScores";
import type { Flag } from "./flag";

const fewestAthletes = 5;

/**
 * Flags scores far from the rest of the squad: a modified z score beyond 3.5 either way. One place per athlete, `null` where
 * there is nothing to flag. No flags for fewer than five athletes (common practice, no source) or when more than half of
 * the scores are equal, for which the modified z score is not defined.
 *
 * Source: Iglewicz & Hoaglin 1993 (from memory).
 */
export function squadOutliers(squad: SquadScores): (Flag | null)[] {
  const present = presentValues(squad);
  // Which direction is better plays no part: an outlier is one on either side.
  const modified = modifiedZScores(squad, { direction: "higher" });
  if (present.length < fewestAthletes || !modified.ok) return squad.map(() => null);
  const centre = median(present);
  return squad.map((score, athlete) => {
    const modifiedZScore = modified.value[athlete] ?? null;
    if (score === null || modifiedZScore === null || Math.abs(modifiedZScore) <= outlierLimit) return null;
    return {
      code: "squadOutlier",
      reason: say`${score} is far from the rest of the squad (median ${centre}, modified z score ${modifiedZScore.toFixed(1)}): an error, or an exceptional athlete.`,
      facts: { value: score, median: centre, modifiedZScore, athletes: present.length },
    };
  });
}
