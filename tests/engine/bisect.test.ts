import { bisect } from "../../src/engine/bisect";

describe("bisection", () => {
  test("finds a root to the last digits, from either end", () => {
    const root = (x: number): number => x ** 3 - 2;
    expect(bisect(root, 0, 2)).toBeCloseTo(Math.cbrt(2), 15);
    expect(bisect(root, 2, 0)).toBeCloseTo(Math.cbrt(2), 15);
    expect(bisect((x) => x, 0, 5)).toBe(0);
    expect(bisect((x) => x - 5, 0, 5)).toBe(5);
  });

  test("without a sign change there is nothing to find", () => {
    expect(() => bisect(() => 1, 0, 1)).toThrow("No sign change between 0 and 1.");
    expect(() => bisect((x) => x - 2, 0, 1)).toThrow(RangeError);
  });
});
