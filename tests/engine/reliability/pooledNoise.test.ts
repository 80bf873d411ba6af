import { pooledNoise } from "../../../src/engine/reliability/pooledNoise";
import { unwrap } from "../../../src/engine/result";

const sets = [[180, 185, 178], [200, null, 196], [150, 152, 149, 155], [null, 160], []];

describe("pooledNoise(sets)", () => {
  it("pools the squares of the logarithms within sets", () => {
    // Source: numpy 2 log and var, pooled over sets of unequal size.
    const noise = unwrap(pooledNoise(sets));
    expect(noise.logStandardDeviation).toBeCloseTo(0.01779600408030156, 14);
    expect(noise).toMatchObject({ degreesOfFreedom: 6, setCount: 3 });
  });

  it("refuses what has no logarithm, single trials and copied trials", () => {
    expect(pooledNoise([[0], [200, null]])).toMatchObject({
      reasons: [
        { code: "notPositive", facts: { what: "every trial", value: 0 } },
        { code: "tooFew", facts: { what: "sets with two trials", needed: 1, got: 0 } },
      ],
    });
    // Trials that differ in their last digits alone are copies too.
    for (const copied of [180.1, 180.1 * (1 + 1e-15)]) {
      expect(pooledNoise([[180.1, 180.1, copied]])).toMatchObject({
        reasons: [{ code: "noSpread", facts: { what: "trials of each set" } }],
      });
    }
  });
});
