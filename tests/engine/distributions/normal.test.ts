import { normalCumulative, normalDensity, normalQuantile } from "../../../src/engine/distributions/normal";
import { expectRelative } from "../../reference/reference";

describe("the standard normal distribution", () => {
  // Source: scipy 1.17.1 stats.norm.cdf, ppf, pdf.
  test("cumulative, quantile and density", () => {
    expectRelative(normalCumulative(1.96), 0.9750021048517795, 1e-13);
    expectRelative(normalCumulative(-6), 9.865876450376946e-10, 1e-11);
    expectRelative(normalQuantile(0.975), 1.959963984540054, 1e-13);
    expectRelative(normalDensity(1), 0.24197072451914337, 1e-14);
  });
});
