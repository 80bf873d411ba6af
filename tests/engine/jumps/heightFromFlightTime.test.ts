import fc from "fast-check";
import { heightFromFlightTime } from "../../../src/engine/jumps/heightFromFlightTime";
import { takeoffVelocity } from "../../../src/engine/jumps/takeoffVelocity";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("jump height from flight time", () => {
  // Source: R 4.2.2 arithmetic.
  test("of 0.55 s, with either gravity", () => {
    expectRelative(unwrap(heightFromFlightTime(0.55)), 0.370940625, 1e-12);
    expectRelative(unwrap(heightFromFlightTime(0.55, { gravity: 9.80665 })), 0.370813953, 1e-8);
  });

  test("up and down take the same time: flight lasts twice take-off velocity / g", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 1.5, noNaN: true }), (height) => {
        expectRelative(unwrap(heightFromFlightTime((2 * unwrap(takeoffVelocity(height))) / 9.81)), height, 1e-12);
      }),
    );
  });

  test("cannot be had from zero, negative values or nonsense", () => {
    expect(heightFromFlightTime(550)).toMatchObject({
      ok: false,
      reasons: [{ code: "outOfRange", facts: { what: "flight time in seconds", low: 0, high: 2, value: 550 } }],
    });
    expect(heightFromFlightTime(0)).toMatchObject({ ok: false, reasons: [{ code: "notPositive" }] });
    expect(heightFromFlightTime(Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), (seconds) => {
        expect(notFinitePaths(heightFromFlightTime(seconds))).toEqual([]);
      }),
    );
  });
});
