import fc from "fast-check";
import { normalisedHop } from "../../../src/engine/jumps/normalisedHop";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("a hop by leg length", () => {
  // Source: by hand.
  test("of 171 cm and 90 cm is 190 %", () => {
    expectRelative(unwrap(normalisedHop(171, 90)), 190, 1e-12);
  });

  test.each([
    [0, 1],
    [1, 0],
    [-1, 1],
    [1, Number.NaN],
  ])("of %d and %d is refused", (one, other) => {
    expect(normalisedHop(one, other).ok).toBe(false);
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(normalisedHop(one, other))).toEqual([]);
      }),
    );
  });
});
