import { smallSampleCorrection } from "../../../src/engine/change/smallSampleCorrection";
import { expectRelative } from "../../reference/reference";

describe("Hedges' small-sample correction", () => {
  // Source: R 4.2.2 lgamma, for 9 and 17 degrees of freedom.
  test.each([
    [9, 0.913874892],
    [17, 0.955111505614],
  ])("with %d degrees of freedom it is %d", (degreesOfFreedom, factor) => {
    expectRelative(smallSampleCorrection(degreesOfFreedom), factor, 1e-9);
  });

  // Source: the approximation of Hedges 1981, 1 - 3 / (4 df - 1) (from memory).
  test("comes near its approximation and near 1", () => {
    expect(smallSampleCorrection(40)).toBeCloseTo(1 - 3 / 159, 4);
    expect(smallSampleCorrection(100_000)).toBeCloseTo(1, 4);
  });
});
