const smallest = 1e-30;
const largest = 1e30;

/** Whether a number can be the result of a measurement: zero, or from 1e-30 to 1e30 in size. Outside, squares and ratios overflow. */
export const isMeasurement = (value: number): boolean =>
  value === 0 || (Math.abs(value) >= smallest && Math.abs(value) <= largest);

/**
 * The values that are there, in their order; missing ones are `null` and are left out.
 *
 * @throws RangeError for NaN, Infinity and numbers no measurement gives: they must be stopped where cells are read.
 */
export function presentValues(values: readonly (number | null)[]): number[] {
  const present = values.filter((value) => value !== null);
  for (const value of present) {
    if (!isMeasurement(value)) throw new RangeError(`${value} is not a measurement; missing values are null.`);
  }
  return present;
}
