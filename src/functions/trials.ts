import { limbVariability } from "../engine/asymmetry/limbVariability";
import { reduceTrials } from "../engine/trials/reduceTrials";
import { answer, directionOf, reductionOf, trialsOf } from "./border";

/**
 * One score from an athlete's trials of one side: the best, the mean, the middle, or the mean of the best two.
 * Empty cells, zeros and marks such as DNS count as missing trials.
 * @customfunction TRIALSCORE
 * @param trials Cells with the trials, e.g. C4:E4.
 * @param [reduction] How to score: best (when left out), mean, median or meanOfBestTwo.
 * @param [better] Which results are better: higher (when left out) or lower.
 * @returns The score, in the unit of the trials.
 * @example =TAPELINE.TRIALSCORE({171,174,168})
 * @source Mean: Hopkins 2000, Sports Med 30:1-15 (from memory); best, and mean of the best two: common practice, no source.
 */
export function trialScore(trials: any[][], reduction?: string, better?: string): number {
  return answer(reduceTrials(trialsOf(trials), { reduction: reductionOf(reduction), direction: directionOf(better) }))
    .score;
}

/**
 * How much an athlete's trials scatter: the larger coefficient of variation of the two sides, in percent.
 * Needs two trials a side. Empty cells, zeros and marks such as DNS count as missing trials.
 * @customfunction TRIALCV
 * @param left Cells with the left trials, e.g. C4:E4.
 * @param right Cells with the right trials, e.g. F4:H4.
 * @returns The coefficient of variation in percent, e.g. 3.2.
 * @example =TAPELINE.TRIALCV({171,174,168},{147,150,144})
 * @source Exell, Irwin, Gittoes & Kerwin 2012, J Sports Sci 30:403-409 (from memory).
 */
export function trialCV(left: any[][], right: any[][]): number {
  return answer(limbVariability(trialsOf(left), trialsOf(right))).limit;
}
