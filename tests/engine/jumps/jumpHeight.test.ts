import fc from "fast-check";
import { heightFromFlightTime } from "../../../src/engine/jumps/heightFromFlightTime";
import { heightFromImpulse } from "../../../src/engine/jumps/heightFromImpulse";
import { heightFromTakeoffVelocity } from "../../../src/engine/jumps/heightFromTakeoffVelocity";
import { takeoffVelocity } from "../../../src/engine/jumps/takeoffVelocity";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("jump height", () => {
  // Source: R 4.2.2 arithmetic on g t^2 / 8, v^2 / (2 g) and impulse / mass.
  test("from flight time, take-off velocity and impulse", () => {
    expectRelative(unwrap(heightFromFlightTime(0.55)), 0.370940625, 1e-12);
    expectRelative(unwrap(heightFromFlightTime(0.55, { gravity: 9.80665 })), 0.370813953, 1e-8);
    expectRelative(unwrap(heightFromTakeoffVelocity(2.7)), 0.371559633, 1e-8);
    expectRelative(unwrap(heightFromImpulse(200, 75)), 0.362441953, 1e-8);
  });

  const aHeight = fc.double({ min: 0.02, max: 1.5, noNaN: true });
  const aGravity = fc.constantFrom(9.81 as const, 9.80665 as const);

  test("take-off velocity, impulse and flight time of a height lead back to it", () => {
    fc.assert(
      fc.property(aHeight, aGravity, fc.double({ min: 20, max: 150, noNaN: true }), (height, gravity, mass) => {
        const velocity = unwrap(takeoffVelocity(height, { gravity }));
        expectRelative(unwrap(heightFromTakeoffVelocity(velocity, { gravity })), height, 1e-12);
        expectRelative(unwrap(heightFromImpulse(velocity * mass, mass, { gravity })), height, 1e-12);
        // Up and down take the same time: flight lasts twice velocity / g.
        expectRelative(unwrap(heightFromFlightTime((2 * velocity) / gravity, { gravity })), height, 1e-12);
      }),
    );
  });

  test("milliseconds, zero and nonsense are refused", () => {
    expect(heightFromFlightTime(550)).toMatchObject({ ok: false, reasons: [{ code: "outOfRange" }] });
    expect(heightFromFlightTime(0)).toMatchObject({ ok: false, reasons: [{ code: "notPositive" }] });
    expect(heightFromFlightTime(Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
    expect(heightFromImpulse(-200, 0)).toMatchObject({ ok: false, reasons: [{}, {}] });
    expect(takeoffVelocity(-0.3).ok).toBe(false);
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(heightFromFlightTime(one))).toEqual([]);
        expect(notFinitePaths(heightFromTakeoffVelocity(one))).toEqual([]);
        expect(notFinitePaths(heightFromImpulse(one, other))).toEqual([]);
        expect(notFinitePaths(takeoffVelocity(one))).toEqual([]);
      }),
    );
  });
});
