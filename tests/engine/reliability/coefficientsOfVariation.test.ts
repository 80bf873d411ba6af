import { coefficientOfVariationFromLogs } from "../../../src/engine/reliability/coefficientOfVariationFromLogs";
import { meanCoefficientOfVariation } from "../../../src/engine/reliability/meanCoefficientOfVariation";
import { rootMeanSquareCoefficientOfVariation } from "../../../src/engine/reliability/rootMeanSquareCoefficientOfVariation";
import { typicalErrorPercentOfMean } from "../../../src/engine/reliability/typicalErrorPercentOfMean";
import { unwrap } from "../../../src/engine/result";
import { expectRelative, rows } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

describe("the four coefficients of variation", () => {
  const positiveSets = reliabilitySets.filter(({ name }) => !name.startsWith("sleep_student"));

  // Source: R 4.2.2 sd, mean, log, qchisq.
  test.each(positiveSets)("$name", ({ results, reference }) => {
    for (const [sessionShift, key] of [
      ["removed", "CV_log_two_way"],
      ["kept", "CV_log_one_way"],
    ] as const) {
      const { variation } = unwrap(coefficientOfVariationFromLogs(results, { confidence: 0.95, sessionShift }));
      expectRelative(variation.value, reference[key].value, 1e-9);
      expectRelative(variation.low, reference[key].ci_low, 1e-8);
      expectRelative(variation.high, reference[key].ci_high, 1e-8);
    }
    expectRelative(unwrap(typicalErrorPercentOfMean(results)), reference.TE_percent_of_grand_mean, 1e-9);
  });

  // These two use athletes with any two results; R had complete cases only.
  test.each(positiveSets.filter(({ name }) => !name.includes("missing")))(
    "of each athlete: $name",
    ({ results, reference }) => {
      expectRelative(unwrap(meanCoefficientOfVariation(results)), reference.CV_individual.mean, 1e-9);
      expectRelative(unwrap(rootMeanSquareCoefficientOfVariation(results)), reference.CV_individual.rms, 1e-9);
    },
  );

  test("zeros and negative values are refused by all four", () => {
    const results = rows("sleep_student", ["drug1", "drug2"]);
    for (const refused of [
      coefficientOfVariationFromLogs(results, { confidence: 0.95 }),
      meanCoefficientOfVariation(results),
      rootMeanSquareCoefficientOfVariation(results),
      typicalErrorPercentOfMean(results),
    ]) {
      expect(refused).toMatchObject({ ok: false, reasons: [{ code: "notPositive" }] });
    }
  });
});
