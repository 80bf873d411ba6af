import fc from "fast-check";
import { asymmetry } from "../../../src/engine/asymmetry/asymmetry";
import { noiseLimit } from "../../../src/engine/asymmetry/noiseLimit";
import { unwrap } from "../../../src/engine/result";
import { reducedScoreMoments } from "../../../src/engine/trials/reducedScoreMoments";
import { reductions } from "../../../src/engine/trials/reduction";
import { normalNoise } from "../measurements";

const noise = { logStandardDeviation: 0.04, degreesOfFreedom: 30 };

describe("how far equal legs can differ by noise", () => {
  // Source: scipy 1.17.1 stats.t.ppf(.975, 30) * .04 * sqrt(2 v) with v from integrate.quad.
  test.each([
    ["best", 1, 0.115528376230489, 10.910470837174113],
    ["best", 3, 0.08641238379264347, 8.27840917565339],
    ["mean", 3, 0.06670033911571319, 6.452451524931957],
  ] as const)("%s of %d trials a side", (reduction, count, logLimit, percent) => {
    const limit = unwrap(noiseLimit({ noise, leftCount: count, rightCount: count, reduction, confidence: 0.95 }));
    expect(limit.logLimit).toBeCloseTo(logLimit, 9);
    expect(limit.percent).toBeCloseTo(percent, 7);
  });

  // Source: as above at 90 %, plus .04 * (.8462843753 - .5641895835).
  test("a best of three against a best of two has a head start that counts as noise", () => {
    const limit = unwrap(noiseLimit({ noise, leftCount: 3, rightCount: 2, reduction: "best", confidence: 0.9 }));
    expect(limit.logLimit).toBeCloseTo(0.08691865220332325, 9);
  });

  test("the percent is the percentage difference of two sides that far apart", () => {
    const limit = unwrap(noiseLimit({ noise, leftCount: 3, rightCount: 3, reduction: "best", confidence: 0.95 }));
    expect(unwrap(asymmetry(1, Math.exp(limit.logLimit), "percentDifference"))).toBeCloseTo(limit.percent, 10);
  });

  // Outside check: simulation of 20 000 athletes with equal legs; with noise known the promise must hold to sampling error.
  test.each(reductions)("equal legs stay below the limit as often as promised: %s of three", (reduction) => {
    const draw = normalNoise(20240817);
    const sorted = () => [draw(), draw(), draw()].sort((a, b) => b - a) as [number, number, number];
    const score = ([first, second, third]: [number, number, number]): number =>
      ({ best: first, mean: (first + second + third) / 3, median: second, meanOfBestTwo: (first + second) / 2 })[
        reduction
      ];
    const { logLimit } = unwrap(
      noiseLimit({
        noise: { logStandardDeviation: 0.05, degreesOfFreedom: 1e6 },
        leftCount: 3,
        rightCount: 3,
        reduction,
        confidence: 0.95,
      }),
    );
    let below = 0;
    for (let athlete = 0; athlete < 20_000; athlete++) {
      if (Math.abs(0.05 * (score(sorted()) - score(sorted()))) <= logLimit) below++;
    }
    // The difference of two scores is close to normal, not exactly: 95 % within half a point.
    expect(Math.abs(below / 20_000 - 0.95)).toBeLessThan(0.005);
  });

  test("higher confidence, more noise and fewer trials all raise the limit", () => {
    const limit = (logStandardDeviation: number, count: number, confidence: number): number =>
      unwrap(
        noiseLimit({
          noise: { logStandardDeviation, degreesOfFreedom: 12 },
          leftCount: count,
          rightCount: count,
          reduction: "best",
          confidence,
        }),
      ).logLimit;
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.5, noNaN: true }), fc.integer({ min: 1, max: 8 }), (s, count) => {
        expect(limit(s, count, 0.95)).toBeGreaterThan(limit(s, count, 0.9));
        expect(limit(s * 1.1, count, 0.9)).toBeGreaterThan(limit(s, count, 0.9));
        expect(limit(s, count, 0.9)).toBeGreaterThan(limit(s, count + 1, 0.9));
      }),
    );
    expect(reducedScoreMoments(3, "best").variance).toBeLessThan(reducedScoreMoments(2, "best").variance);
  });

  test("too few trials, no noise and confidence in percent are refused together", () => {
    const refused = noiseLimit({
      noise: { logStandardDeviation: 0, degreesOfFreedom: 0 },
      leftCount: 0,
      rightCount: 1,
      reduction: "meanOfBestTwo",
      confidence: 95,
    });
    expect(refused).toMatchObject({
      ok: false,
      reasons: [
        { code: "outOfRange", facts: { what: "confidence" } },
        { code: "tooFew", facts: { what: "left trials", needed: 2, got: 0 } },
        { code: "tooFew", facts: { what: "right trials", needed: 2, got: 1 } },
        { code: "notPositive", facts: { what: "the noise", value: 0 } },
        { code: "notPositive", facts: { what: "the degrees of freedom", value: 0 } },
      ],
    });
  });
});
