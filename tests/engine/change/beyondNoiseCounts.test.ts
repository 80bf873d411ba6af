import { beyondNoiseCounts } from "../../../src/engine/change/beyondNoiseCounts";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative } from "../../reference/reference";

describe("how many changed beyond noise", () => {
  // Source: R 4.2.2; reaction time, lower is better.
  test("sleepstudy", () => {
    const { individual } = expected("sleepstudy_day0_2").change_day0_day2;
    const improvements = Object.values<number>(individual.change).map((change) => -change);
    const counts = unwrap(
      beyondNoiseCounts([...improvements, null], { minimalDetectableChange: individual.MDC95, confidence: 0.95 }),
    );
    expect(counts).toMatchObject({
      count: 18,
      improved: individual.improved_beyond_MDC,
      declined: individual.worse_beyond_MDC,
      within: individual.within_MDC,
    });
    expectRelative(counts.expectedFalseEachWay, 0.45, 1e-12);
  });

  // Source: 1 - .95^12 = .4596, R 4.2.2.
  test("any false flag among twelve", () => {
    const counts = unwrap(beyondNoiseCounts(new Array(12).fill(0), { minimalDetectableChange: 1, confidence: 0.95 }));
    expect(counts.chanceOfAnyFalse).toBeCloseTo(0.4596, 4);
  });

  test("nobody, and no detectable change, are refused", () => {
    expect(beyondNoiseCounts([null], { minimalDetectableChange: 0, confidence: 0.95 })).toMatchObject({
      reasons: [
        { code: "tooFew", facts: { what: "athletes with both results", needed: 1, got: 0 } },
        { code: "notPositive", facts: { what: "the minimal detectable change", value: 0 } },
      ],
    });
  });

  test("one athlete is counted", () => {
    const counts = unwrap(beyondNoiseCounts([3, null], { minimalDetectableChange: 2, confidence: 0.95 }));
    expect(counts).toMatchObject({ count: 1, improved: 1, declined: 0, within: 0 });
  });

  test("a change as large as the detectable one is within noise", () => {
    expect(
      unwrap(beyondNoiseCounts([2, -2, 2.1, -2.1, -3], { minimalDetectableChange: 2, confidence: 0.95 })),
    ).toMatchObject({ improved: 1, declined: 2, within: 2 });
  });
});
