import { judgeAsymmetry } from "../../../src/engine/asymmetry/judgeAsymmetry";

describe("the verdict on an asymmetry", () => {
  test.each([
    [12, 8, 10, "beyondNoiseAndThreshold"],
    [-12, 8, 10, "beyondNoiseAndThreshold"],
    [9, 8, 10, "beyondNoise"],
    [-11, 12, 10, "overThresholdWithinNoise"],
    [5, 8, 10, "withinNoise"],
    [8, 8, 10, "withinNoise"],
    [10, 8, 10, "beyondNoise"],
    [10, 12, 10, "withinNoise"],
    [25, null, 10, "cannotTell"],
  ] as const)("asymmetry %p, noise limit %p, threshold %p: %s", (asymmetry, noiseLimit, threshold, verdict) => {
    expect(judgeAsymmetry({ asymmetry, noiseLimit, threshold })).toBe(verdict);
  });
});
