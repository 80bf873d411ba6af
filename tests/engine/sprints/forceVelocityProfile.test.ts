import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { forceVelocityProfile } from "../../../src/engine/sprints/forceVelocityProfile";
import { expected, expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

const curve = { maximalVelocity: 9.2, timeConstant: 1.25 };

describe("the force-velocity profile of a sprint", () => {
  const reference = expected("sprint_splits")["force_velocity_A_mass80_h1.80"];

  // Source: closed form, worked in R 4.2.2: force mass V / tau, velocity V, power mass V^2 / (4 tau).
  test("without air agrees with the closed form", () => {
    const profile = unwrap(forceVelocityProfile(curve, 80));
    expectRelative(profile.force, reference.no_air.F0, 1e-12);
    expectRelative(profile.relativeForce, reference.no_air.F0_rel, 1e-12);
    expectRelative(profile.velocity, reference.no_air.V0, 1e-12);
    expectRelative(profile.power, reference.no_air.Pmax, 1e-12);
    expectRelative(profile.relativePower, reference.no_air.Pmax_rel, 1e-12);
  });

  // Source: R 4.2.2 lm(F ~ v) over 1001 equally spaced times from 0 to 6.25 s.
  test("with air agrees with R", () => {
    const wanted = reference.with_air_regression_1001pts_0_to_tend;
    const profile = unwrap(forceVelocityProfile(curve, 80, { air: { statureMetres: 1.8 } }));
    expectRelative(profile.force, wanted.F0, 1e-11);
    expectRelative(profile.relativeForce, wanted.F0_rel, 1e-11);
    expectRelative(profile.velocity, wanted.V0, 1e-11);
    expectRelative(profile.power, wanted.Pmax_F0V0_4, 1e-11);
    expectRelative(profile.relativePower, wanted.Pmax_rel, 1e-11);
    expectRelative(profile.slope, wanted.FV_slope, 1e-11);
    expectRelative(profile.ratioOfForces, 100 * wanted["RF_peak_t_ge_0.3"], 1e-11);
    expectRelative(profile.decreaseInRatioOfForces, wanted.DRF_percent, 1e-10);
  });

  // Source: numpy 1.x polyfit of the ratio of forces with g = 9.80665.
  test("takes the standard gravity when asked", () => {
    const air = { statureMetres: 1.8 };
    const profile = unwrap(forceVelocityProfile(curve, 80, { air, gravity: 9.80665 }));
    expectRelative(profile.ratioOfForces, 50.928935999839, 1e-11);
    expectRelative(profile.decreaseInRatioOfForces, -6.919989354988084, 1e-10);
  });

  test("thinner air leaves less force to find", () => {
    const at = (pressure: number) =>
      unwrap(forceVelocityProfile(curve, 80, { air: { statureMetres: 1.8, pressure } })).power;
    expect(at(600)).toBeLessThan(at(760));
    expect(at(600)).toBeGreaterThan(unwrap(forceVelocityProfile(curve, 80)).power);
  });

  // Outside check: the gas law; air as dense as at 20 degrees and 760 Torr, once cold and once hot.
  test.each([0, 40])("at %d degrees and the pressure of equal density is the same", (temperature) => {
    const pressure = (760 * (273 + temperature)) / 293;
    const usual = unwrap(forceVelocityProfile(curve, 80, { air: { statureMetres: 1.8 } }));
    const profile = unwrap(forceVelocityProfile(curve, 80, { air: { statureMetres: 1.8, temperature, pressure } }));
    expectRelative(profile.force, usual.force, 1e-13);
    expectRelative(profile.velocity, usual.velocity, 1e-13);
  });

  test("every quantity out of its range is refused at once", () => {
    const air = { statureMetres: 2.6, temperature: 51, pressure: 399 };
    expect(forceVelocityProfile({ maximalVelocity: 13.1, timeConstant: 0.39 }, 301, { air })).toMatchObject({
      ok: false,
      reasons: [
        { code: "outOfRange", facts: { what: "maximal velocity", low: 4, high: 13 } },
        { code: "outOfRange", facts: { what: "time constant", low: 0.4, high: 2.5 } },
        { code: "outOfRange", facts: { what: "body mass", low: 15, high: 300 } },
        { code: "outOfRange", facts: { what: "stature in metres", low: 1, high: 2.5 } },
        { code: "outOfRange", facts: { what: "air temperature", low: -30, high: 50 } },
        { code: "outOfRange", facts: { what: "air pressure in Torr", low: 400, high: 820 } },
      ],
    });
  });

  test.each([
    ["stature in cm", curve, 80, { statureMetres: 180 }],
    ["no mass", curve, 0, null],
    ["no human sprint", { maximalVelocity: 30, timeConstant: 1 }, 80, null],
    ["a time constant that is not a number", { maximalVelocity: 9, timeConstant: Number.NaN }, 80, null],
  ])("%s is refused", (_, sprint, mass, air) => {
    expect(forceVelocityProfile(sprint, mass, { air }).ok).toBe(false);
  });

  test("never gives NaN or Infinity", () => {
    const number = fc.double();
    fc.assert(
      fc.property(number, number, number, number, (maximalVelocity, timeConstant, mass, statureMetres) => {
        const result = forceVelocityProfile({ maximalVelocity, timeConstant }, mass, { air: { statureMetres } });
        expect(notFinitePaths(result)).toEqual([]);
      }),
    );
  });
});
