import { unwrap } from "../../../src/engine/result";
import { electronicTime } from "../../../src/engine/sprints/electronicTime";

describe("a hand time as electronic time", () => {
  // Source: 0.24 s, the athletics convention; measured mean differences 0.22 to 0.31 s (docstring) must lie within the limits.
  test("is approximate and says so", () => {
    const { seconds, low, high, cautions } = unwrap(electronicTime(4.2));
    expect(seconds).toBeCloseTo(4.44, 12);
    for (const measured of [0.22, 0.225, 0.26, 0.31]) {
      expect(4.2 + measured).toBeGreaterThan(low);
      expect(4.2 + measured).toBeLessThan(high);
    }
    expect(cautions.map(({ code }) => code)).toEqual(["approximation"]);
  });

  test("takes the coach's own correction", () => {
    expect(unwrap(electronicTime(4.2, { correction: 0.31, uncertainty: 0.14 }))).toMatchObject({ seconds: 4.51 });
  });

  test("times and corrections that cannot be are refused", () => {
    expect(electronicTime(0).ok).toBe(false);
    expect(electronicTime(Number.NaN).ok).toBe(false);
    expect(electronicTime(4.2, { correction: -0.24 }).ok).toBe(false);
  });
});
