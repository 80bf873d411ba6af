import { isMeasurement, presentValues } from "../../src/engine/presentValues";

describe("the values that are there", () => {
  test("missing ones are left out, zeros stay", () => {
    expect(presentValues([null, 0, 3, null])).toEqual([0, 3]);
  });

  test("numbers that no measurement gives are a programming error", () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 1e31, -1e31, 1e-31, -1e-31]) {
      expect(isMeasurement(value)).toBe(false);
      expect(() => presentValues([1, value])).toThrow(`${value} is not a measurement; missing values are null.`);
    }
  });

  test("measurements reach from 1e-30 to 1e30 in size, and zero is one", () => {
    for (const value of [0, 1e-30, -1e-30, 1e30, -1e30, 42]) expect(isMeasurement(value)).toBe(true);
  });
});
