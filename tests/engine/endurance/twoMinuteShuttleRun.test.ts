import fc from "fast-check";
import { twoMinuteShuttleRun } from "../../../src/engine/endurance/twoMinuteShuttleRun";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake from the two-minute shuttle run", () => {
  // Source: R 4.2.2 arithmetic on the published equation.
  test("of 12.5 km/h agrees with R, and says that it is a group's estimate", () => {
    const result = unwrap(twoMinuteShuttleRun(12.5));
    expectRelative(result.oxygenUptake, 53.7545, 1e-12);
    expect(result.cautions).toMatchObject([
      { code: "groupEstimate", facts: { what: "maximal oxygen uptake", error: "standard error 5.4 ml/kg/min" } },
    ]);
  });

  test("of what no run reaches is refused", () => {
    expect(twoMinuteShuttleRun(125)).toMatchObject({
      ok: false,
      reasons: [{ code: "outOfRange", facts: { what: "final speed in km/h", low: 8, high: 20, value: 125 } }],
    });
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
