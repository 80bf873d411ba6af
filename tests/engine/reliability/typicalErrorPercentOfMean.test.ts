import { typicalErrorPercentOfMean } from "../../../src/engine/reliability/typicalErrorPercentOfMean";
import { unwrap } from "../../../src/engine/result";
import { expectRelative, rows } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

const positiveSets = reliabilitySets.filter(({ name }) => !name.startsWith("sleep_student"));

describe("typical error in percent of the mean", () => {
  // Source: R 4.2.2 analysis of variance.
  test.each(positiveSets)("$name", ({ results, reference }) => {
    expectRelative(unwrap(typicalErrorPercentOfMean(results)), reference.TE_percent_of_grand_mean, 1e-9);
  });

  test("zeros and negative values are refused", () => {
    expect(typicalErrorPercentOfMean(rows("sleep_student", ["drug1", "drug2"]))).toMatchObject({
      ok: false,
      reasons: [{ code: "notPositive", facts: { what: "every result" } }],
    });
  });
});
