import fc from "fast-check";
import { twoMinuteShuttleRun } from "../../../src/engine/endurance/twoMinuteShuttleRun";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake from the two-minute shuttle run", () => {
  // Source: R 4.2.2 arithmetic on the published equation.
  test.each([[twoMinuteShuttleRun(12.5), 53.7545]])(
    "agrees with R, and says that it is a group's estimate (%#)",
    (result, oxygenUptake) => {
      expectRelative(unwrap(result).oxygenUptake, oxygenUptake, 1e-12);
      expect(unwrap(result).cautions).toMatchObject([{ code: "groupEstimate" }]);
    },
  );

  test("of what no run reaches is refused", () => {
    expect(twoMinuteShuttleRun(125).ok).toBe(false);
    expect(twoMinuteShuttleRun(Number.NaN).ok).toBe(false);
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), (speed) => {
        expect(notFinitePaths(twoMinuteShuttleRun(speed))).toEqual([]);
      }),
    );
  });
});
