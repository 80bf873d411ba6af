import { isMeasurement, presentValues } from "../../src/engine/presentValues";

describe("the values that are there", () => {
  test("missing ones are left out, zeros stay", () => {
    expect(presentValues([null, 0, 3, null])).toEqual([0, 3]);
  });

  test("numbers that no measurement gives are a programming error", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 1e31, 1e-31]) {
      expect(isMeasurement(value)).toBe(false);
      expect(() => presentValues([1, value])).toThrow(RangeError);
    }
  });
});
