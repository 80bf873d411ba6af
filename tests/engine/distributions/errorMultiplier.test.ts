import { errorMultiplier } from "../../../src/engine/distributions/errorMultiplier";

describe("how many standard errors an interval reaches", () => {
  test("the rounded figures that publications use", () => {
    expect(errorMultiplier(0.95)).toBe(1.96);
    expect(errorMultiplier(0.9)).toBe(1.645);
  });

  // Source: scipy 1.17.1 stats.norm.ppf(.9) and stats.t.ppf(.975, 9).
  test("the normal quantile elsewhere, and Student's t with degrees of freedom", () => {
    expect(errorMultiplier(0.8)).toBeCloseTo(1.2815515655446004, 12);
    expect(errorMultiplier(0.95, 9)).toBeCloseTo(2.262157162798205, 10);
  });
});
