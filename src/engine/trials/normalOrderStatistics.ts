import logGamma from "@stdlib/math-base-special-gammaln";
import { normalCumulative, normalDensity } from "../distributions/normal";

export type ScoreMoments = { readonly expectation: number; readonly variance: number };

/**
 * Expectation and variance of the value at `position` (1 = smallest) among `count` independent standard normal values.
 *
 *     f(z) = count! / ((position-1)! (count-position)!) * P(z)^(position-1) * (1-P(z))^(count-position) * p(z)
 *
 * by the trapezoid rule, which for curves that die out at both ends is exact to rounding.
 * Source: David & Nagaraja, Order Statistics, 3rd ed. 2003 (from memory).
 */
export function normalOrderStatistic(position: number, count: number): ScoreMoments {
  const logFactor = logFactorial(count) - logFactorial(position - 1) - logFactorial(count - position);
  const weights = grid().map((node) =>
    Math.exp(logFactor + (position - 1) * node.logBelow + (count - position) * node.logAbove + node.logDensity),
  );
  const expectation = step * sum(weights.map((weight, index) => weight * at(index)));
  const variance = step * sum(weights.map((weight, index) => weight * (at(index) - expectation) ** 2));
  return { expectation, variance };
}

/**
 * Expectation and variance of the mean of two neighbours in order, those at `position` and `position + 1` among
 * `count` independent standard normal values. Their joint density over a < b is
 *
 *     count! / ((position-1)! (count-position-1)!) * P(a)^(position-1) * (1-P(b))^(count-position-1) * p(a) * p(b)
 *
 * and E[ab] is found by summing over b from the top down while a follows. Source: as above.
 */
export function meanOfNeighbours(position: number, count: number): ScoreMoments {
  const lower = normalOrderStatistic(position, count);
  const upper = normalOrderStatistic(position + 1, count);
  const logFactor = logFactorial(count) - logFactorial(position - 1) - logFactorial(count - position - 1);
  const nodes = grid();
  const outer = nodes.map(
    (node, index) => at(index) * Math.exp(logFactor + (position - 1) * node.logBelow + node.logDensity),
  );
  const inner = nodes.map(
    (node, index) => at(index) * Math.exp((count - position - 1) * node.logAbove + node.logDensity),
  );

  let expectedProduct = 0;
  let innerAbove = 0;
  for (let index = nodes.length - 3; index >= 1; index--) {
    innerAbove += intervalIntegral(inner, index);
    expectedProduct += step * outer[index]! * innerAbove;
  }
  const covariance = expectedProduct - lower.expectation * upper.expectation;
  return {
    expectation: (lower.expectation + upper.expectation) / 2,
    variance: (lower.variance + upper.variance + 2 * covariance) / 4,
  };
}

type Node = { readonly logBelow: number; readonly logAbove: number; readonly logDensity: number };

const reach = 9;
const step = 1 / 256;
const at = (index: number): number => index * step - reach;

let tabled: readonly Node[] | undefined;
function grid(): readonly Node[] {
  tabled ??= Array.from({ length: (2 * reach) / step + 1 }, (_, index) => ({
    logBelow: Math.log(normalCumulative(at(index))),
    logAbove: Math.log(normalCumulative(-at(index))),
    logDensity: Math.log(normalDensity(at(index))),
  }));
  return tabled;
}

/** Area under a tabled curve from node `index` to the next, by the cubic through the four nodes around it. */
const intervalIntegral = (curve: readonly number[], index: number): number =>
  (step / 24) * (13 * (curve[index]! + curve[index + 1]!) - curve[index - 1]! - curve[index + 2]!);

const logFactorial = (n: number): number => logGamma(n + 1);

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
