import { chiSquareQuantile } from "../../../src/engine/distributions/chiSquare";
import { expectRelative } from "../../reference/reference";

describe("chi-square quantile", () => {
  // Source: scipy 1.17.1 stats.chi2.ppf.
  test.each([
    [0.5, 500, 499.3334915888738],
    [0.975, 1000, 1089.5309127749135],
    [0.025, 1001, 915.2133312204413],
    [0.5, 2000, 1999.3333728539303],
    [0.975, 2000, 2125.8423024497756],
    [0.5, 100000, 99999.33333412347],
  ])("at %d with %d degrees of freedom", (p, degreesOfFreedom, value) => {
    expectRelative(chiSquareQuantile(p, degreesOfFreedom), value, 2e-9);
  });
});
