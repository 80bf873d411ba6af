import fc from "fast-check";
import { heightFromTakeoffVelocity } from "../../../src/engine/jumps/heightFromTakeoffVelocity";
import { takeoffVelocity } from "../../../src/engine/jumps/takeoffVelocity";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("take-off velocity", () => {
  // Source: R 4.2.2 arithmetic.
  test("of 0.371559633 m", () => {
    expectRelative(unwrap(takeoffVelocity(0.371559633)), 2.7, 1e-8);
  });

  test("leads back to the height, with either gravity", () => {
    const aGravity = fc.constantFrom(9.81 as const, 9.80665 as const);
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 1.5, noNaN: true }), aGravity, (height, gravity) => {
        const velocity = unwrap(takeoffVelocity(height, { gravity }));
        expectRelative(unwrap(heightFromTakeoffVelocity(velocity, { gravity })), height, 1e-12);
      }),
    );
  });

  test("cannot be had from zero, negative values or nonsense", () => {
    for (const value of [0, -0.3]) {
      expect(takeoffVelocity(value)).toMatchObject({
        ok: false,
        reasons: [{ code: "notPositive", facts: { what: "jump height", value } }],
      });
    }
    expect(takeoffVelocity(Number.NaN).ok).toBe(false);
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), (metres) => {
        expect(notFinitePaths(takeoffVelocity(metres))).toEqual([]);
      }),
    );
  });
});
