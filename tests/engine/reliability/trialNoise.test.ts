import fc from "fast-check";
import { trialNoise } from "../../../src/engine/reliability/trialNoise";
import { unwrap } from "../../../src/engine/result";
import { measurement } from "../measurements";

describe("noise from trial to trial", () => {
  // Source: numpy 2 log and var, scipy 1.17.1 stats.chi2.ppf.
  test("three sets of unequal size", () => {
    const noise = unwrap(
      trialNoise([[180, 185, 178], [200, null, 196], [150, 152, 149, 155], [null, 160], []], { confidence: 0.95 }),
    );
    expect(noise.logStandardDeviation).toBeCloseTo(0.01779600408030156, 14);
    expect(noise).toMatchObject({ degreesOfFreedom: 6, setCount: 3 });
    expect(noise.coefficientOfVariation.value).toBeCloseTo(1.7955296480669463, 11);
    expect(noise.coefficientOfVariation.low).toBeCloseTo(1.1533633026417354, 9);
    expect(noise.coefficientOfVariation.high).toBeCloseTo(3.9965955507845234, 9);
  });

  test("single trials, copied trials and values that have no logarithm are refused", () => {
    expect(trialNoise([[180], [200, null]], { confidence: 95 })).toMatchObject({
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "sets with two trials", needed: 1, got: 0 } },
      ],
    });
    expect(trialNoise([[180.1, 180.1, 180.1]], { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "trials of each set" } }],
    });
    expect(trialNoise([[180, 0]], { confidence: 0.95 })).toMatchObject({
      reasons: [{ code: "notPositive", facts: { what: "every trial", value: 0 } }],
    });
  });

  test("another unit for one athlete changes nothing", () => {
    const sets = fc.array(fc.array(measurement(1, 1000), { minLength: 2, maxLength: 4 }), {
      minLength: 2,
      maxLength: 6,
    });
    fc.assert(
      fc.property(sets, measurement(0.01, 100), (trials, factor) => {
        const noise = trialNoise(trials, { confidence: 0.9 });
        if (!noise.ok) return;
        const rescaled = [trials[0]!.map((trial) => trial * factor), ...trials.slice(1)];
        expect(unwrap(trialNoise(rescaled, { confidence: 0.9 })).logStandardDeviation).toBeCloseTo(
          noise.value.logStandardDeviation,
          8,
        );
      }),
    );
  });

  test("confidence in percent is refused though the trials are good", () => {
    expect(trialNoise([[180, 185, 178]], { confidence: 95 })).toMatchObject({
      reasons: [{ code: "outOfRange", facts: { what: "confidence" } }],
    });
  });
});
