import fc from "fast-check";
import { reactiveStrengthIndex } from "../../../src/engine/jumps/reactiveStrengthIndex";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("the reactive strength index", () => {
  // Source: R 4.2.2 arithmetic: 0.5 s of flight are 0.3065625 m, contact 0.2 s.
  test("of 0.3065625 m and 0.2 s", () => {
    expectRelative(unwrap(reactiveStrengthIndex(0.3065625, 0.2)), 1.5328125, 1e-12);
  });

  test("of values that are not positive is refused by their names", () => {
    expect(reactiveStrengthIndex(0, -1)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "jump height", value: 0 } },
        { code: "notPositive", facts: { what: "contact time", value: -1 } },
      ],
    });
    expect(reactiveStrengthIndex(1, Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(reactiveStrengthIndex(one, other))).toEqual([]);
      }),
    );
  });
});
