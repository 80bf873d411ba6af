import { ratioLimitsOfAgreement } from "../../../src/engine/reliability/ratioLimitsOfAgreement";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, rows } from "../../reference/reference";

describe("limits of agreement as ratios", () => {
  // Source: R 4.2.2 exp, log, mean, sd.
  test.each([
    ["bland_altman_1986_pefr", ["wright1", "mini1"], "loa_wright1_minus_mini1"],
    ["bland_altman_1986_pefr", ["wright1", "wright2"], "loa_wright1_minus_wright2"],
    ["sleepstudy_day0_2", ["day0", "day1"], "loa_day0_day1"],
  ] as const)("%s %j", (dataset, columns, key) => {
    const { ratio } = expected(dataset)[key];
    const agreement = unwrap(ratioLimitsOfAgreement(rows(dataset, columns), { confidence: 0.95 }));
    expectRelative(agreement.bias.value, ratio.bias_ratio, 1e-10);
    expectRelative(agreement.lower.value, ratio.lower_ratio, 1e-10);
    expectRelative(agreement.upper.value, ratio.upper_ratio, 1e-10);
    expect(agreement.lower.low).toBeLessThan(agreement.lower.value);
    expect(agreement.upper.high).toBeGreaterThan(agreement.upper.value);
  });

  test("a zero has no ratio", () => {
    const refused = ratioLimitsOfAgreement(
      [
        [1, 2],
        [2, 2],
        [3, 4],
        [0, 1],
      ],
      { confidence: 0.95 },
    );
    expect(refused).toMatchObject({ reasons: [{ code: "notPositive", facts: { what: "every result" } }] });
  });

  test("of two pairs are refused", () => {
    const two = [
      [10, 11],
      [12, 12.5],
    ];
    expect(ratioLimitsOfAgreement(two, { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "pairs", needed: 3, got: 2 } }],
    });
  });
});
