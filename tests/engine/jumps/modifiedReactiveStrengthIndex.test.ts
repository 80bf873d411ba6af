import fc from "fast-check";
import { modifiedReactiveStrengthIndex } from "../../../src/engine/jumps/modifiedReactiveStrengthIndex";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("the modified reactive strength index", () => {
  // Source: by hand.
  test("of 0.36 m and 0.8 s", () => {
    expectRelative(unwrap(modifiedReactiveStrengthIndex(0.36, 0.8)), 0.45, 1e-12);
  });

  test("of values that are not positive is refused by their names", () => {
    expect(modifiedReactiveStrengthIndex(0, -1)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "jump height", value: 0 } },
        { code: "notPositive", facts: { what: "time to take-off", value: -1 } },
      ],
    });
    expect(modifiedReactiveStrengthIndex(1, Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(modifiedReactiveStrengthIndex(one, other))).toEqual([]);
      }),
    );
  });
});
