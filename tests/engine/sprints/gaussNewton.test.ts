import { gaussNewton } from "../../../src/engine/sprints/gaussNewton";
import { expectRelative } from "../../reference/reference";

describe("nonlinear least squares", () => {
  // Source of the data: R datasets::BOD (Bates & Watts 1988, appendix A1.4). R's own example prints 19.143 and 0.5311 with a residual
  // standard error of 2.549 on 4 degrees of freedom; further digits scipy 1.17.1 least_squares (tolerances 1e-15), standard
  // errors R 4.2.2 nls, which stops at a relative offset of 1e-5.
  test("of the oxygen demand curve agrees with R's own example", () => {
    const time = [1, 2, 3, 4, 5, 7];
    const demand = [8.3, 10.3, 19, 16, 15.6, 19.8];
    const fit = gaussNewton([20, 0.5], ([asymptote = 0, rate = 0]) => ({
      residuals: demand.map((value, index) => value - asymptote * (1 - Math.exp(-rate * time[index]!))),
      derivatives: time.map((t) => [1 - Math.exp(-rate * t), asymptote * t * Math.exp(-rate * t)]),
    }))!;
    expectRelative(fit.parameters[0]!, 19.14257526, 1e-8);
    expectRelative(fit.parameters[1]!, 0.53109138, 1e-8);
    expectRelative(fit.residualSumOfSquares, 25.990267282, 1e-10);
    const variance = fit.residualSumOfSquares / 4;
    expectRelative(Math.sqrt(variance * fit.inverseInformation[0]![0]!), 2.49592036544, 1e-5);
    expectRelative(Math.sqrt(variance * fit.inverseInformation[1]![1]!), 0.203081888082, 1e-5);
  });

  // Source: any text on Newton's method: for arctan x = 0 a start beyond 1.39 sends full steps ever farther out.
  test("halves a step that overshoots", () => {
    const arctangent = ([x = 0]: readonly number[]) => ({
      residuals: [-Math.atan(x)],
      derivatives: [[1 / (1 + x * x)]],
    });
    expect(gaussNewton([3], arctangent)!.parameters[0]).toBeCloseTo(0, 12);
  });

  test("halves a step to where the model is not defined", () => {
    const logarithm = ([x = 0]: readonly number[]) =>
      x > 0 ? { residuals: [-Math.log(x)], derivatives: [[1 / x]] } : null;
    expect(gaussNewton([5], logarithm)!.parameters[0]).toBeCloseTo(1, 12);
  });

  test("gives nothing when a parameter has no effect or the start is impossible", () => {
    const useless = () => ({ residuals: [1, 2], derivatives: [[1, 0], [1, 0]] }); // biome-ignore format: a matrix
    expect(gaussNewton([1, 1], useless)).toBeNull();
    expect(gaussNewton([1, 1], () => null)).toBeNull();
  });
});
