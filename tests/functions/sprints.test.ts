import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import { forceVelocity, sprintCurve } from "../../src/functions/sprintCurves";
import { changeOfDirection, electronicTime, splitVelocities } from "../../src/functions/sprints";
import { column, expected, expectRelative, labels } from "../reference/reference";
import { across, down, expectError, failing } from "./cells";

const athletes = ["A", "B", "C", "D"];
const owners = labels("sprint_splits", "athlete");
const ofAthlete = (athlete: string, name: string) =>
  column("sprint_splits", name).filter((_, index) => owners[index] === athlete);
const gates = [ofAthlete("A", "distance_m")];
const squad = (name: string) => athletes.map((athlete) => ofAthlete(athlete, name));

describe("SPLITVELOCITIES", () => {
  // Source: R 4.2.2 arithmetic: 10 m in 1.80 s and 20 m in 3.05 s are an interval of 1.25 s at 8 m/s.
  it("stand below their gates, a row for each athlete; a missing split joins two intervals", () => {
    const answers = splitVelocities(across(10, 20), [
      [1.8, 3.05],
      [null, 2.5],
      [null, 0],
    ]);
    expectRelative(answers[0]![0], 10 / 1.8, 1e-12);
    expectRelative(answers[0]![1], 8, 1e-12);
    expect(answers.slice(1)).toEqual([
      ["", 8],
      ["", ""],
    ]);
  });

  it("say what is wrong in the row where it is", () => {
    expect(
      splitVelocities(across(10, 20), [
        [3.05, 1.8],
        ["1.8 s", 3],
      ]),
    ).toEqual([new Array(2).fill(failing("#N/A", /must rise/)), new Array(2).fill(failing("#VALUE!", /1\.8 s/))]);
  });
});

describe("SPRINTCURVE", () => {
  // Source: R 4.2.2 nls(d ~ V * (t - tau * (1 - exp(-t / tau)))), times with noise; inverted to times with uniroot.
  it.each([
    [undefined, "distance_ls", 1e-7],
    ["time", "time_ls", 1e-5],
  ] as const)("residuals in %s agree with R for a squad in one call", (residuals, key, tolerance) => {
    const { fits } = expected("sprint_splits");
    sprintCurve(gates, squad("time_noisy_s"), residuals).forEach(([velocity, constant, acceleration], row) => {
      const reference = fits[athletes[row]!].noisy[key];
      expectRelative(velocity, reference.Vmax, tolerance);
      expectRelative(constant, reference.tau, tolerance);
      expectRelative(acceleration, reference.Vmax / reference.tau, 2 * tolerance);
    });
  });

  it("needs three splits, and leaves the other rows good", () => {
    const [good, short, empty] = sprintCurve(across(5, 10, 20, 30), [
      [1.38, 2.11, 3.34, 4.48],
      [1.38, 2.11, "DNF", null],
      [null, null, null, null],
    ]);
    expect(good!.every((value) => value > 0)).toBe(true);
    expect(short).toEqual(new Array(3).fill(failing("#N/A", /At least 3 splits/)));
    expect(empty).toEqual(["", "", ""]);
    expectError(() => sprintCurve(gates, gates, "speed"), "#VALUE!", /Use distance or time/);
  });
});

describe("FORCEVELOCITY", () => {
  // Source: R 4.2.2, closed form without air and lm(F ~ v) with air, of the curve V 9.2, tau 1.25 at 80 kg and 1.80 m; the curve is
  // fitted from exact splits rounded to a microsecond.
  it("agrees with R without and with air resistance", () => {
    const reference = expected("sprint_splits")["force_velocity_A_mass80_h1.80"];
    const times = [ofAthlete("A", "time_exact_s")];
    const [force, velocity, power] = forceVelocity(gates, times, across(80))[0]!;
    expectRelative(force, reference.no_air.F0_rel, 1e-5);
    expectRelative(velocity, reference.no_air.V0, 1e-5);
    expectRelative(power, reference.no_air.Pmax_rel, 1e-5);
    const air = reference.with_air_regression_1001pts_0_to_tend;
    const withAir = forceVelocity(gates, times, across(80), across(1.8))[0]!;
    expectRelative(withAir[0], air.F0_rel, 1e-5);
    expectRelative(withAir[1], air.V0, 1e-5);
    expectRelative(withAir[2], air.Pmax_rel, 1e-5);
    // The first moment from 0.3 s on is one grid step later on the fitted curve.
    expectRelative(withAir[3], 100 * air["RF_peak_t_ge_0.3"], 0.005);
    expectRelative(withAir[4], air.DRF_percent, 0.005);
  });

  it("answers each row for itself", () => {
    const times = squad("time_exact_s");
    const [good, noMass, noHeight, text] = forceVelocity(
      gates,
      times,
      down([80, null, 75, 70]),
      down([1.8, 1.7, 0, "1,75 m"]),
    );
    expect(good!.every((value) => Number.isFinite(value))).toBe(true);
    expect(noMass).toEqual(new Array(5).fill(failing("#N/A", /body mass is missing/)));
    expect(noHeight).toEqual(new Array(5).fill(failing("#N/A", /body height is missing/)));
    expect(text).toEqual(new Array(5).fill(failing("#VALUE!", /1,75 m/)));
    expect(forceVelocity(gates, times.slice(0, 1), across(80), across(180))[0]![0]).toEqual(
      failing("#N/A", /Stature in metres must be from 1 to 2.5/),
    );
  });
});

describe("CODDEFICIT", () => {
  // Source: R 4.2.2 arithmetic, 505 in 2.45 s, 10 m in 1.80 s and 20 m in 3.05 s.
  it("takes off the first 10 m, or the flying 10 m when 20 m times are given", () => {
    expectRelative(changeOfDirection(across(2.45), across(1.8))[0]![0], 0.65, 1e-12);
    expectRelative(changeOfDirection(across(2.45), across(1.8), across(3.05))[0]![0], 1.2, 1e-12);
  });

  it("answers each row for itself", () => {
    const [good, empty, gap, text] = changeOfDirection(down([2.45, null, 2.5, "2.4 s"]), down([1.8, 0, null, 1.8]));
    expectRelative(good![0], 0.65, 1e-12);
    expect([empty, gap, text]).toEqual([
      [""],
      [failing("#N/A", /10 m time is missing/)],
      [failing("#VALUE!", /2\.4 s/)],
    ]);
    expect(changeOfDirection(across(2.45), across(1.8), across(1.7))).toEqual([
      [failing("#N/A", /straight 10 m must be above zero/)],
    ]);
  });
});

describe("ELECTRONICTIME", () => {
  // Source: 0.24 s is the convention of athletics for hand times (as quoted by secondary pages).
  it("adds the convention, or what you say", () => {
    expectRelative(electronicTime(across(4.3))[0]![0], 4.54, 1e-12);
    expectRelative(electronicTime(across(4.3), 0.31)[0]![0], 4.61, 1e-12);
    expect(electronicTime(across(4.3), 0)).toEqual([[4.3]]);
  });

  it("answers each row for itself", () => {
    expect(electronicTime(down([null, 0, -4, "4.3s"]))).toEqual([
      [""],
      [""],
      [failing("#N/A", /above zero/)],
      [failing("#VALUE!", /4\.3s/)],
    ]);
    expectError(() => electronicTime(across(4.3), "a bit"), "#VALUE!", /a bit/);
  });
});
