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
    expect(cautions).toEqual([
      {
        code: "approximation",
        message:
          "Converted from a hand time by adding 0.24 s, true to about 0.1 s: not to be ranked with electronic times.",
        facts: { correction: 0.24, uncertainty: 0.1 },
      },
    ]);
  });

  test("takes the coach's own correction", () => {
    const { seconds, low, high } = unwrap(electronicTime(4.2, { correction: 0.31, uncertainty: 0.14 }));
    expect(seconds).toBeCloseTo(4.51, 12);
    expect(low).toBeCloseTo(4.37, 12);
    expect(high).toBeCloseTo(4.65, 12);
    expect(unwrap(electronicTime(4.2, { correction: 0, uncertainty: 0 })).seconds).toBe(4.2);
  });

  test("times and corrections that cannot be are refused", () => {
    expect(electronicTime(0, { correction: -0.24, uncertainty: -0.1 })).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "hand time", value: 0 } },
        { code: "negative", facts: { what: "correction", value: -0.24 } },
        { code: "negative", facts: { what: "uncertainty", value: -0.1 } },
      ],
    });
    expect(electronicTime(Number.NaN).ok).toBe(false);
  });
});
