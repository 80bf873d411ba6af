import { proportionalBias } from "../../../src/engine/reliability/proportionalBias";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, rows } from "../../reference/reference";

describe("whether one method reads ever higher", () => {
  // Source: R 4.2.2 cor.test and lm; scipy 1.17.1 pearsonr and linregress agree for the first.
  test.each([
    ["bland_altman_1986_pefr", ["wright1", "mini1"], "loa_wright1_minus_mini1"],
    ["bland_altman_1986_pefr", ["wright1", "wright2"], "loa_wright1_minus_wright2"],
    ["sleepstudy_day0_2", ["day0", "day1"], "loa_day0_day1"],
    ["sleep_student", ["drug2", "drug1"], "loa"],
  ] as const)("%s %j", (dataset, columns, key) => {
    const reference = expected(dataset)[key].proportional_bias;
    const bias = unwrap(proportionalBias(rows(dataset, columns)));
    expectRelative(bias.coefficient, reference.pearson_diff_mean, 1e-9);
    expectRelative(bias.p, reference.p, 1e-8);
    expectRelative(bias.slope, reference.slope, 1e-9);
  });

  test("equal differences are refused", () => {
    expect(
      proportionalBias([
        [1, 2],
        [2, 3],
        [5, 6],
      ]),
    ).toMatchObject({ reasons: [{ code: "noSpread", facts: { what: "values of one kind" } }] });
  });
});
