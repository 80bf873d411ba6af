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

  test("of values that are not positive is refused by their names", () => {
    expect(flightContactRatio(0, -1)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "flight time", value: 0 } },
        { code: "notPositive", facts: { what: "contact time", value: -1 } },
      ],
    });
    expect(flightContactRatio(1, Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(flightContactRatio(one, other))).toEqual([]);
      }),
    );
  });
});
