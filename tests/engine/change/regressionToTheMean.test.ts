import { regressionToTheMean } from "../../../src/engine/change/regressionToTheMean";
import { unwrap } from "../../../src/engine/result";
import { normalNoise } from "../measurements";

describe("regression to the mean", () => {
  // Source: the formula by hand; correlation .8, mean 50, score 60.
  test("an extreme score is expected back towards the squad", () => {
    expect(unwrap(regressionToTheMean(60, { squadMean: 50, intraclassCorrelation: 0.8 }))).toBeCloseTo(58, 12);
  });

  // Outside check: simulation of 40 000 athletes with true variance 4 and noise variance 1.
  test("the athletes who tested worst come back by as much as it says", () => {
    const draw = normalNoise(11);
    const low: { readonly first: number; readonly second: number }[] = [];
    for (let athlete = 0; athlete < 40_000; athlete++) {
      const truth = 50 + 2 * draw();
      const first = truth + draw();
      if (first < 47) low.push({ first, second: truth + draw() });
    }
    const expectedRetest =
      low.reduce(
        (sum, { first }) => sum + unwrap(regressionToTheMean(first, { squadMean: 50, intraclassCorrelation: 0.8 })),
        0,
      ) / low.length;
    const retest = low.reduce((sum, { second }) => sum + second, 0) / low.length;
    expect(Math.abs(retest - expectedRetest)).toBeLessThan(0.1);
  });

  test("a missing score and an impossible correlation are refused", () => {
    expect(regressionToTheMean(null, { squadMean: 50, intraclassCorrelation: 0.8 })).toMatchObject({
      reasons: [{ code: "missing", facts: { what: "the score" } }],
    });
    for (const value of [1.2, -0.1]) {
      expect(regressionToTheMean(60, { squadMean: 50, intraclassCorrelation: value })).toMatchObject({
        reasons: [{ code: "outOfRange", facts: { what: "the intraclass correlation", low: 0, high: 1, value } }],
      });
    }
    expect(unwrap(regressionToTheMean(60, { squadMean: 50, intraclassCorrelation: 0 }))).toBe(50);
    expect(unwrap(regressionToTheMean(60, { squadMean: 50, intraclassCorrelation: 1 }))).toBe(60);
  });
});
