import fc from "fast-check";
import { rollingAverage } from "../../../src/engine/load/rollingAverage";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, fullColumn } from "../../reference/reference";
import { cell, notFinitePaths } from "../measurements";

const days = fullColumn("training_load", "load_au");
const reference = expected("training_load").acwr;

function expectDays(actual: readonly (number | null)[], wanted: readonly (number | null)[]): void {
  expect(actual.length).toBe(wanted.length);
  wanted.forEach((value, index) => {
    if (value === null) expect(actual[index]).toBeNull();
    else expectRelative(actual[index]!, value, 1e-10);
  });
}

describe("the rolling average", () => {
  // Source: R 4.2.2 mean over each window.
  test("over 7 and 28 days agrees with R on every day", () => {
    expectDays(unwrap(rollingAverage(days, { window: 7 })), reference.acute7_mean);
    expectDays(unwrap(rollingAverage(days, { window: 28 })), reference.chronic28_mean);
  });

  test("a missing day leaves a window without average, unless fewer reported days are allowed", () => {
    expect(unwrap(rollingAverage([1, null, 3, 5], { window: 2 }))).toEqual([null, null, null, 4]);
    expect(unwrap(rollingAverage([1, null, 3, 5], { window: 2, reportedDays: 1 }))).toEqual([null, 1, 3, 4]);
  });

  test("a window longer than the diary is never full", () => {
    expect(unwrap(rollingAverage([4, 6], { window: 7, reportedDays: 1 }))).toEqual([null, null]);
  });

  test("a missing day is not a rest day", () => {
    const options = { window: 3, reportedDays: 2 };
    expect(unwrap(rollingAverage([6, null, 6], options)).at(-1)).toBe(6);
    expect(unwrap(rollingAverage([6, 0, 6], options)).at(-1)).toBe(4);
  });

  test("negative loads are refused, an impossible window throws", () => {
    expect(rollingAverage([1, -1], { window: 1 })).toMatchObject({
      ok: false,
      reasons: [{ code: "negative", facts: { what: "day total", value: -1 } }],
    });
    for (const window of [0, 1.5]) {
      expect(() => rollingAverage([1], { window })).toThrow("A window is a whole number of days above zero.");
    }
    for (const reportedDays of [0, 1.5]) {
      expect(() => rollingAverage([1], { window: 7, reportedDays })).toThrow("At least one day must be reported.");
    }
  });

  test("lies between the smallest and the largest day, never NaN", () => {
    fc.assert(
      fc.property(fc.array(cell(0, 1000), { maxLength: 40 }), fc.integer({ min: 1, max: 28 }), (series, window) => {
        const averages = unwrap(rollingAverage(series, { window, reportedDays: 1 }));
        expect(notFinitePaths(averages)).toEqual([]);
        const present = series.filter((day) => day !== null);
        for (const average of averages) {
          if (average === null) continue;
          expect(average).toBeGreaterThanOrEqual(Math.min(...present) - 1e-9);
          expect(average).toBeLessThanOrEqual(Math.max(...present) + 1e-9);
        }
      }),
    );
  });
});
