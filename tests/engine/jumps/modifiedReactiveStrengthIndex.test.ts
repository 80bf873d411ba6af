import fc from "fast-check";
import { modifiedReactiveStrengthIndex } from "../../../src/engine/jumps/modifiedReactiveStrengthIndex";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("the modified reactive strength index", () => {
  // Source: by hand.
  test("of 0.36 m and 0.8 s", () => {
    expectRelative(unwrap(modifiedReactiveStrengthIndex(0.36, 0.8)), 0.45, 1e-12);
  });

  test.each([
    [0, 1],
    [1, 0],
    [-1, 1],
    [1, Number.NaN],
  ])("of %d and %d is refused", (one, other) => {
    expect(modifiedReactiveStrengthIndex(one, other).ok).toBe(false);
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(modifiedReactiveStrengthIndex(one, other))).toEqual([]);
      }),
    );
  });
});
