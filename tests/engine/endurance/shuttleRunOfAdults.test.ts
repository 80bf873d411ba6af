import fc from "fast-check";
import { shuttleRunOfAdults } from "../../../src/engine/endurance/shuttleRunOfAdults";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake of adults from the shuttle run", () => {
  // Source: by hand: 2.75 x 10 + 28.8 and 2.85 x 10 + 25.1.
  test.each([
    [shuttleRunOfAdults(10, { sex: "male" }), 56.3],
    [shuttleRunOfAdults(10, { sex: "female" }), 53.6],
  ])("agrees with the published line, and says that it is a group's estimate (%#)", (result, oxygenUptake) => {
    expectRelative(unwrap(result).oxygenUptake, oxygenUptake, 1e-12);
    expect(unwrap(result).cautions).toMatchObject([{ code: "groupEstimate" }]);
  });

  test("of what no run reaches is refused", () => {
    expect(shuttleRunOfAdults(0, { sex: "male" }).ok).toBe(false);
    expect(shuttleRunOfAdults(Number.NaN, { sex: "female" }).ok).toBe(false);
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), (stage) => {
        expect(notFinitePaths(shuttleRunOfAdults(stage, { sex: "female" }))).toEqual([]);
      }),
    );
  });
});
