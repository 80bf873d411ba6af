import fc from "fast-check";
import { heightFromImpulse } from "../../../src/engine/jumps/heightFromImpulse";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("jump height from impulse", () => {
  // Source: R 4.2.2 arithmetic.
  test("of 200 N s at 75 kg, with either gravity", () => {
    expectRelative(unwrap(heightFromImpulse(200, 75)), 0.362441953, 1e-8);
    expectRelative(unwrap(heightFromImpulse(200, 75, { gravity: 9.80665 })), (200 / 75) ** 2 / (2 * 9.80665), 1e-14);
  });

  test("twice the impulse on twice the mass is the same jump", () => {
    expect(unwrap(heightFromImpulse(400, 150))).toBe(unwrap(heightFromImpulse(200, 75)));
  });

  test("cannot be had from zero, negative values or nonsense", () => {
    expect(heightFromImpulse(-200, 0)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "net impulse", value: -200 } },
        { code: "notPositive", facts: { what: "body mass", value: 0 } },
      ],
    });
    expect(heightFromImpulse(200, Number.NaN).ok).toBe(false);
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (impulse, mass) => {
        expect(notFinitePaths(heightFromImpulse(impulse, mass))).toEqual([]);
      }),
    );
  });
});
