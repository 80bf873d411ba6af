import { fisherFQuantile } from "../../../src/engine/distributions/fisherF";
import { expectRelative } from "../../reference/reference";

describe("quantile of the F distribution", () => {
  // Source: scipy 1.17.1 stats.f.ppf.
  test.each([
    [0.975, 5, 0.9, 1917.188603440684],
    [0.975, 0.9, 5, 10.293974437957665],
    [0.975, 20, 0.5, 913017.4288799042],
    [0.9, 0.3, 20, 3.168009576307478],
    [0.5, 4, 7, 0.9261930995100327],
    [0.025, 5, 9, 0.14967697434308713],
    [1e-12, 5, 9, 8.855884920596263e-6],
  ])("at %d with %d and %d degrees of freedom", (p, numerator, denominator, value) => {
    expectRelative(fisherFQuantile(p, numerator, denominator), value, 1e-9);
  });

  test("beyond any number it is very large, not infinite, and at the other end nothing", () => {
    expect(fisherFQuantile(0.975, 5, 0.001)).toBe(1e30);
    expect(fisherFQuantile(0.025, 0.001, 5)).toBe(0);
  });
});
