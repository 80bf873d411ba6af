import { standardDeviationEstimate } from "../../../src/engine/reliability/standardDeviationEstimate";

describe("limits of a standard deviation", () => {
  // Source: scipy 1.17.1, sqrt(df / stats.chi2.ppf).
  test.each([
    [5, 0.6242, 2.4526],
    [9, 0.6878, 1.8256],
    [19, 0.7605, 1.4606],
    [49, 0.8353, 1.2461],
  ])("with %d degrees of freedom it may be %d to %d times the value", (degreesOfFreedom, low, high) => {
    const estimate = standardDeviationEstimate(1, degreesOfFreedom, 0.95);
    expect(estimate.value).toBe(1);
    expect(estimate.low).toBeCloseTo(low, 4);
    expect(estimate.high).toBeCloseTo(high, 4);
  });
});
