import { bilateralLegAsymmetry } from "../../../src/engine/asymmetry/bilateralLegAsymmetry";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

describe("bilateralLegAsymmetry", () => {
  // Source of the values: R 4.2.2 arithmetic, log and atan2.
  test.each([
    [180, 200, 11.1111111],
    [2.05, 1.95, -5.1282051],
  ])("left %d, right %d: %d", (left, right, value) => {
    expect(bilateralLegAsymmetry(left, right)).toBeCloseTo(value, 6);
  });

  // Data: MASS::shoes; values: R 4.2.2.
  test("ten pairs of shoes", () => {
    const right = fullColumn("shoes_pairs", "right_B");
    fullColumn("shoes_pairs", "left_A").forEach((left, index) => {
      expectRelative(
        bilateralLegAsymmetry(left, right[index]!),
        expected("shoes_pairs").asymmetry.pct_min_ref[String(index + 1)],
        1e-10,
      );
    });
  });

  test("doubling is 100 %, of the smaller side", () => {
    expect(bilateralLegAsymmetry(1, 2)).toBe(100);
    expect(bilateralLegAsymmetry(2, 1)).toBe(-100);
  });
});
