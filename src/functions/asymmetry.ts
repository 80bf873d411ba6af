import { asymmetry as asymmetryBy } from "../engine/asymmetry/asymmetry";
import { noiseLimit as limitOf } from "../engine/asymmetry/noiseLimit";
import { trialNoise } from "../engine/reliability/trialNoise";
import type { Result } from "../engine/result";
import { reduceTrials } from "../engine/trials/reduceTrials";
import type { Direction, Reduction } from "../engine/trials/reduction";
import { answer, directionOf, reductionOf, trialRowsOf, trialsOf } from "./border";

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
 * The left-right difference, in percent of the larger side, that equal legs stay below 95 times in 100 by the scatter
 * of the trials alone. A difference beyond it is more than the test's noise.
 * @customfunction NOISELIMIT
 * @param left Cells with this athlete's left trials, e.g. C4:E4.
 * @param right Cells with this athlete's right trials, e.g. F4:H4.
 * @param groupLeft All athletes' left trials, one row each, e.g. $C$4:$E$29.
 * @param groupRight All athletes' right trials, one row each, e.g. $F$4:$H$29.
 * @param [reduction] How each side is scored: best (when left out), mean, median or meanOfBestTwo.
 * @returns The limit in percent, e.g. 6.1.
 */
export function noiseLimit(
  left: any[][],
  right: any[][],
  groupLeft: any[][],
  groupRight: any[][],
  reduction?: string,
): number {
  const noise = answer(trialNoise([...trialRowsOf(groupLeft), ...trialRowsOf(groupRight)], { confidence: 0.95 }));
  const count = (trials: any[][]) => trialsOf(trials).filter((trial) => trial !== null).length;
  return answer(
    limitOf({
      noise,
      leftCount: count(left),
      rightCount: count(right),
      reduction: reductionOf(reduction),
      confidence: 0.95,
    }),
  ).percent;
}

function scores(left: any[][], right: any[][], reduction: Reduction, direction: Direction) {
  const score = (trials: any[][]): number => {
    const reduced: Result<{ readonly score: number }> = reduceTrials(trialsOf(trials), { reduction, direction });
    return answer(reduced).score;
  };
  return { left: score(left), right: score(right) };
}
