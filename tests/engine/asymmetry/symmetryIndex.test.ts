import { symmetryIndex } from "../../../src/engine/asymmetry/symmetryIndex";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("symmetryIndex", () => {
  // Source of the values: R 4.2.2 arithmetic, log and atan2.
  test.each([
    [180, 200, 10.5263158],
    [2.05, 1.95, -5.0],
  ])("left %d, right %d: %d", (left, right, value) => {
    expect(symmetryIndex(left, right)).toBeCloseTo(value, 6);
  });

  // Data: MASS::shoes; values: R 4.2.2.
  test("ten pairs of shoes", () => {
    const right = fullColumn("shoes_pairs", "right_B");
    fullColumn("shoes_pairs", "left_A").forEach((left, index) => {
      expectRelative(
        symmetryIndex(left, right[index]!),
        expected("shoes_pairs").asymmetry.SI_mean_ref[String(index + 1)],
        1e-10,
      );
    });
  });

  test("doubling is two thirds of the mean", () => {
    expect(symmetryIndex(1, 2)).toBeCloseTo(200 / 3, 12);
  });
});
