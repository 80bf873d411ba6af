import fc from "fast-check";
import { shuttleRun } from "../../../src/engine/endurance/shuttleRun";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake from the shuttle run", () => {
  // Source: R 4.2.2 arithmetic on the published equation.
  test.each([
    [12.5, 18, 47.596],
    [11, 14, 44.8254],
  ])("of %d km/h at %d years agrees with R, and is a group's estimate", (speed, age, oxygenUptake) => {
    const result = unwrap(shuttleRun(speed, { age }));
    expectRelative(result.oxygenUptake, oxygenUptake, 1e-12);
    expect(result.cautions).toMatchObject([
      {
        code: "groupEstimate",
        facts: { what: "maximal oxygen uptake", error: "standard error about 6 ml/kg/min, from memory" },
      },
    ]);
  });

  // Source: the line for adults printed as 6.0 S - 27.4 (from memory); age 30 in the equation would give 31.66.
  test("counts adults as 18, whatever their age", () => {
    for (const age of [18, 19, 30, 55]) {
      expect(Math.abs(unwrap(shuttleRun(12.5, { age })).oxygenUptake - (6 * 12.5 - 27.4))).toBeLessThan(0.05);
    }
  });

  test("rises with the speed", () => {
    const aSpeed = fc.double({ min: 8, max: 19, noNaN: true });
    fc.assert(
      fc.property(aSpeed, fc.double({ min: 8, max: 60, noNaN: true }), (speed, age) => {
        const uptake = (of: number) => unwrap(shuttleRun(of, { age })).oxygenUptake;
        expect(uptake(speed + 0.5)).toBeGreaterThan(uptake(speed));
      }),
    );
  });

  test("of what no run reaches is refused", () => {
    expect(shuttleRun(125, { age: 5 })).toMatchObject({
      ok: false,
      reasons: [
        { code: "outOfRange", facts: { what: "final speed in km/h", low: 8, high: 20, value: 125 } },
        { code: "outOfRange", facts: { what: "age", low: 8, high: 80, value: 5 } },
      ],
    });
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (speed, age) => {
        expect(notFinitePaths(shuttleRun(speed, { age }))).toEqual([]);
      }),
    );
  });
});
