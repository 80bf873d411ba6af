/**
 * Mean and spread of plain numbers. Everything is counted from the first value, so a large constant in the data
 * (times of day, serial numbers) costs no digits, and equal values give a spread of exactly zero.
 */

/** Arithmetic mean of at least one value. */
export function mean(values: readonly number[]): number {
  const origin = first(values);
  return origin + meanOffset(values, origin);
}

/** Sum of squared deviations from the mean, two passes. */
export function sumOfSquares(values: readonly number[]): number {
  const origin = first(values);
  const centre = meanOffset(values, origin);
  let sum = 0;
  for (const value of values) sum += (value - origin - centre) ** 2;
  return sum;
}

/** Variance with the divisor n - 1; at least two values. */
export function variance(values: readonly number[]): number {
  if (values.length < 2) throw new RangeError("A variance needs at least two values.");
  return sumOfSquares(values) / (values.length - 1);
}

/** Standard deviation with the divisor n - 1; at least two values. */
export const standardDeviation = (values: readonly number[]): number => Math.sqrt(variance(values));

/** Middle value, or the mean of the two middle ones. */
export function median(values: readonly number[]): number {
  const sorted = ascending(values);
  const middle = (sorted.length - 1) / 2;
  return mean(Array.from(sorted.slice(Math.floor(middle), Math.ceil(middle) + 1)));
}

/**
 * Whether a root mean square is no more than what the last digits of numbers of this `magnitude` leave behind,
 * as when one column is a copy of another plus a constant.
 */
export const isRoundingOnly = (rootMeanSquare: number, magnitude: number): boolean =>
  rootMeanSquare <= 16 * Number.EPSILON * magnitude;

/** Sorted as numbers by the machine itself, many times faster than by a comparison of ours. */
export const ascending = (values: readonly number[]): Float64Array => Float64Array.from(values).sort();

/**
 * What is equal on paper is equal here: a score without what rounding has left in its last digits, of which fourteen
 * are more than any instrument gives. Without it, a tie would hang on the unit that the results happen to be in.
 */
export const withoutRounding = (score: number): number => Number(score.toPrecision(14));

/** The same for a z score, whose digits are counted from the point: near zero there are none that mean anything. */
export const zWithoutRounding = (z: number): number => Number(z.toFixed(11)) + 0;

function first(values: readonly number[]): number {
  const origin = values[0];
  if (origin === undefined) throw new RangeError("A mean needs at least one value.");
  return origin;
}

function meanOffset(values: readonly number[], origin: number): number {
  let sum = 0;
  for (const value of values) sum += value - origin;
  return sum / values.length;
}
