import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { loadVelocityProfile } from "../../../src/engine/strength/loadVelocityProfile";
import { minimumVelocityThresholds } from "../../../src/engine/strength/minimumVelocityThresholds";
import { expected, expectRelative } from "../../reference/reference";
import { cell, notFinitePaths } from "../measurements";

const loads = [40, 60, 80, 100];
const velocities = [1.05, 0.83, 0.6, 0.41];
const codesOf = (x: readonly number[], y: readonly number[], minimumVelocityThreshold = 0.17) =>
  unwrap(loadVelocityProfile(x, y, { minimumVelocityThreshold })).cautions.map(({ code }) => code);

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
    expect(codesOf([40, 60, 80, 100], [1.05, 0.78, 0.75, 0.41])).toContain("scattered");
    expect(codesOf([20, 30, 40, 50], [1.3, 1.2, 1.1, 1.0])).toContain("extrapolated");
    expect(codesOf([40, 60, 80], [1.05, 0.83, 0.63])).toContain("fewDegreesOfFreedom");
    expect(codesOf(loads, velocities, 0.5)).toEqual(["belowLifted"]);
  });

  test("gives no limits by Fieller when the slope could be nothing", () => {
    const profile = unwrap(loadVelocityProfile([40, 60, 80], [1.05, 0.8, 0.65], { minimumVelocityThreshold: 0.17 }));
    expect(profile.fieller).toBeNull();
    expect(profile.cautions.map(({ code }) => code)).toContain("slopeTooUncertain");
  });

  test.each([
    ["two loads", [40, 60], [1.05, 0.83], "tooFew"],
    ["one load three times", [60, 60, 60], [0.8, 0.9, 0.7], "tooFew"],
    ["velocity that rises", [40, 60, 80], [0.4, 0.6, 0.9], "velocityDoesNotFall"],
    ["no line at all", [40, 60, 80, 100], [1, 0.4, 1, 0.4], "outOfRange"],
    ["a negative velocity", [40, 60, 80], [1, -0.8, 0.6], "notPositive"],
    ["unequal lists", [40, 60, 80], [1, 0.8], "unequalLengths"],
  ])("%s is refused", (_, x, y, code) => {
    expect(loadVelocityProfile(x, y, { minimumVelocityThreshold: 0.17 })).toMatchObject({
      ok: false,
      reasons: [{ code }],
    });
  });

  test("a threshold above the velocity without load is refused, and a confidence in percent", () => {
    expect(loadVelocityProfile(loads, velocities, { minimumVelocityThreshold: 1.5 }).ok).toBe(false);
    expect(loadVelocityProfile(loads, velocities, { minimumVelocityThreshold: 0.17, confidence: 95 }).ok).toBe(false);
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
    expect(new Set(exercises).size).toBe(exercises.length);
    expect(minimumVelocityThresholds.find(({ exercise }) => exercise === "bench press")?.metresPerSecond).toBe(0.17);
    expect(minimumVelocityThresholds.find(({ exercise }) => exercise === "back squat")?.metresPerSecond).toBe(0.3);
  });
});
