import fc from "fast-check";
import { heightFromTakeoffVelocity } from "../../../src/engine/jumps/heightFromTakeoffVelocity";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("jump height from take-off velocity", () => {
  // Source: R 4.2.2 arithmetic.
  test("of 2.7 m/s", () => {
    expectRelative(unwrap(heightFromTakeoffVelocity(2.7)), 0.371559633, 1e-8);
  });

  test("cannot be had from zero, negative values or nonsense", () => {
    for (const value of [0, -2.7]) {
      expect(heightFromTakeoffVelocity(value)).toMatchObject({
        ok: false,
        reasons: [{ code: "notPositive", facts: { what: "take-off velocity", value } }],
      });
    }
    expect(heightFromTakeoffVelocity(Number.NaN).ok).toBe(false);
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), (velocity) => {
        expect(notFinitePaths(heightFromTakeoffVelocity(velocity))).toEqual([]);
      }),
    );
  });
});
