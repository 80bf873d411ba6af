import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { loadVelocityProfile } from "../../../src/engine/strength/loadVelocityProfile";
import { minimumVelocityThresholds } from "../../../src/engine/strength/minimumVelocityThresholds";
import { expected, expectRelative } from "../../reference/reference";
import { cell, notFinitePaths } from "../measurements";

const loads = [40, 60, 80, 100];
const velocities = [1.05, 0.83, 0.6, 0.41];
const cautionsOf = (x: readonly number[], y: readonly number[], minimumVelocityThreshold = 0.17) =>
  unwrap(loadVelocityProfile(x, y, { minimumVelocityThreshold })).cautions;

describe("the maximum from a load-velocity profile", () => {
  // Source: R 4.2.2 lm(v ~ load), vcov for the delta method, the quadratic of Fieller's theorem.
  test.each([
    [0.17, "mvt_0.17"],
    [0.3, "mvt_0.30"],
  ])("at a threshold of %d m/s agrees with R", (minimumVelocityThreshold, key) => {
    const reference = expected("load_velocity")[key];
    const profile = unwrap(loadVelocityProfile(loads, velocities, { minimumVelocityThreshold }));
    expectRelative(profile.maximum.value, reference.e1RM, 1e-10);
    expectRelative(profile.standardError, reference.se_delta, 1e-10);
    expectRelative(profile.maximum.low, reference.ci_delta[0], 1e-10);
    expectRelative(profile.maximum.high, reference.ci_delta[1], 1e-10);
    expectRelative(profile.fieller!.low, reference.ci_fieller_mean_line[0], 1e-10);
    expectRelative(profile.fieller!.high, reference.ci_fieller_mean_line[1], 1e-10);
    expectRelative(profile.velocityAtZeroLoad, reference.V0, 1e-12);
    expectRelative(profile.loadAtZeroVelocity, reference.L0, 1e-11);
    expectRelative(profile.rSquared, reference.r_squared, 1e-11);
    expect(profile.cautions).toEqual([]);
  });

  test("leaves out pairs with a missing side", () => {
    const complete = loadVelocityProfile(loads, velocities, { minimumVelocityThreshold: 0.17 });
    const gaps = loadVelocityProfile([40, null, 60, 80, 100, 110], [1.05, 0.9, 0.83, 0.6, 0.41, null], {
      minimumVelocityThreshold: 0.17,
    });
    expect(gaps).toEqual(complete);
  });

  test("warns of scatter, extrapolation, few lifts and an estimate below what was lifted", () => {
    // Source: numpy 2 corrcoef, polyfit; by hand for the lines without residuals.
    expect(cautionsOf([40, 60, 80, 100], [1.05, 0.78, 0.75, 0.41])).toContainEqual({
      code: "scattered",
      message: "The lifts scatter around the line (r squared 0.921, at least 0.95 is wanted): a rough estimate.",
      facts: { rSquared: expect.closeTo(0.9208136578, 9) },
    });
    expect(cautionsOf([20, 30, 40, 50], [1.3, 1.2, 1.1, 1.0])).toMatchObject([
      { code: "extrapolated", facts: { what: "estimated maximum", estimate: expect.closeTo(133, 9), measuredTo: 50 } },
    ]);
    expect(cautionsOf([40, 60, 80], [1.05, 0.83, 0.63])).toContainEqual(
      expect.objectContaining({ code: "fewDegreesOfFreedom", facts: { degreesOfFreedom: 1 } }),
    );
    expect(cautionsOf(loads, velocities, 0.5)).toEqual([
      {
        code: "belowLifted",
        message:
          "The estimated maximum is below the heaviest load already lifted: the threshold or an effort was wrong.",
        facts: { estimate: expect.closeTo(90.697674, 6), heaviest: 100 },
      },
    ]);
  });

  // Source: by hand: v = 2 - load / 64, all without rounding.
  test("a maximum a quarter beyond the heaviest load is no extrapolation, one at it not below it", () => {
    const codesAt = (threshold: number) => cautionsOf([32, 64, 96], [1.5, 1, 0.5], threshold).map(({ code }) => code);
    expect(codesAt(0.125)).toEqual(["fewDegreesOfFreedom"]);
    expect(codesAt(0.124)).toEqual(["fewDegreesOfFreedom", "extrapolated"]);
    expect(codesAt(0.5)).toEqual(["fewDegreesOfFreedom"]);
    expect(codesAt(0.501)).toEqual(["fewDegreesOfFreedom", "belowLifted"]);
  });

  test("gives no limits by Fieller when the slope could be nothing", () => {
    const profile = unwrap(loadVelocityProfile([40, 60, 80], [1.05, 0.8, 0.65], { minimumVelocityThreshold: 0.17 }));
    expect(profile.fieller).toBeNull();
    expect(profile.cautions).toContainEqual({
      code: "slopeTooUncertain",
      message: "There are too few or too scattered lifts for finite limits of the maximum. Add loads.",
      facts: {},
    });
  });

  test.each([
    ["two loads", [40, 60], [1.05, 0.83], "tooFew", { what: "different loads with a velocity", needed: 3, got: 2 }],
    ["one load three times", [60, 60, 60], [0.8, 0.9, 0.7], "tooFew", { needed: 3, got: 1 }],
    ["velocity that stays", [40, 60, 80], [0.5, 0.5, 0.5], "velocityDoesNotFall", { slope: 0 }],
    ["no line at all", [40, 60, 80, 100], [1, 0.4, 1, 0.4], "outOfRange", { what: "r squared of the line", low: 0.9 }],
    ["a negative velocity", [40, 60, 80], [1, -0.8, 0.6], "notPositive", { what: "velocity", value: -0.8 }],
    ["no load", [0, 40, 60, 80], [1.2, 1, 0.8, 0.6], "notPositive", { what: "load", value: 0 }],
    [
      "unequal lists",
      [40, 60, 80],
      [1, 0.8],
      "unequalLengths",
      { first: "loads", second: "velocities", firstCount: 3, secondCount: 2 },
    ],
  ])("%s is refused", (_, x, y, code, facts) => {
    expect(loadVelocityProfile(x, y, { minimumVelocityThreshold: 0.17 })).toMatchObject({
      ok: false,
      reasons: [{ code, facts }],
    });
  });

  // Source: numpy 2 polyfit.
  test("velocity that rises is told with its slope", () => {
    expect(loadVelocityProfile([40, 60, 80], [0.4, 0.6, 0.9], { minimumVelocityThreshold: 0.17 })).toEqual({
      ok: false,
      reasons: [
        {
          code: "velocityDoesNotFall",
          message:
            "Velocity must fall as the load rises; in these lifts it does not. Check that loads and velocities are paired.",
          facts: { slope: expect.closeTo(0.0125, 12) },
        },
      ],
    });
  });

  test("a threshold at or above the velocity without load is refused", () => {
    for (const [minimumVelocityThreshold, value] of [
      [1.5, -2.3255814],
      [unwrap(loadVelocityProfile(loads, velocities, { minimumVelocityThreshold: 0.17 })).velocityAtZeroLoad, 0],
    ] as const) {
      expect(loadVelocityProfile(loads, velocities, { minimumVelocityThreshold })).toMatchObject({
        ok: false,
        reasons: [{ code: "notPositive", facts: { what: "estimated maximum", value: expect.closeTo(value, 6) } }],
      });
    }
  });

  test("no threshold and a confidence in percent are refused at once", () => {
    expect(loadVelocityProfile(loads, velocities, { minimumVelocityThreshold: 0, confidence: 95 })).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "minimum velocity threshold", value: 0 } },
        { code: "outOfRange", facts: { what: "confidence" } },
      ],
    });
  });

  test("scales with the unit of the loads", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 10, noNaN: true }), (factor) => {
        const scaled = unwrap(
          loadVelocityProfile(
            loads.map((load) => load * factor),
            velocities,
            { minimumVelocityThreshold: 0.17 },
          ),
        );
        expectRelative(scaled.maximum.value, 121.395348837 * factor, 1e-10);
        expectRelative(scaled.maximum.low, 114.759459465 * factor, 1e-9);
      }),
    );
  });

  test("never gives NaN or Infinity", () => {
    const pair = fc.tuple(cell(-10, 300), cell(-0.5, 2));
    fc.assert(
      fc.property(fc.array(pair, { maxLength: 8 }), fc.double({ min: 0.05, max: 1 }), (pairs, threshold) => {
        const result = loadVelocityProfile(
          pairs.map(([load]) => load),
          pairs.map(([, velocity]) => velocity),
          { minimumVelocityThreshold: threshold },
        );
        expect(notFinitePaths(result)).toEqual([]);
      }),
    );
  });

  // Source: beside each threshold in the list.
  test("the list of thresholds names each exercise once, with a source", () => {
    const exercises = minimumVelocityThresholds.map(({ exercise }) => exercise);
    expect(exercises).toEqual(["bench press", "back squat", "deadlift", "prone bench pull"]);
    for (const { source } of minimumVelocityThresholds) expect(source).toMatch(/from memory|abstract read/);
    expect(minimumVelocityThresholds.find(({ exercise }) => exercise === "bench press")?.metresPerSecond).toBe(0.17);
    expect(minimumVelocityThresholds.find(({ exercise }) => exercise === "back squat")?.metresPerSecond).toBe(0.3);
  });
});
