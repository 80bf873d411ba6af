import { noncentralTCumulative } from "../../../src/engine/distributions/noncentralT";
import { blandAltman } from "../../../src/engine/reliability/blandAltman";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, rows } from "../../reference/reference";

const pairs = [
  ["bland_altman_1986_pefr", ["wright1", "mini1"], "loa_wright1_minus_mini1"],
  ["bland_altman_1986_pefr", ["wright1", "wright2"], "loa_wright1_minus_wright2"],
  ["sleepstudy_day0_2", ["day0", "day1"], "loa_day0_day1"],
  ["sleep_student", ["drug2", "drug1"], "loa"],
] as const;

describe("limits of agreement", () => {
  // Source: R 4.2.2 mean, sd, qt with ncp; scipy 1.17.1 stats.nct agrees for the exact limits.
  test.each(pairs)("bias and limits with all three kinds of confidence limits: %s %j", (dataset, columns, key) => {
    const reference = expected(dataset)[key];
    for (const [method, suffix] of [
      ["1999", "approx1999"],
      ["1986", "approx1986"],
      ["exact", "exact"],
    ] as const) {
      const agreement = unwrap(blandAltman(rows(dataset, columns), { confidence: 0.95, method }));
      expectRelative(agreement.bias.value, reference.bias, 1e-9);
      expectRelative(agreement.bias.low, reference.bias_ci[0], 1e-9);
      expectRelative(agreement.bias.high, reference.bias_ci[1], 1e-9);
      expectRelative(agreement.standardDeviation, reference.sd_diff, 1e-10);
      expectRelative(agreement.lower.value, reference.lower, 1e-9);
      expectRelative(agreement.upper.value, reference.upper, 1e-9);
      expectRelative(agreement.lower.low, reference[`lower_ci_${suffix}`][0], 1e-8);
      expectRelative(agreement.lower.high, reference[`lower_ci_${suffix}`][1], 1e-8);
      expectRelative(agreement.upper.low, reference[`upper_ci_${suffix}`][0], 1e-8);
      expectRelative(agreement.upper.high, reference[`upper_ci_${suffix}`][1], 1e-8);
    }
  });

  const meters = rows("bland_altman_1986_pefr", ["wright1", "mini1"]);

  // Source: Bland & Altman 1986: mean difference -2.1, SD 38.8, limits with 2 SD -79.7 and 75.5 (printed from rounded values).
  test("the paper's own numbers", () => {
    const agreement = unwrap(blandAltman(meters, { confidence: 0.95, multiplier: 2, method: "1986" }));
    expect(agreement.bias.value).toBeCloseTo(-2.1, 1);
    expect(agreement.standardDeviation).toBeCloseTo(38.8, 1);
    expect(Math.abs(agreement.lower.value - -79.7)).toBeLessThan(0.1);
    expect(Math.abs(agreement.upper.value - 75.5)).toBeLessThan(0.1);
  });

  // Source: scipy 1.17.1 stats.nct.ppf at .05 and .95.
  test("exact limits at 90 %", () => {
    const { upper } = unwrap(blandAltman(meters, { confidence: 0.9 }));
    expectRelative(upper.low, 52.3971842981065, 1e-9);
    expectRelative(upper.high, 110.8049444655367, 1e-9);
  });

  // Outside check: the definition of the exact limits, by the noncentral t distribution whose values scipy gave.
  test("exact limits about two standard deviations speak of two, not of 1.96", () => {
    const { bias, standardDeviation, upper, count } = unwrap(blandAltman(meters, { confidence: 0.9, multiplier: 2 }));
    const root = Math.sqrt(count);
    for (const [limit, share] of [
      [upper.low, 0.05],
      [upper.high, 0.95],
    ] as const) {
      const t = ((limit - bias.value) / standardDeviation) * root;
      expectRelative(noncentralTCumulative(t, count - 1, 2 * root), share, 1e-9);
    }
  });

  test("three pairs are enough", () => {
    expect(unwrap(blandAltman(meters.slice(0, 3), { confidence: 0.95 })).count).toBe(3);
  });

  test("a missing partner drops the pair; equal differences and two pairs are refused", () => {
    expect(unwrap(blandAltman([...meters, [500, null]], { confidence: 0.95 })).count).toBe(17);
    const shifted = meters.map(([first]) => [first!, first! + 0.1]);
    expect(blandAltman(shifted, { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "differences" } }],
    });
    expect(blandAltman(meters.slice(0, 2), { confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "pairs", needed: 3, got: 2 } },
      ],
    });
  });
});
