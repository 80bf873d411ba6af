import { asymmetry as asymmetryBy } from "../engine/asymmetry/asymmetry";
import { noiseLimit as limitOf } from "../engine/asymmetry/noiseLimit";
import { noiseOfAthletes } from "../engine/reliability/noiseOfAthletes";
import { reduceTrials } from "../engine/trials/reduceTrials";
import type { Direction, Reduction } from "../engine/trials/reduction";
import { answer, cell, directionOf, invalid, noiseSourceOf, reductionOf, trialRowsOf, trialsOf } from "./border";

/**
 * Left-right difference in percent of the larger side; plus where the right is larger, minus where the left is.
 * Empty cells, zeros and marks such as DNS count as missing trials.
 * @customfunction ASYMMETRY
 * @param left Cells with the left trials, e.g. C4:E4.
 * @param right Cells with the right trials, e.g. F4:H4.
 * @param [reduction] How to score each side: best (when left out), mean, median or meanOfBestTwo.
 * @param [better] Which results are better: higher (when left out) or lower.
 * @returns The difference in percent, e.g. 8.4.
 */
export function asymmetry(left: any[][], right: any[][], reduction?: string, better?: string): number {
  const sides = scores(left, right, reductionOf(reduction), directionOf(better));
  return answer(asymmetryBy(sides.left, sides.right, "percentDifference"));
}

/**
 * The side with the better score: Left, Right or Even.
 * Empty cells, zeros and marks such as DNS count as missing trials.
 * @customfunction STRONGERSIDE
 * @param left Cells with the left trials, e.g. C4:E4.
 * @param right Cells with the right trials, e.g. F4:H4.
 * @param [reduction] How to score each side: best (when left out), mean, median or meanOfBestTwo.
 * @param [better] Which results are better: higher (when left out) or lower.
 * @returns Left, Right or Even.
 */
export function strongerSide(left: any[][], right: any[][], reduction?: string, better?: string): string {
  const direction = directionOf(better);
  const sides = scores(left, right, reductionOf(reduction), direction);
  if (sides.left === sides.right) return "Even";
  return sides.right > sides.left === (direction === "higher") ? "Right" : "Left";
}

/**
 * The left-right difference, in percent of the larger side, that equal sides stay below 95 times in 100 by the scatter
 * of the trials alone: one for each athlete, down the column. An asymmetry beyond it is more than the test's noise.
 * @customfunction NOISELIMIT
 * @param left All athletes' left trials, one row each, e.g. C4:E29.
 * @param right All athletes' right trials, one row each, e.g. F4:H29.
 * @param [reduction] How each side is scored: best (when left out), mean, median or meanOfBestTwo.
 * @param [noiseFrom] Whose scatter: steadied (own trials, steadied by the group's; when left out), group or athlete.
 * @returns One limit in percent per row; #N/A where there are too few trials to tell.
 */
export function noiseLimit(left: any[][], right: any[][], reduction?: string, noiseFrom?: string): any[][] {
  const squad = athletesOf(left, right);
  const scoredBy = reductionOf(reduction);
  const noises = noiseOfAthletes(squad, noiseSourceOf(noiseFrom));
  return squad.map((sides, index) => {
    const noise = noises[index]!;
    const [leftCount, rightCount] = sides.map((trials) => trials.filter((trial) => trial !== null).length);
    const counts = { leftCount: leftCount!, rightCount: rightCount! };
    const limit = noise.ok ? limitOf({ noise: noise.value, ...counts, reduction: scoredBy, confidence: 0.95 }) : noise;
    return [cell(limit, ({ percent }) => percent)];
  });
}

/** Left and right trials of each athlete, row by row. */
function athletesOf(left: any[][], right: any[][]): [(number | null)[], (number | null)[]][] {
  const lefts = trialRowsOf(left);
  const rights = trialRowsOf(right);
  if (lefts.length !== rights.length) {
    throw invalid(
      `The left cells have ${lefts.length} rows, the right cells ${rights.length}; each row is one athlete.`,
    );
  }
  return lefts.map((trials, row) => [trials, rights[row]!]);
}

function scores(left: any[][], right: any[][], reduction: Reduction, direction: Direction) {
  const score = (trials: any[][]) => answer(reduceTrials(trialsOf(trials), { reduction, direction })).score;
  return { left: score(left), right: score(right) };
}
