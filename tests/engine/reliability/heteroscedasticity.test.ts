import { mean, sumOfSquares } from "../../../src/engine/moments";
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

  /** As many pairs, in whose differences and means the correlation is the one wanted: a line and a fold, which are uncorrelated. */
  function pairsCorrelated(count: number, coefficient: number): number[][] {
    const line = unitLength(Array.from({ length: count }, (_, index) => index - (count - 1) / 2));
    const fold = unitLength(line.map(Math.abs));
    return line.map((along, index) => {
      const size = 10 + coefficient * along + Math.sqrt(1 - coefficient ** 2) * fold[index]!;
      return [100 + along + size / 2, 100 + along - size / 2];
    });
  }
  function unitLength(values: readonly number[]): number[] {
    const length = Math.sqrt(sumOfSquares(values));
    return values.map((value) => (value - mean(values)) / length);
  }

  // Source: critical values of Pearson's r, two-sided .05, any text: .444 with 18 and .197 with 98 degrees of freedom; that
  // r above .3 is enough below 20 pairs is common practice, no source.
  test.each([
    [19, 0.31, true],
    [19, 0.29, false],
    [20, 0.43, false],
    [20, 0.46, true],
    [100, 0.19, false],
    [100, 0.21, true],
    [19, -0.9, false],
    [100, -0.9, false],
  ])("%d pairs with a correlation of %d: %p", (count, coefficient, grows) => {
    const sizes = unwrap(heteroscedasticity(pairsCorrelated(count, coefficient)));
    expect(sizes.pearson.coefficient).toBeCloseTo(coefficient, 9);
    expect(sizes.pearson.slope).toBeCloseTo(coefficient, 9);
    expect(sizes.errorGrows).toBe(grows);
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
