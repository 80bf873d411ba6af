import { correlation } from "../../../src/engine/reliability/correlation";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("correlation", () => {
  // Source: R 4.2.2 cor on lme4 sleepstudy, days 0 and 2.
  test("of two days of reaction times", () => {
    const days = ["day0", "day2"].map((day) => fullColumn("sleepstudy_day0_2", day));
    const { coefficient } = unwrap(correlation(days[0]!, days[1]!));
    expectRelative(coefficient, expected("sleepstudy_day0_2").change_day0_day2.r_pre_post, 1e-10);
  });

  test("a straight line is 1 with p 0, its slope the line's", () => {
    const line = unwrap(correlation([1, 2, 4], [5, 7, 11]));
    expect(line.coefficient).toBeCloseTo(1, 12);
    expect(line.slope).toBeCloseTo(2, 12);
    expect(line.p).toBeCloseTo(0, 6);
  });

  test("points on a line without rounding have a p of exactly 0", () => {
    expect(unwrap(correlation([1, 1, 3, 3], [7, 7, 5, 5]))).toEqual({ coefficient: -1, slope: -1, p: 0 });
  });

  test("a large constant in the data costs no digits", () => {
    const [first, second] = [
      [1, 2, 4],
      [3, 1.5, 2],
    ] as const;
    const moved = (values: readonly number[]) => values.map((value) => value + 2 ** 40);
    const { coefficient } = unwrap(correlation(first, second));
    expectRelative(unwrap(correlation(moved(first), second)).coefficient, coefficient, 1e-9);
    expectRelative(unwrap(correlation(first, moved(second))).coefficient, coefficient, 1e-9);
  });

  test("values that differ in their last digits alone are equal ones", () => {
    expect(correlation([1e20, 1e20 * (1 + 2 ** -52), 1e20], [1, 2, 3])).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "values of one kind" } }],
    });
  });

  test("few pairs, equal values and unequal lists are refused", () => {
    expect(correlation([1, 2], [3, 4])).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "pairs", needed: 3, got: 2 } }],
    });
    for (const [first, second] of [
      [
        [0.1, 0.1, 0.1],
        [1, 2, 3],
      ],
      [
        [1, 2, 3],
        [0.1, 0.1, 0.1],
      ],
    ] as const) {
      expect(correlation(first, second)).toMatchObject({
        reasons: [{ code: "noSpread", facts: { what: "values of one kind" } }],
      });
    }
    expect(correlation([1, 2, 3], [1, 2])).toMatchObject({
      reasons: [
        {
          code: "unequalLengths",
          facts: { first: "first values", second: "second values", firstCount: 3, secondCount: 2 },
        },
      ],
    });
  });
});
