import fc from "fast-check";
import { intermittentFitnessTest } from "../../../src/engine/endurance/intermittentFitnessTest";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake from the intermittent fitness test", () => {
  // Source: R 4.2.2 arithmetic on the published equation.
  test.each([
    [intermittentFitnessTest(19.5, { sex: "male", age: 22, bodyMass: 75 }), 52.3949],
    [intermittentFitnessTest(17, { sex: "female", age: 20, bodyMass: 62 }), 44.4006],
  ])("agrees with R, and says that it is a group's estimate (%#)", (result, oxygenUptake) => {
    expectRelative(unwrap(result).oxygenUptake, oxygenUptake, 1e-12);
    expect(unwrap(result).cautions).toMatchObject([{ code: "groupEstimate" }]);
  });

  test("of what no run reaches is refused", () => {
    expect(intermittentFitnessTest(19.5, { sex: "male", age: 22, bodyMass: 0 }).ok).toBe(false);
    expect(intermittentFitnessTest(1.95, { sex: "male", age: 22, bodyMass: 75 }).ok).toBe(false);
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (speed, age, bodyMass) => {
        expect(notFinitePaths(intermittentFitnessTest(speed, { sex: "female", age, bodyMass }))).toEqual([]);
      }),
    );
  });
});
