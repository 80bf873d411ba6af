import fc from "fast-check";
import { intermittentRecoveryTest } from "../../../src/engine/endurance/intermittentRecoveryTest";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake from the intermittent recovery test", () => {
  // Source: R 4.2.2 arithmetic on the published equation.
  test.each([
    [intermittentRecoveryTest(1200, { level: 1 }), 46.48],
    [intermittentRecoveryTest(600, { level: 2 }), 53.46],
  ])("agrees with R, and says that it is a group's estimate (%#)", (result, oxygenUptake) => {
    expectRelative(unwrap(result).oxygenUptake, oxygenUptake, 1e-12);
    expect(unwrap(result).cautions).toMatchObject([{ code: "groupEstimate" }]);
  });

  test("names a distance that is no whole number of shuttles", () => {
    expect(unwrap(intermittentRecoveryTest(1210, { level: 1 })).cautions.map(({ code }) => code)).toEqual([
      "groupEstimate",
      "notWholeShuttles",
    ]);
  });

  test("of what no run reaches is refused", () => {
    expect(intermittentRecoveryTest(0, { level: 1 }).ok).toBe(false);
    expect(intermittentRecoveryTest(Number.NaN, { level: 2 }).ok).toBe(false);
  });

  test("never is NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), (metres) => {
        expect(notFinitePaths(intermittentRecoveryTest(metres, { level: 2 }))).toEqual([]);
      }),
    );
  });
});
