import { say } from "../../language/say";
import { studentTCumulative } from "../distributions/studentT";
import { isRoundingOnly, mean, sumOfSquares } from "../moments";
import { noSpread, tooFew, unequalLengths } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { largestSize } from "./repeatedResults";

export type Correlation = {
  readonly coefficient: number;
  /** Slope of the least-squares line of the second on the first. */
  readonly slope: number;
  /** Two-sided p of no correlation. */
  readonly p: number;
};

/**
 * Pearson's correlation with the t test of n - 2 degrees of freedom (textbook).
 * Refuses fewer than three pairs and values that are all equal.
 */
export function correlation(first: readonly number[], second: readonly number[]): Result<Correlation> {
  if (first.length !== second.length) {
    return refuse(unequalLengths(say`first values`, say`second values`, [first.length, second.length]));
  }
  if (first.length < 3) return refuse(tooFew(say`pairs`, 3, first.length));
  const squares = [first, second].map(sumOfSquares) as [number, number];
  if (
    squares.some((sum, index) => isRoundingOnly(Math.sqrt(sum / first.length), largestSize([[first, second][index]!])))
  ) {
    return refuse(noSpread(say`values of one kind`));
  }

  const centre = [mean(first), mean(second)] as const;
  const products = first.reduce((sum, value, index) => sum + (value - centre[0]) * (second[index]! - centre[1]), 0);
  const coefficient = Math.max(-1, Math.min(1, products / Math.sqrt(squares[0]) / Math.sqrt(squares[1])));
  const degreesOfFreedom = first.length - 2;
  const t = Math.abs(coefficient) * Math.sqrt(degreesOfFreedom / (1 - coefficient ** 2));
  return ok({
    coefficient,
    slope: products / squares[0],
    p: 2 * studentTCumulative(-t, degreesOfFreedom),
  });
}
