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
