import { rootMeanSquareCoefficientOfVariation } from "../../../src/engine/reliability/rootMeanSquareCoefficientOfVariation";
import { unwrap } from "../../../src/engine/result";
import { expectRelative, rows } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

const positiveSets = reliabilitySets.filter(({ name }) => !name.startsWith("sleep_student"));

describe("root mean square coefficient of variation", () => {
  // Source: R 4.2.2 sd and mean. R had complete cases only, so the set with missing results is left out.
  test.each(positiveSets.filter(({ name }) => !name.includes("missing")))("$name", ({ results, reference }) => {
    expectRelative(unwrap(rootMeanSquareCoefficientOfVariation(results)), reference.CV_individual.rms, 1e-9);
  });

  test("zeros and negative values are refused", () => {
    expect(rootMeanSquareCoefficientOfVariation(rows("sleep_student", ["drug1", "drug2"]))).toMatchObject({
      ok: false,
      reasons: [{ code: "notPositive", facts: { what: "every result" } }],
    });
  });
});
