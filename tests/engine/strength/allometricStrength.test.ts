import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { allometricStrength } from "../../../src/engine/strength/allometricStrength";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("strength scaled for body size", () => {
  // Source: R 4.2.2 arithmetic.
  test("of 150 kg at 80 kg, with either exponent", () => {
    expectRelative(unwrap(allometricStrength(150, 80)), 7.9619779, 1e-8);
    expectRelative(unwrap(allometricStrength(150, 80, { exponent: 2 / 3 })), 8.0791301, 1e-8);
  });

  test("with an exponent of one is the plain ratio, of zero the strength itself", () => {
    expectRelative(unwrap(allometricStrength(150, 80, { exponent: 1 })), 1.875, 1e-15);
    expect(unwrap(allometricStrength(150, 80, { exponent: 0 }))).toBe(150);
  });

  test("is the same for similar athletes: twice the length, four times the strength, eight times the mass", () => {
    const small = unwrap(allometricStrength(50, 20, { exponent: 2 / 3 }));
    expectRelative(unwrap(allometricStrength(200, 160, { exponent: 2 / 3 })), small, 1e-12);
  });

  test("of values that are not positive, or with a wild exponent, is refused", () => {
    expect(allometricStrength(0, -80, { exponent: 67 })).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "strength", value: 0 } },
        { code: "notPositive", facts: { what: "body mass", value: -80 } },
        { code: "outOfRange", facts: { what: "exponent", low: 0, high: 1, value: 67 } },
      ],
    });
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (strength, mass, exponent) => {
        expect(notFinitePaths(allometricStrength(strength, mass, { exponent }))).toEqual([]);
      }),
    );
  });
});
