import fc from "fast-check";
import { intermittentRecoveryTest } from "../../../src/engine/endurance/intermittentRecoveryTest";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake from the intermittent recovery test", () => {
  // Source: R 4.2.2 arithmetic on the published equation.
  test.each([
    [1200, 1, 46.48, "correlation about 0.70"],
    [600, 2, 53.46, "correlation about 0.58"],
  ] as const)("of %d m at level %d agrees with R, and is a group's estimate", (metres, level, oxygenUptake, error) => {
    const result = unwrap(intermittentRecoveryTest(metres, { level }));
    expectRelative(result.oxygenUptake, oxygenUptake, 1e-12);
    expect(result.cautions).toMatchObject([{ code: "groupEstimate", facts: { what: "maximal oxygen uptake", error } }]);
  });

  test("names a distance that is no whole number of shuttles", () => {
    expect(unwrap(intermittentRecoveryTest(1210, { level: 1 })).cautions).toEqual([
      expect.objectContaining({ code: "groupEstimate" }),
      {
        code: "notWholeShuttles",
        message: "The test counts whole shuttles of 40 m; 1210 m is none.",
        facts: { distance: 1210 },
      },
    ]);
  });

  test("of what no run reaches is refused", () => {
    expect(intermittentRecoveryTest(0, { level: 1 })).toMatchObject({
      ok: false,
      reasons: [{ code: "notPositive", facts: { what: "distance run", value: 0 } }],
    });
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
