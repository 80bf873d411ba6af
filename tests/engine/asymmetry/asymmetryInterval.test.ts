import fc from "fast-check";
import { asymmetryInterval } from "../../../src/engine/asymmetry/asymmetryInterval";
import { unwrap } from "../../../src/engine/result";
import { measurement } from "../measurements";

describe("the ratio of the sides with its limits", () => {
  const left = [178, 182, 180];
  const right = [196, 204, 200];

  // Source: R 4.2.2 t.test(log(right), log(left), var.equal = TRUE); scipy 1.17.1 ttest_ind agrees.
  test("own noise of three trials a side", () => {
    const interval = unwrap(asymmetryInterval(left, right, { confidence: 0.95 }));
    expect(interval.degreesOfFreedom).toBe(4);
    expect(interval.logRatio.low).toBeCloseTo(0.06858880984700597, 10);
    expect(interval.logRatio.high).toBeCloseTo(0.14194781106211132, 10);
    expect(interval.rightOverLeft.value).toBeCloseTo(11.1008666, 6);
    expect(interval.rightOverLeft.low).toBeCloseTo(7.0995736, 6);
    expect(interval.rightOverLeft.high).toBeCloseTo(15.2516498, 6);
  });

  // Source: by hand from the ratio above, 1 - 1 / 1.111008666.
  test("in percent of the larger side", () => {
    const interval = unwrap(asymmetryInterval(left, right, { confidence: 0.95 }));
    expect(interval.percentDifference.value).toBeCloseTo(100 * (1 - 1 / 1.111008666), 6);
  });

  test("of sides with the same trials is zero, with limits either way", () => {
    const { percentDifference } = unwrap(asymmetryInterval([180, 184], [180, 184], { confidence: 0.95 }));
    expect(percentDifference.value).toBeCloseTo(0, 12);
    expect(percentDifference.high).toBeCloseTo(-percentDifference.low, 12);
  });

  test("the squad's noise replaces the athlete's own, and then one trial a side is enough", () => {
    const noise = { logStandardDeviation: 0.04, degreesOfFreedom: 30 };
    const interval = unwrap(asymmetryInterval([180], [200], { confidence: 0.95, noise }));
    // Margin: scipy 1.17.1 stats.t.ppf(.975, 30) * .04 * sqrt(2).
    expect(interval.logRatio.high - interval.logRatio.value).toBeCloseTo(0.115528376230489, 10);
    expect(interval.degreesOfFreedom).toBe(30);
  });

  test("three trials in all are enough for the athlete's own noise, two are not", () => {
    // Source: R 4.2.2 t.test(log(200), log(c(178, 182)), var.equal = TRUE) has one degree of freedom.
    expect(unwrap(asymmetryInterval([178, 182], [200], { confidence: 0.95 })).degreesOfFreedom).toBe(1);
    expect(asymmetryInterval([180], [200, null], { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "tooFew", facts: { what: "trials of both sides together", needed: 3, got: 2 } }],
    });
  });

  test("equal trials and values without ratio are refused", () => {
    expect(asymmetryInterval([180, 180], [200, 200], { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "trials of each side" } }],
    });
    // What the last digits of large numbers leave is no spread either.
    const copied = [1e20, 1e20 * (1 + 1e-14)];
    expect(asymmetryInterval(copied, copied, { confidence: 0.95 })).toMatchObject({ reasons: [{ code: "noSpread" }] });
    for (const value of [-2, 0]) {
      expect(asymmetryInterval([180, value], [200, 201], { confidence: 0.95 })).toMatchObject({
        reasons: [{ code: "notPositive", facts: { what: "every trial", value } }],
      });
      expect(asymmetryInterval([180, 181], [200, value], { confidence: 0.95 })).toMatchObject({
        reasons: [{ code: "notPositive", facts: { what: "every trial", value } }],
      });
    }
  });

  test("sides without trials are refused by their names, beside a confidence in percent", () => {
    const noise = { logStandardDeviation: 0.04, degreesOfFreedom: 30 };
    expect(asymmetryInterval([null], [], { confidence: 95, noise })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "left trials", needed: 1, got: 0 } },
        { code: "tooFew", facts: { what: "right trials", needed: 1, got: 0 } },
      ],
    });
  });

  test("swapping sides mirrors the limits, wider confidence encloses narrower, nulls change nothing", () => {
    const trials = fc.array(measurement(1, 1000), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(trials, trials, (one, two) => {
        const wide = asymmetryInterval(one, two, { confidence: 0.95 });
        if (!wide.ok) return;
        const mirrored = unwrap(asymmetryInterval(two, one, { confidence: 0.95 })).percentDifference;
        expect(mirrored.low).toBeCloseTo(-wide.value.percentDifference.high, 8);
        const narrow = unwrap(asymmetryInterval([null, ...one], [...two, null], { confidence: 0.8 })).logRatio;
        expect(narrow.value).toBeCloseTo(wide.value.logRatio.value, 10);
        expect(narrow.low).toBeGreaterThan(wide.value.logRatio.low);
        expect(narrow.high).toBeLessThan(wide.value.logRatio.high);
      }),
    );
  });
});
