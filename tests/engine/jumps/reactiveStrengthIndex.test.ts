import fc from "fast-check";
import { reactiveStrengthIndex } from "../../../src/engine/jumps/reactiveStrengthIndex";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("the reactive strength index", () => {
  // Source: R 4.2.2 arithmetic: 0.5 s of flight are 0.3065625 m, contact 0.2 s.
  test("of 0.3065625 m and 0.2 s", () => {
    expectRelative(unwrap(reactiveStrengthIndex(0.3065625, 0.2)), 1.5328125, 1e-12);
  });

  test.each([
    [0, 1],
    [1, 0],
    [-1, 1],
    [1, Number.NaN],
  ])("of %d and %d is refused", (one, other) => {
    expect(reactiveStrengthIndex(one, other).ok).toBe(false);
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(reactiveStrengthIndex(one, other))).toEqual([]);
      }),
    );
  });
});
