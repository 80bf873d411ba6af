import { meanCoefficientOfVariation } from "../../../src/engine/reliability/meanCoefficientOfVariation";
import { unwrap } from "../../../src/engine/result";
import { expectRelative, rows } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

const positiveSets = reliabilitySets.filter(({ name }) => !name.startsWith("sleep_student"));

describe("average within-athlete coefficient of variation", () => {
  // Source: R 4.2.2 sd and mean. R had complete cases only, so the set with missing results is left out.
  test.each(positiveSets.filter(({ name }) => !name.includes("missing")))("$name", ({ results, reference }) => {
    expectRelative(unwrap(meanCoefficientOfVariation(results)), reference.CV_individual.mean, 1e-9);
  });

  test("zeros and negative values are refused", () => {
    expect(meanCoefficientOfVariation(rows("sleep_student", ["drug1", "drug2"]))).toMatchObject({
      ok: false,
      reasons: [{ code: "notPositive", facts: { what: "every result" } }],
    });
  });
});
