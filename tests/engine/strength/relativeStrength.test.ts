import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { relativeStrength } from "../../../src/engine/strength/relativeStrength";
import { notFinitePaths } from "../measurements";

describe("strength per body mass", () => {
  // Source: R 4.2.2 arithmetic.
  test("of 150 kg at 80 kg", () => {
    expect(unwrap(relativeStrength(150, 80))).toBe(1.875);
  });

  test("of values that are not positive is refused", () => {
    expect(relativeStrength(0, -80)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "strength", value: 0 } },
        { code: "notPositive", facts: { what: "body mass", value: -80 } },
      ],
    });
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (strength, mass) => {
        expect(notFinitePaths(relativeStrength(strength, mass))).toEqual([]);
      }),
    );
  });
});
