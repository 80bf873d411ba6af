import { heteroscedasticity } from "../../../src/engine/reliability/heteroscedasticity";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, rows } from "../../reference/reference";

describe("whether differences grow with the value", () => {
  // Source: R 4.2.2 cor.test; scipy 1.17.1 pearsonr, spearmanr agree for the first.
  test.each([
    ["bland_altman_1986_pefr", ["wright1", "mini1"], "loa_wright1_minus_mini1"],
    ["bland_altman_1986_pefr", ["wright1", "wright2"], "loa_wright1_minus_wright2"],
    ["sleepstudy_day0_2", ["day0", "day1"], "loa_day0_day1"],
    ["sleep_student", ["drug2", "drug1"], "loa"],
  ] as const)("%s %j", (dataset, columns, key) => {
    const reference = expected(dataset)[key];
    const sizes = unwrap(heteroscedasticity(rows(dataset, columns)));
    expectRelative(sizes.pearson.coefficient, reference.heteroscedasticity.pearson_absdiff_mean, 1e-9);
    expectRelative(sizes.pearson.p, reference.heteroscedasticity.p, 1e-8);
    expectRelative(sizes.spearman.coefficient, reference.heteroscedasticity.spearman, 1e-9);
  });

  test("error in proportion to the value is found, error of one size is not", () => {
    const values = [10, 20, 30, 40, 50, 60, 70, 80];
    const growing = values.map((value, index) => [value, value * (index % 2 ? 1.1 : 0.9)]);
    const steady = values.map((value, index) => [value, value + (index % 4 === 0 || index % 4 === 3 ? 2 : -2.1)]);
    expect(unwrap(heteroscedasticity(growing)).errorGrows).toBe(true);
    expect(unwrap(heteroscedasticity(steady)).errorGrows).toBe(false);
  });

  test("differences that are all equal are refused", () => {
    expect(
      heteroscedasticity([
        [1, 2],
        [2, 3],
        [5, 6],
      ]),
    ).toMatchObject({ reasons: [{ code: "noSpread", facts: { what: "values of one kind" } }] });
  });
});
