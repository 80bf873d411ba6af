import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { allometricStrength } from "../../../src/engine/strength/allometricStrength";
import { relativeStrength } from "../../../src/engine/strength/relativeStrength";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("strength for body size", () => {
  // Source: R 4.2.2 arithmetic, 150 kg at 80 kg.
  test("150 kg at 80 kg", () => {
    expect(unwrap(relativeStrength(150, 80))).toBe(1.875);
    expectRelative(unwrap(allometricStrength(150, 80)), 7.9619779, 1e-8);
    expectRelative(unwrap(allometricStrength(150, 80, { exponent: 2 / 3 })), 8.0791301, 1e-8);
  });

  test("an exponent of one is the plain ratio, of zero the strength itself", () => {
    expectRelative(unwrap(allometricStrength(150, 80, { exponent: 1 })), 1.875, 1e-15);
    expect(unwrap(allometricStrength(150, 80, { exponent: 0 }))).toBe(150);
  });

  test("geometrically similar athletes score the same: twice the length, four times the strength, eight times the mass", () => {
    const small = unwrap(allometricStrength(50, 20, { exponent: 2 / 3 }));
    expectRelative(unwrap(allometricStrength(200, 160, { exponent: 2 / 3 })), small, 1e-12);
  });

  test("values that are not positive and a wild exponent are refused", () => {
    expect(relativeStrength(0, 80).ok).toBe(false);
    expect(relativeStrength(150, -80).ok).toBe(false);
    expect(allometricStrength(150, 80, { exponent: 67 }).ok).toBe(false);
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (strength, mass, exponent) => {
        expect(notFinitePaths(relativeStrength(strength, mass))).toEqual([]);
        expect(notFinitePaths(allometricStrength(strength, mass, { exponent }))).toEqual([]);
      }),
    );
  });
});
