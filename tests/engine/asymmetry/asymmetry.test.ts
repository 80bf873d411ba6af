import fc from "fast-check";
import { type AsymmetryFormula, asymmetry, asymmetryFormulas } from "../../../src/engine/asymmetry/asymmetry";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { measurement } from "../measurements";

const formulas = Object.keys(asymmetryFormulas) as AsymmetryFormula[];

describe("asymmetry by the published formulas", () => {
  // Source of the values: R 4.2.2 arithmetic, log and atan2.
  test("the same legs, seven numbers", () => {
    const values = formulas.map((formula) => unwrap(asymmetry(180, 200, formula)).toFixed(4));
    expect(Object.fromEntries(formulas.map((formula, index) => [formula, values[index]]))).toEqual({
      percentDifference: "10.0000",
      bilateralLegAsymmetry: "11.1111",
      symmetryIndex: "10.5263",
      percentOfTotal: "5.2632",
      symmetryAngle: "3.3475",
      limbSymmetryIndex: "111.1111",
      logRatio: "10.5361",
    });
  });

  test("equal sides give what the formula says equal sides give", () => {
    for (const formula of formulas) {
      expect(unwrap(asymmetry(187.5, 187.5, formula))).toBeCloseTo(asymmetryFormulas[formula].equalSides, 12);
    }
  });

  test("missing, zero and negative sides are refused with every reason", () => {
    for (const formula of formulas) {
      expect(asymmetry(null, 0, formula)).toMatchObject({
        ok: false,
        reasons: [
          { code: "missing", facts: { what: "the left value" } },
          { code: "notPositive", facts: { what: "the right value", value: 0 } },
        ],
      });
      expect(asymmetry(-1, null, formula)).toMatchObject({
        ok: false,
        reasons: [
          { code: "notPositive", facts: { what: "the left value", value: -1 } },
          { code: "missing", facts: { what: "the right value" } },
        ],
      });
      expect(asymmetry(5, 0, formula).ok).toBe(false);
    }
  });

  test("every formula has a label of its own and names its source", () => {
    const descriptions = Object.values(asymmetryFormulas);
    expect(new Set(descriptions.map(({ label }) => label)).size).toBe(formulas.length);
    for (const { label, source } of descriptions) {
      expect(label).toMatch(/^[A-Z]/);
      expect(source).toMatch(/^[A-Z].* \d{4}, .*:\d+-\d+$/);
    }
  });

  const side = measurement(0.001, 1e6).filter((value) => value > 0);

  test("swapping the sides turns the sign, and turns the limb symmetry index upside down", () => {
    fc.assert(
      fc.property(side, side, (left, right) => {
        for (const formula of formulas) {
          const one = unwrap(asymmetry(left, right, formula));
          const other = unwrap(asymmetry(right, left, formula));
          if (formula === "limbSymmetryIndex") expectRelative(one * other, 1e4, 1e-12);
          else expect(one + other).toBeCloseTo(0, 9);
        }
      }),
    );
  });

  test("the unit does not matter", () => {
    fc.assert(
      fc.property(side, side, measurement(0.01, 100), (left, right, factor) => {
        for (const formula of formulas) {
          const one = unwrap(asymmetry(left, right, formula));
          expectRelative(1 + unwrap(asymmetry(left * factor, right * factor, formula)), 1 + one, 1e-6);
        }
      }),
    );
  });
});
