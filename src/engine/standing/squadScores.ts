import { presentValues } from "../presentValues";
import type { Direction } from "../trials/reduction";

/** Scores of a squad, one per athlete; missing ones null. What comes back is in the same order, null where missing. */
export type SquadScores = readonly (number | null)[];

/** What a standing function needs to know of the test. */
export type ScoreReading = {
  readonly direction: Direction;
  /** Step of the instrument in the unit of the scores, e.g. 0.1; scores are equal when they round to the same step. */
  readonly resolution?: number;
};

/**
 * The scores turned so that higher is better, and counted in steps when a resolution is given: 41.2 and 41.200000001 are
 * then one place. @throws RangeError when the resolution is not above zero.
 */
export function higherIsBetter(scores: SquadScores, { direction, resolution }: ScoreReading): (number | null)[] {
  if (resolution !== undefined && !(resolution > 0)) throw new RangeError(`A resolution of ${resolution} is no step.`);
  presentValues(scores);
  return scores.map((score) => {
    if (score === null) return null;
    const recorded = resolution === undefined ? score : Math.round(score / resolution);
    return direction === "higher" ? recorded : -recorded;
  });
}

/** Computes from the scores that are there and puts the answers back in their places. */
export function fillPlaces(scores: SquadScores, answers: readonly number[]): (number | null)[] {
  let next = 0;
  return scores.map((score) => (score === null ? null : answers[next++]!));
}
