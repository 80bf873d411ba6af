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

  test("of values that are not positive is refused by their names", () => {
    expect(normalisedHop(0, -1)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "hop distance", value: 0 } },
        { code: "notPositive", facts: { what: "reference length", value: -1 } },
      ],
    });
    expect(normalisedHop(1, Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(normalisedHop(one, other))).toEqual([]);
      }),
    );
  });
});
