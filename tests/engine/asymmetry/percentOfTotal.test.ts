import { percentOfTotal } from "../../../src/engine/asymmetry/percentOfTotal";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("percentOfTotal", () => {
  // Source of the values: R 4.2.2 arithmetic, log and atan2.
  test.each([
    [180, 200, 5.2631579],
    [2.05, 1.95, -2.5],
  ])("left %d, right %d: %d", (left, right, value) => {
    expect(percentOfTotal(left, right)).toBeCloseTo(value, 6);
  });

  // Data: MASS::shoes; values: R 4.2.2.
  test("ten pairs of shoes", () => {
    const right = fullColumn("shoes_pairs", "right_B");
    fullColumn("shoes_pairs", "left_A").forEach((left, index) => {
      expectRelative(
        percentOfTotal(left, right[index]!),
        expected("shoes_pairs").asymmetry.pct_total_ref[String(index + 1)],
        1e-10,
      );
    });
  });

  test("doubling is a third of the total, and half the symmetry index", () => {
    expect(percentOfTotal(1, 2)).toBeCloseTo(100 / 3, 12);
  });
});
