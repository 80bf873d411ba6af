import { limbSymmetryIndex } from "../../../src/engine/asymmetry/limbSymmetryIndex";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("limbSymmetryIndex", () => {
  // Source of the values: R 4.2.2 arithmetic, log and atan2.
  test.each([
    [180, 200, 111.1111111],
    [2.05, 1.95, 95.1219512],
  ])("left %d, right %d: %d", (left, right, value) => {
    expect(limbSymmetryIndex(left, right)).toBeCloseTo(value, 6);
  });

  // Data: MASS::shoes; values: R 4.2.2.
  test("ten pairs of shoes", () => {
    const right = fullColumn("shoes_pairs", "right_B");
    fullColumn("shoes_pairs", "left_A").forEach((left, index) => {
      expectRelative(
        limbSymmetryIndex(left, right[index]!),
        expected("shoes_pairs").asymmetry.LSI_second_over_first[String(index + 1)],
        1e-10,
      );
    });
  });

  test("right at nine tenths of left is 90", () => {
    expect(limbSymmetryIndex(200, 180)).toBe(90);
  });
});
