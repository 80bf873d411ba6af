import fc from "fast-check";
import { shuttleRunOfAdults } from "../../../src/engine/endurance/shuttleRunOfAdults";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("oxygen uptake of adults from the shuttle run", () => {
  // Source: by hand: 2.75 x 10 + 28.8 and 2.85 x 10 + 25.1.
  test.each([
    ["male", 56.3, "standard error 4.07 ml/kg/min"],
    ["female", 53.6, "standard error 3.64 ml/kg/min"],
  ] as const)("%s: the published line, and that it is a group's estimate", (sex, oxygenUptake, error) => {
    const result = unwrap(shuttleRunOfAdults(10, { sex }));
    expectRelative(result.oxygenUptake, oxygenUptake, 1e-12);
    expect(result.cautions).toMatchObject([{ code: "groupEstimate", facts: { what: "maximal oxygen uptake", error } }]);
  });

  test("of what no run reaches is refused", () => {
    expect(shuttleRunOfAdults(0, { sex: "male" })).toMatchObject({
      ok: false,
      reasons: [{ code: "outOfRange", facts: { what: "last half-stage", low: 0.5, high: 23, value: 0 } }],
    });
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
