import fc from "fast-check";
import { eccentricUtilisationRatio } from "../../../src/engine/jumps/eccentricUtilisationRatio";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("the eccentric utilisation ratio", () => {
  // Source: by hand.
  test("of 36 and 32 cm", () => {
    expectRelative(unwrap(eccentricUtilisationRatio(36, 32)).ratio, 1.125, 1e-12);
  });

  test("below one is given with a caution", () => {
    expect(unwrap(eccentricUtilisationRatio(28, 32)).cautions).toEqual([
      {
        code: "hiddenCountermovement",
        message: "The squat jump was the higher one; it probably began with a small countermovement.",
        facts: { ratio: 0.875 },
      },
    ]);
    expect(unwrap(eccentricUtilisationRatio(32, 32)).cautions).toEqual([]);
  });

  test("of values that are not positive is refused by their names", () => {
    expect(eccentricUtilisationRatio(0, -1)).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "countermovement jump", value: 0 } },
        { code: "notPositive", facts: { what: "squat jump", value: -1 } },
      ],
    });
    expect(eccentricUtilisationRatio(1, Number.NaN)).toMatchObject({ ok: false, reasons: [{ code: "notFinite" }] });
  });

  test("never gives NaN or Infinity", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(eccentricUtilisationRatio(one, other))).toEqual([]);
      }),
    );
  });
});
