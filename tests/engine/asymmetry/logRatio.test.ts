import { logRatio } from "../../../src/engine/asymmetry/logRatio";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("logRatio", () => {
  // Source of the values: R 4.2.2 arithmetic, log and atan2.
  test.each([
    [180, 200, 10.5360516],
    [2.05, 1.95, -5.0010421],
  ])("left %d, right %d: %d", (left, right, value) => {
    expect(logRatio(left, right)).toBeCloseTo(value, 6);
  });

  // Data: MASS::shoes; values: R 4.2.2.
  test("ten pairs of shoes", () => {
    const right = fullColumn("shoes_pairs", "right_B");
    fullColumn("shoes_pairs", "left_A").forEach((left, index) => {
      expectRelative(
        logRatio(left, right[index]!),
        expected("shoes_pairs").asymmetry.ln_ratio_100[String(index + 1)],
        1e-10,
      );
    });
  });

  test("two steps add up", () => {
    expect(logRatio(1, 1.5) + logRatio(1.5, 2)).toBeCloseTo(logRatio(1, 2), 12);
  });
});
