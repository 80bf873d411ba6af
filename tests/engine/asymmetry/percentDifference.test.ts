import { percentDifference } from "../../../src/engine/asymmetry/percentDifference";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("percentDifference", () => {
  // Source of the values: R 4.2.2 arithmetic, log and atan2.
  test.each([
    [180, 200, 10.0],
    [2.05, 1.95, -4.8780488],
  ])("left %d, right %d: %d", (left, right, value) => {
    expect(percentDifference(left, right)).toBeCloseTo(value, 6);
  });

  // Data: MASS::shoes; values: R 4.2.2.
  test("ten pairs of shoes", () => {
    const right = fullColumn("shoes_pairs", "right_B");
    fullColumn("shoes_pairs", "left_A").forEach((left, index) => {
      expectRelative(
        percentDifference(left, right[index]!),
        expected("shoes_pairs").asymmetry.pct_max_ref[String(index + 1)],
        1e-10,
      );
    });
  });

  test("doubling is 50 %, of the larger side", () => {
    expect(percentDifference(1, 2)).toBe(50);
    expect(percentDifference(2, 1)).toBe(-50);
  });
});
