import { negativeRefusals, positiveRefusals, rangeRefusals } from "../../src/engine/quantities";

describe("quantities that cannot be used", () => {
  test("every one is named, with its reason", () => {
    expect(positiveRefusals({ load: 0, mass: Number.NaN, height: 1 })).toMatchObject([
      { code: "notPositive", facts: { what: "load", value: 0 } },
      { code: "notFinite", facts: { what: "mass" } },
    ]);
    expect(negativeRefusals({ load: 0, mass: Number.POSITIVE_INFINITY, height: -1 })).toMatchObject([
      { code: "notFinite", facts: { what: "mass" } },
      { code: "negative", facts: { what: "height", value: -1 } },
    ]);
  });

  test("a range includes its ends", () => {
    expect(rangeRefusals("age", 8, 80, 8)).toEqual([]);
    expect(rangeRefusals("age", 8, 80, 80)).toEqual([]);
    for (const value of [7.9, 80.1]) {
      expect(rangeRefusals("age", 8, 80, value)).toMatchObject([
        { code: "outOfRange", facts: { what: "age", low: 8, high: 80, value } },
      ]);
    }
    expect(rangeRefusals("age", 8, 80, Number.NaN)).toMatchObject([{ code: "notFinite", facts: { what: "age" } }]);
  });
});
