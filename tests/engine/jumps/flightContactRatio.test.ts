import fc from "fast-check";
import { flightContactRatio } from "../../../src/engine/jumps/flightContactRatio";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("the ratio of flight to contact", () => {
  // Source: R 4.2.2 arithmetic; the other form gives 1.5328125 for the same jump.
  test("of 0.5 s and 0.2 s", () => {
    expectRelative(unwrap(flightContactRatio(0.5, 0.2)), 2.5, 1e-12);
  });

  test.each([
    [0, 1],
    [1, 0],
    [-1, 1],
    [1, Number.NaN],
  ])("of %d and %d is refused", (one, other) => {
    expect(flightContactRatio(one, other).ok).toBe(false);
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(flightContactRatio(one, other))).toEqual([]);
      }),
    );
  });
});
