import fc from "fast-check";
import { leastSquaresLine } from "../../../src/engine/regression/leastSquaresLine";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { measurement, notFinitePaths } from "../measurements";

describe("the least-squares line", () => {
  // Source: R 4.2.2 lm(v ~ load), summary()$r.squared and $sigma.
  test("of velocity on load", () => {
    const line = unwrap(leastSquaresLine([40, 60, 80, 100], [1.05, 0.83, 0.6, 0.41]));
    expectRelative(line.intercept, 1.475, 1e-12);
    expectRelative(line.slope, -0.01075, 1e-12);
    expectRelative(line.rSquared, 0.998487957663, 1e-11);
    expectRelative(line.residualStandardDeviation, 0.0132287565553, 1e-11);
  });

  // Source: Anscombe 1973, Am Stat 27:17-21 (R datasets::anscombe): every set gives y = 3.00 + 0.500 x, r^2 0.67.
  test.each([
    [[8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68]],
    [[9.14, 8.14, 8.74, 8.77, 9.26, 8.1, 6.13, 3.1, 9.13, 7.26, 4.74]],
    [[7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73]],
  ])("of Anscombe's sets", (y) => {
    const line = unwrap(leastSquaresLine([10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5], y));
    expect(line.intercept).toBeCloseTo(3, 1);
    expect(line.slope).toBeCloseTo(0.5, 2);
    expect(line.rSquared).toBeCloseTo(0.67, 2);
  });

  test("a large constant in the data costs no digits", () => {
    const x = [1, 2, 4];
    const y = [3, 1.5, 2];
    const moved = (values: readonly number[]) => values.map((value) => value + 2 ** 40);
    const { slope } = unwrap(leastSquaresLine(x, y));
    expectRelative(unwrap(leastSquaresLine(moved(x), y)).slope, slope, 1e-9);
    expectRelative(unwrap(leastSquaresLine(x, moved(y))).slope, slope, 1e-9);
  });

  test("equal x values, one point and unequal lists are refused", () => {
    expect(leastSquaresLine([3, 3, 3], [1, 2, 3])).toMatchObject({
      ok: false,
      reasons: [{ code: "noSpread", facts: { what: "x values" } }],
    });
    expect(leastSquaresLine([3], [1])).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "points for a line", needed: 2, got: 1 } }],
    });
    expect(leastSquaresLine([3, 4], [1])).toMatchObject({
      ok: false,
      reasons: [
        { code: "unequalLengths", facts: { first: "x values", second: "y values", firstCount: 2, secondCount: 1 } },
      ],
    });
  });

  // Source: by hand.
  test("through two points leaves no residual, and one without rise explains everything there is", () => {
    expect(unwrap(leastSquaresLine([1, 3], [2, 6]))).toEqual({
      intercept: 0,
      slope: 2,
      rSquared: 1,
      residualStandardDeviation: 0,
      degreesOfFreedom: 0,
      meanX: 2,
      sumOfSquaresX: 2,
    });
    expect(unwrap(leastSquaresLine([1, 2, 3], [5, 5, 5]))).toMatchObject({ slope: 0, rSquared: 1 });
  });

  test("is exact for points on a line, and never gives NaN", () => {
    fc.assert(
      fc.property(fc.array(measurement(-1e6, 1e6), { minLength: 2, maxLength: 12 }), (x) => {
        const result = leastSquaresLine(
          x,
          x.map((value) => 3 - 2 * value),
        );
        expect(notFinitePaths(result)).toEqual([]);
        if (result.ok) expect(result.value.slope).toBeCloseTo(-2, 4);
      }),
    );
  });
});
