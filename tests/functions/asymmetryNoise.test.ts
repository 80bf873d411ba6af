import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import { sideDifference } from "../../src/functions/asymmetry";
import { asymmetryLimits, sideAgreement } from "../../src/functions/asymmetryNoise";
import { expected, expectRelative, labels } from "../reference/reference";
import { across, down, expectError, failing } from "./cells";

describe("ASYMMETRY.LIMITS", () => {
  const left = [178, 182, 180];
  const right = [196, 204, 200];

  // Source: R 4.2.2 t.test(log(right), log(left), var.equal = TRUE): ratio 1.111008666, log limits 0.06858880984700597 and
  // 0.14194781106211132; turned into percent of the larger side by hand, 100 (1 - exp(-limit)).
  it("from an athlete's own trials agrees with R", () => {
    const [own] = asymmetryLimits([left], [right], 0.95, "athlete");
    expect(own![0]).toBeCloseTo(100 * (1 - 1 / 1.111008666), 6);
    expect(own![1]).toBeCloseTo(-100 * Math.expm1(-0.06858880984700597), 8);
    expect(own![2]).toBeCloseTo(-100 * Math.expm1(-0.14194781106211132), 8);
  });

  it("uses the group's scatter where asked, and one bad row leaves the others good", () => {
    const answers = asymmetryLimits(
      [left, [null, null, null], [150, "DNS", null], [160, 0, 165]],
      [right, [null, "", 0], [null, null, null], [161, 170, 162]],
      undefined,
      "group",
    );
    expect(answers[0]!.every((value) => value > 0)).toBe(true);
    expect(answers[1]).toEqual(["", "", ""]);
    expect(answers[2]).toEqual(new Array(3).fill(failing("#N/A", /right trials/)));
    expect(answers[3]![1]).toBeLessThan(answers[3]![0]);
  });

  it("refuses ranges of different height, text and an unknown source of noise", () => {
    expectError(() => asymmetryLimits([left, left], [right]), "#VALUE!", /2 rows, the right cells 1/);
    expectError(() => asymmetryLimits([left], [[200, "2 m", 199]]), "#VALUE!", /2 m/);
    expectError(() => asymmetryLimits([left], [right], 0.95, "squad"), "#VALUE!", /Use steadied, group or athlete/);
  });
});

describe("SIDEDIFFERENCE", () => {
  // Source: R 4.2.2 arithmetic, log and atan2; 180 and 200 cm.
  it.each([
    [undefined, "10.0000"],
    ["bilateralLegAsymmetry", "11.1111"],
    ["symmetry index", "10.5263"],
    ["percentOfTotal", "5.2632"],
    ["symmetryAngle", "3.3475"],
    ["limbSymmetryIndex", "111.1111"],
    ["logRatio", "10.5361"],
  ])("by %s is %s", (formula, value) => {
    expect(sideDifference(across(180), across(200), formula)[0]![0].toFixed(4)).toBe(value);
  });

  it("answers each row for itself", () => {
    expect(sideDifference(down([200, null, 200, -1, "2 m"]), down([180, 0, "inj", 180, 180]))).toEqual([
      [-10],
      [""],
      [failing("#N/A", /right score is missing/)],
      [failing("#N/A", /above zero/)],
      [failing("#VALUE!", /2 m/)],
    ]);
    expectError(
      () => sideDifference(across(1), across(2), "ratio"),
      "#VALUE!",
      /Use percentDifference, .* or logRatio/,
    );
  });
});

describe("SIDEAGREEMENT", () => {
  const sizes: Record<string, number> = { L: -4, R: 7, E: 0 };
  const session = (name: string) => down(labels("direction", name).map((side) => sizes[side]));

  // Source: psych::cohen.kappa (R 4.2.2, psych 2.2.9); words of Landis & Koch 1977 (from memory).
  it("agrees with R", () => {
    const reference = expected("direction");
    const [kappa, low, high, word] = sideAgreement(session("session1"), session("session2"))[0]!;
    expectRelative(kappa, reference.psych_kappa, 1e-9);
    expectRelative(low, reference.psych_ci[0], 1e-8);
    expectRelative(high, reference.psych_ci[2], 1e-8);
    expect(word).toBe("moderate");
  });

  it("leaves out gaps, and says why it cannot answer", () => {
    expect(sideAgreement([...session("session1"), ["-"], [3]], [...session("session2"), [3], [null]])).toEqual(
      sideAgreement(session("session1"), session("session2")),
    );
    expectError(() => sideAgreement(across(3, 4), across(5, 6)), "#N/A", /same side larger both times/);
    expectError(() => sideAgreement(across(3, 4), across(5)), "#VALUE!", /2 cells with first differences and 1/);
    expectError(() => sideAgreement(across(3), across(5)), "#N/A", /At least 2 athletes/);
  });
});
