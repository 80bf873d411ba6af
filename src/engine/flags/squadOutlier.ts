import { median } from "../moments";
import { presentValues } from "../presentValues";
import type { Flag } from "./flag";

const limit = 3.5;
const fewestAthletes = 5;

/**
 * Flags a value far from the rest of the squad: modified z score 0.6745 (value - median) / MAD beyond 3.5 either way, MAD the
 * median absolute deviation. `squad` holds everybody's values, the flagged one included. No flag for fewer than five athletes
 * (common practice, no source) or when more than half of the values are equal, for which the score is not defined.
 *
 * Source: Iglewicz & Hoaglin 1993 (from memory).
 */
export function squadOutlier(value: number | null, squad: readonly (number | null)[]): Flag | null {
  const present = presentValues(squad);
  if (value === null || present.length < fewestAthletes) return null;
  const centre = median(present);
  const spread = median(present.map((other) => Math.abs(other - centre)));
  if (spread === 0) return null;
  const modifiedZScore = (0.6745 * (value - centre)) / spread;
  if (!(Math.abs(modifiedZScore) > limit)) return null;
  return {
    code: "squadOutlier",
    reason: `${value} is far from the rest of the squad (median ${centre}, modified z score ${modifiedZScore.toFixed(1)}): an error, or an exceptional athlete.`,
    facts: { value, median: centre, modifiedZScore, athletes: present.length },
  };
}
