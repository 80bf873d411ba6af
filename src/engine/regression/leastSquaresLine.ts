import { say } from "../../language/say";
import { isRoundingOnly, mean, sumOfSquares } from "../moments";
import { noSpread, tooFew, unequalLengths } from "../refusals";
import { ok, type Result, refuse } from "../result";

export type Line = {
  readonly intercept: number;
  readonly slope: number;
  /** Share of the spread in y that the line explains, 0 to 1; 1 when y has no spread. */
  readonly rSquared: number;
  /** Standard deviation of the points around the line, divisor n - 2; 0 for two points. */
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly meanX: number;
  /** Sum of squared deviations of x from its mean. */
  readonly sumOfSquaresX: number;
};

/**
 * Ordinary least-squares line y = intercept + slope x, sums of squares centred.
 * Refuses fewer than two points, lists of unequal length and x values that are all equal.
 *
 * Source: any text on linear regression; checked against R 4.2.2 `lm`.
 */
export function leastSquaresLine(x: readonly number[], y: readonly number[]): Result<Line> {
  if (x.length !== y.length) return refuse(unequalLengths(say`x values`, say`y values`, [x.length, y.length]));
  if (x.length < 2) return refuse(tooFew(say`points for a line`, 2, x.length));
  const meanX = mean(x);
  const meanY = mean(y);
  const sumOfSquaresX = sumOfSquares(x);
  if (isRoundingOnly(Math.sqrt(sumOfSquaresX), Math.abs(meanX))) return refuse(noSpread(say`x values`));

  let products = 0;
  x.forEach((value, index) => {
    products += (value - meanX) * (y[index]! - meanY);
  });
  const slope = products / sumOfSquaresX;
  let residuals = 0;
  x.forEach((value, index) => {
    residuals += (y[index]! - meanY - slope * (value - meanX)) ** 2;
  });
  const sumOfSquaresY = sumOfSquares(y);
  const degreesOfFreedom = x.length - 2;
  return ok({
    intercept: meanY - slope * meanX,
    slope,
    rSquared: sumOfSquaresY === 0 ? 1 : Math.max(0, 1 - residuals / sumOfSquaresY),
    residualStandardDeviation: degreesOfFreedom === 0 ? 0 : Math.sqrt(residuals / degreesOfFreedom),
    degreesOfFreedom,
    meanX,
    sumOfSquaresX,
  });
}
