import fc from "fast-check";
import { type AsymmetryFormula, asymmetry, asymmetryFormulas } from "../../../src/engine/asymmetry/asymmetry";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, fullColumn } from "../../reference/reference";
import { measurement } from "../measurements";

const formulas = Object.keys(asymmetryFormulas) as AsymmetryFormula[];

describe("asymmetry by the published formulas", () => {
  // Source of the values: R 4.2.2 arithmetic and atan2.
  test.each([
    ["percentDifference", 10],
    ["bilateralLegAsymmetry", 11.1111111],
    ["symmetryIndex", 10.5263158],
    ["percentOfTotal", 5.2631579],
    ["symmetryAngle", 3.3475417],
    ["limbSymmetryIndex", 111.1111111],
    ["logRatio", 10.5360516],
  ] as const)("%s of left 180, right 200 is %d", (formula, value) => {
    expect(unwrap(asymmetry(180, 200, formula))).toBeCloseTo(value, 6);
  });

  test.each([
    ["percentDifference", -4.8780488],
    ["symmetryAngle", -1.591218],
    ["limbSymmetryIndex", 95.1219512],
  ] as const)("%s of left 2.05, right 1.95 is %d", (formula, value) => {
    expect(unwrap(asymmetry(2.05, 1.95, formula))).toBeCloseTo(value, 6);
  });

  // Data: MASS::shoes; values: R 4.2.2.
  test.each([
    ["percentDifference", "pct_max_ref"],
    ["bilateralLegAsymmetry", "pct_min_ref"],
    ["symmetryIndex", "SI_mean_ref"],
    ["percentOfTotal", "pct_total_ref"],
    ["symmetryAngle", "symmetry_angle_pct"],
    ["limbSymmetryIndex", "LSI_second_over_first"],
    ["logRatio", "ln_ratio_100"],
  ] as const)("%s of ten pairs of shoes", (formula, key) => {
    const left = fullColumn("shoes_pairs", "left_A");
    const right = fullColumn("shoes_pairs", "right_B");
    left.forEach((value, index) => {
      const reference = expected("shoes_pairs").asymmetry[key][String(index + 1)];
      expectRelative(unwrap(asymmetry(value, right[index]!, formula)), reference, 1e-10);
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
        reasons: [{ code: "missing" }, { code: "notPositive" }],
      });
      expect(asymmetry(-1, 5, formula)).toMatchObject({ ok: false, reasons: [{ code: "notPositive" }] });
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
