import fc from "fast-check";
import { intermittentFitnessTest } from "../../../src/engine/endurance/intermittentFitnessTest";
import { intermittentRecoveryTest } from "../../../src/engine/endurance/intermittentRecoveryTest";
import { shuttleRun } from "../../../src/engine/endurance/shuttleRun";
import { shuttleRunOfAdults } from "../../../src/engine/endurance/shuttleRunOfAdults";
import { twoMinuteShuttleRun } from "../../../src/engine/endurance/twoMinuteShuttleRun";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("maximal oxygen uptake from field tests", () => {
  // Source: R 4.2.2 arithmetic on the equations named in each method.
  test.each([
    ["intermittent recovery, level 1, 1200 m", intermittentRecoveryTest(1200, { level: 1 }), 46.48],
    ["intermittent recovery, level 2, 600 m", intermittentRecoveryTest(600, { level: 2 }), 53.46],
    ["shuttle run, 12.5 km/h, 18 years", shuttleRun(12.5, { age: 18 }), 47.596],
    ["shuttle run, 11 km/h, 14 years", shuttleRun(11, { age: 14 }), 44.8254],
    ["two-minute shuttle run, 12.5 km/h", twoMinuteShuttleRun(12.5), 53.7545],
    ["intermittent fitness, man", intermittentFitnessTest(19.5, { sex: "male", age: 22, bodyMass: 75 }), 52.3949],
    ["intermittent fitness, woman", intermittentFitnessTest(17, { sex: "female", age: 20, bodyMass: 62 }), 44.4006],
    // By hand: 2.75 x 10 + 28.8 and 2.85 x 10 + 25.1.
    ["shuttle run of adults, man, half-stage 10", shuttleRunOfAdults(10, { sex: "male" }), 56.3],
    ["shuttle run of adults, woman, half-stage 10", shuttleRunOfAdults(10, { sex: "female" }), 53.6],
  ])("%s", (_, result, oxygenUptake) => {
    expectRelative(unwrap(result).oxygenUptake, oxygenUptake, 1e-12);
    expect(unwrap(result).cautions).toMatchObject([{ code: "groupEstimate" }]);
  });

  // Source: the line for adults printed as 6.0 S - 27.4 (from memory); age 30 in the equation would give 31.66.
  test("adults count as 18 in the shuttle run, whatever their age", () => {
    for (const age of [18, 19, 30, 55]) {
      expect(Math.abs(unwrap(shuttleRun(12.5, { age })).oxygenUptake - (6 * 12.5 - 27.4))).toBeLessThan(0.05);
    }
  });

  test("a distance that is no whole number of shuttles is given with a caution", () => {
    expect(unwrap(intermittentRecoveryTest(1210, { level: 1 })).cautions.map(({ code }) => code)).toContain(
      "notWholeShuttles",
    );
  });

  test("what no run reaches is refused", () => {
    expect(intermittentRecoveryTest(0, { level: 1 }).ok).toBe(false);
    expect(shuttleRun(125, { age: 18 }).ok).toBe(false);
    expect(shuttleRun(12.5, { age: 5 }).ok).toBe(false);
    expect(shuttleRunOfAdults(0, { sex: "male" }).ok).toBe(false);
    expect(twoMinuteShuttleRun(Number.NaN).ok).toBe(false);
    expect(intermittentFitnessTest(19.5, { sex: "male", age: 22, bodyMass: 0 }).ok).toBe(false);
  });

  test("faster is fitter, never NaN", () => {
    const slow = fc.double({ min: 8, max: 19, noNaN: true });
    fc.assert(
      fc.property(slow, fc.double({ min: 8, max: 60, noNaN: true }), (speed, age) => {
        const [one, other] = [shuttleRun(speed, { age }), shuttleRun(speed + 0.5, { age })];
        expect(unwrap(other).oxygenUptake).toBeGreaterThan(unwrap(one).oxygenUptake);
      }),
    );
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (speed, age, bodyMass) => {
        expect(notFinitePaths(shuttleRun(speed, { age }))).toEqual([]);
        expect(notFinitePaths(shuttleRunOfAdults(speed, { sex: "female" }))).toEqual([]);
        expect(notFinitePaths(twoMinuteShuttleRun(speed))).toEqual([]);
        expect(notFinitePaths(intermittentRecoveryTest(speed, { level: 2 }))).toEqual([]);
        expect(notFinitePaths(intermittentFitnessTest(speed, { sex: "female", age, bodyMass }))).toEqual([]);
      }),
    );
  });
});
