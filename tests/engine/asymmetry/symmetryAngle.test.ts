import { symmetryAngle } from "../../../src/engine/asymmetry/symmetryAngle";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("symmetryAngle", () => {
  // Source of the values: R 4.2.2 arithmetic, log and atan2.
  test.each([
    [180, 200, 3.3475417],
    [2.05, 1.95, -1.591218],
  ])("left %d, right %d: %d", (left, right, value) => {
    expect(symmetryAngle(left, right)).toBeCloseTo(value, 6);
  });

  // Data: MASS::shoes; values: R 4.2.2.
  test("ten pairs of shoes", () => {
    const right = fullColumn("shoes_pairs", "right_B");
    fullColumn("shoes_pairs", "left_A").forEach((left, index) => {
      expectRelative(
        symmetryAngle(left, right[index]!),
        expected("shoes_pairs").asymmetry.symmetry_angle_pct[String(index + 1)],
        1e-10,
      );
    });
  });

  test("one side vanishing beside the other comes near 50 %", () => {
    expect(symmetryAngle(1e-9, 1)).toBeCloseTo(50, 6);
    expect(symmetryAngle(1, 1e-9)).toBeCloseTo(-50, 6);
  });
});
