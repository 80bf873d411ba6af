import fc from "fast-check";
import { dynamicStrengthIndex } from "../../../src/engine/jumps/dynamicStrengthIndex";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("the dynamic strength index", () => {
  // Source: by hand.
  test("of 1800 and 2400 N", () => {
    expectRelative(unwrap(dynamicStrengthIndex(1800, 2400)).index, 0.75, 1e-12);
  });

  test("above one is given with a caution", () => {
    expect(unwrap(dynamicStrengthIndex(2500, 2000)).cautions).toEqual([
      {
        code: "pullBelowJump",
        message:
          "The jump gave more force than the isometric pull: the pull was probably not maximal, or body weight is counted in one only.",
        facts: { index: 1.25 },
      },
    ]);
    expect(unwrap(dynamicStrengthIndex(2400, 2400)).cautions).toEqual([]);
  });

  test("of values that are not positive is refused by their names", () => {
    expect(dynamicStrengthIndex(0, -1)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "peak force of the jump", value: 0 } },
        { code: "notPositive", facts: { what: "peak force of the pull", value: -1 } },
      ],
    });
    expect(dynamicStrengthIndex(1, Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(dynamicStrengthIndex(one, other))).toEqual([]);
      }),
    );
  });
});
