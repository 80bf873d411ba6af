import fc from "fast-check";
import { intermittentFitnessTest } from "../../../src/engine/endurance/intermittentFitnessTest";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake from the intermittent fitness test", () => {
  // Source: R 4.2.2 arithmetic on the published equation.
  test.each([
    [19.5, { sex: "male", age: 22, bodyMass: 75 }, 52.3949],
    [17, { sex: "female", age: 20, bodyMass: 62 }, 44.4006],
  ] as const)("of %d km/h agrees with R, and says that it is a group's estimate", (speed, athlete, oxygenUptake) => {
    const result = unwrap(intermittentFitnessTest(speed, athlete));
    expectRelative(result.oxygenUptake, oxygenUptake, 1e-12);
    expect(result.cautions).toMatchObject([
      { code: "groupEstimate", facts: { what: "maximal oxygen uptake", error: "error not known here" } },
    ]);
  });

  test("of what no run reaches is refused", () => {
    expect(intermittentFitnessTest(1.95, { sex: "male", age: 7, bodyMass: 0 })).toMatchObject({
      ok: false,
      reasons: [
        { code: "outOfRange", facts: { what: "final speed in km/h", low: 8, high: 28, value: 1.95 } },
        { code: "outOfRange", facts: { what: "age", low: 8, high: 80, value: 7 } },
        { code: "outOfRange", facts: { what: "body mass", low: 15, high: 200, value: 0 } },
      ],
    });
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (speed, age, bodyMass) => {
        expect(notFinitePaths(intermittentFitnessTest(speed, { sex: "female", age, bodyMass }))).toEqual([]);
      }),
    );
  });
});
