import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import { loadVelocity, velocityMax } from "../../src/functions/loadVelocity";
import { expected, expectRelative } from "../reference/reference";
import { across, byLabel, expectError, failing } from "./cells";

const loads = across(40, 60, 80, 100);
const velocities = [1.05, 0.83, 0.6, 0.41];

describe("VELOCITYMAX", () => {
  // Source: R 4.2.2 lm(v ~ load), vcov for the delta method.
  it.each([
    ["bench press", "mvt_0.17"],
    [0.17, "mvt_0.17"],
    ["Back squat", "mvt_0.30"],
    [0.3, "mvt_0.30"],
  ])("at the threshold %s agrees with R", (threshold, key) => {
    const reference = expected("load_velocity")[key];
    const [maximum, low, high] = velocityMax(loads, [velocities], threshold)[0]!;
    expectRelative(maximum, reference.e1RM, 1e-10);
    expectRelative(low, reference.ci_delta[0], 1e-10);
    expectRelative(high, reference.ci_delta[1], 1e-10);
  });

  it("gives a row for each athlete from one row of loads, and one bad row leaves the others good", () => {
    const answers = velocityMax(
      loads,
      [velocities, [null, null, null, null], [1.05, 0.83, "DNS", null], [0.4, 0.6, 0.8, 0.9], [1, 0.8, "0.6 m/s", 0.4]],
      0.17,
    );
    expect(answers[0]).toEqual(velocityMax(loads, [velocities], 0.17)[0]);
    expect(answers[1]).toEqual(["", "", ""]);
    expect(answers[2]).toEqual(new Array(3).fill(failing("#N/A", /At least 3 different loads/)));
    expect(answers[3]).toEqual(new Array(3).fill(failing("#N/A", /Velocity must fall/)));
    expect(answers[4]).toEqual(new Array(3).fill(failing("#VALUE!", /0\.6 m\/s/)));
  });

  it("narrows its limits with less confidence", () => {
    const [, low95, high95] = velocityMax(loads, [velocities], 0.17)[0]!;
    const [, low80, high80] = velocityMax(loads, [velocities], 0.17, 0.8)[0]!;
    expect(low80).toBeGreaterThan(low95);
    expect(high80).toBeLessThan(high95);
  });

  it("refuses an unknown exercise, no threshold and a confidence in percent", () => {
    expectError(() => velocityMax(loads, [velocities], "curl"), "#VALUE!", /Use bench press, .* or prone bench pull/);
    expectError(() => velocityMax(loads, [velocities], null), "#VALUE!", /velocity of a maximal lift is missing/);
    expectError(() => velocityMax(loads, [velocities], 0.17, 95), "#VALUE!", /from 0.01 to 0.9999; 95 is not/);
  });
});

describe("LOADVELOCITY", () => {
  // Source: R 4.2.2 lm(v ~ load).
  it("shows the profile of one athlete as R has it", () => {
    const reference = expected("load_velocity")["mvt_0.17"];
    const table = loadVelocity(loads, [velocities], 0.17);
    expect(table.every((line) => line.length === 4)).toBe(true);
    const lines = byLabel(table);
    expectRelative(lines["Estimated maximum"]![0], reference.e1RM, 1e-10);
    expectRelative(lines["Estimated maximum"]![2], reference.ci_delta[1], 1e-10);
    expectRelative(lines["Velocity without load (m/s)"]![0], reference.intercept, 1e-11);
    expectRelative(lines["Load without velocity"]![0], reference.L0, 1e-10);
    expectRelative(lines["Slope (m/s per unit of load)"]![0], reference.slope, 1e-11);
    expectRelative(lines["r squared"]![0], reference.r_squared, 1e-10);
  });

  it("carries its cautions, and says why it cannot answer", () => {
    expect(byLabel(loadVelocity(across(20, 30, 40, 50), across(1.3, 1.2, 1.1, 1.01), 0.17)).Caution![0]).toMatch(
      /extrapolated/,
    );
    expectError(() => loadVelocity(across(40, 60), across(1, 0.8), 0.17), "#N/A", /At least 3 different loads/);
  });
});
