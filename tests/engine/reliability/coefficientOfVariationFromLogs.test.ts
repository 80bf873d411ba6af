import { coefficientOfVariationFromLogs } from "../../../src/engine/reliability/coefficientOfVariationFromLogs";
import { unwrap } from "../../../src/engine/result";
import { expectRelative, rows } from "../../reference/reference";
import { reliabilitySets } from "../../reference/reliabilitySets";

const positiveSets = reliabilitySets.filter(({ name }) => !name.startsWith("sleep_student"));

describe("typical error as a percentage, from logarithms", () => {
  // Source: R 4.2.2 log, analysis of variance, qchisq.
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
  });

  test("zeros and negative values are refused", () => {
    expect(
      coefficientOfVariationFromLogs(rows("sleep_student", ["drug1", "drug2"]), { confidence: 0.95 }),
    ).toMatchObject({
      ok: false,
      reasons: [{ code: "notPositive", facts: { what: "every result" } }],
    });
  });

  test("results of two athletes, and a confidence in percent, are refused", () => {
    const two = [
      [10, 11],
      [12, 12.5],
    ];
    expect(coefficientOfVariationFromLogs(two, { confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "athletes with every result", needed: 3, got: 2 } },
      ],
    });
  });
});
