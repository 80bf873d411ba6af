import fc from "fast-check";
import {
  isRoundingOnly,
  mean,
  median,
  standardDeviation,
  sumOfSquares,
  withoutRounding,
  zWithoutRounding,
} from "../../src/engine/moments";
import { expectRelative } from "../reference/reference";
import { measurement } from "./measurements";

describe("mean and spread", () => {
  // Source: numpy 2 mean, std(ddof = 1), median of 2, 4, 4, 4, 5, 5, 7, 9.
  test("a short list", () => {
    const values = [2, 4, 4, 4, 5, 5, 7, 9];
    expect(mean(values)).toBe(5);
    expectRelative(standardDeviation(values), 2.138089935299395, 1e-14);
    expect(median(values)).toBe(4.5);
  });

  // Source: by hand.
  test("the median sorts by size, not by digits, and leaves the list as it was", () => {
    const values = [9, 10, 2];
    expect(median(values)).toBe(9);
    expect(values).toEqual([9, 10, 2]);
    expect(median([7])).toBe(7);
  });

  test("equal values have no spread at all, whatever their digits", () => {
    expect(sumOfSquares([0.1, 0.1, 0.1])).toBe(0);
    expect(mean([0.1, 0.1, 0.1])).toBe(0.1);
  });

  test("a large constant costs no digits", () => {
    const values = fc.array(fc.integer({ min: -1000, max: 1000 }), { minLength: 2, maxLength: 20 });
    fc.assert(
      fc.property(values, (list) => {
        const shifted = list.map((value) => value + 1e12);
        expect(sumOfSquares(shifted)).toBe(sumOfSquares(list));
      }),
    );
  });

  test("the mean lies within the values", () => {
    fc.assert(
      fc.property(fc.array(measurement(-1e6, 1e6), { minLength: 1, maxLength: 20 }), (list) => {
        expect(mean(list)).toBeGreaterThanOrEqual(Math.min(...list) - 1e-9);
        expect(mean(list)).toBeLessThanOrEqual(Math.max(...list) + 1e-9);
      }),
    );
  });

  test("what last digits leave behind is rounding, a thousandth is not", () => {
    expect(isRoundingOnly(standardDeviation([4.4 - 3.3, 1.1, 2.2 - 1.1]), 4.4)).toBe(true);
    expect(isRoundingOnly(0.001, 1e9)).toBe(false);
    expect(isRoundingOnly(16 * Number.EPSILON, 1)).toBe(true);
    expect(isRoundingOnly(17 * Number.EPSILON, 1)).toBe(false);
    expect(isRoundingOnly(1600 * Number.EPSILON, 100)).toBe(true);
  });

  test("what is equal on paper is equal without rounding, and what an instrument tells apart stays apart", () => {
    const [inches, middle] = [[50, 50.1, 50.5].map((value) => value * (1 / 2.54)), 50.2 * (1 / 2.54)];
    expect(mean(inches)).not.toBe(middle);
    expect(withoutRounding(mean(inches))).toBe(withoutRounding(middle));
    expect(withoutRounding(1234.56789012)).toBe(1234.56789012);
    expect(Object.is(zWithoutRounding(0.1 + 0.2 - 0.3), 0)).toBe(true);
    expect(Object.is(zWithoutRounding(-1e-16), 0)).toBe(true);
    expect(zWithoutRounding(0.49999999999999994)).toBe(0.5);
    expect(zWithoutRounding(-1.2345678901)).toBe(-1.2345678901);
  });

  test("nothing has no mean", () => {
    expect(() => mean([])).toThrow("A mean needs at least one value.");
    expect(() => sumOfSquares([])).toThrow(RangeError);
    expect(() => standardDeviation([1])).toThrow("A variance needs at least two values.");
    expect(standardDeviation([1, 1])).toBe(0);
  });
});
