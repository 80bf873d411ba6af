import fc from "fast-check";
import { exponentiallyWeightedAverage } from "../../../src/engine/load/exponentiallyWeightedAverage";
import { rollingAverage } from "../../../src/engine/load/rollingAverage";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, fullColumn } from "../../reference/reference";
import { cell, notFinitePaths } from "../measurements";

const days = fullColumn("training_load", "load_au");
const reference = expected("training_load").acwr;

function expectSeries(actual: readonly (number | null)[], wanted: readonly (number | null)[]): void {
  expect(actual.length).toBe(wanted.length);
  wanted.forEach((value, index) => {
    if (value === null) expect(actual[index]).toBeNull();
    else expectRelative(actual[index]!, value, 1e-10);
  });
}

describe("the rolling average", () => {
  // Source: R 4.2.2 mean over each window.
  test("over 7 and 28 days agrees with R on every day", () => {
    expectSeries(unwrap(rollingAverage(days, { window: 7 })), reference.acute7_mean);
    expectSeries(unwrap(rollingAverage(days, { window: 28 })), reference.chronic28_mean);
  });

  test("a missing day leaves a window without average, unless fewer reported days are allowed", () => {
    expect(unwrap(rollingAverage([1, null, 3, 5], { window: 2 }))).toEqual([null, null, null, 4]);
    expect(unwrap(rollingAverage([1, null, 3, 5], { window: 2, reportedDays: 1 }))).toEqual([null, 1, 3, 4]);
  });

  test("a missing day is not a rest day", () => {
    const options = { window: 3, reportedDays: 2 };
    expect(unwrap(rollingAverage([6, null, 6], options)).at(-1)).toBe(6);
    expect(unwrap(rollingAverage([6, 0, 6], options)).at(-1)).toBe(4);
  });

  test("negative loads are refused, an impossible window throws", () => {
    expect(rollingAverage([1, -1], { window: 1 }).ok).toBe(false);
    expect(() => rollingAverage([1], { window: 0 })).toThrow(RangeError);
    expect(() => rollingAverage([1], { window: 7, reportedDays: 0 })).toThrow(RangeError);
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

describe("the exponentially weighted average", () => {
  // Source: R 4.2.2, the recursion from the first load on.
  test("with spans of 7 and 28 days agrees with R on every day", () => {
    expectSeries(unwrap(exponentiallyWeightedAverage(days, { span: 7 })), reference.EWMA7);
    expectSeries(unwrap(exponentiallyWeightedAverage(days, { span: 28 })), reference.EWMA28);
  });

  // Source: by hand, weight 0.25.
  test("of one week by hand", () => {
    expect(unwrap(exponentiallyWeightedAverage([420, 300, 540, 0, 480, 600, 0], { span: 7 }))).toEqual([
      420, 390, 427.5, 320.625, 360.46875, 420.3515625, 315.263671875,
    ]);
  });

  // Source: by hand: (2 + 4 + 6) / 3 = 4, then 0.5 x 8 + 0.5 x 4 = 6.
  test("may start with the mean of its span", () => {
    expect(unwrap(exponentiallyWeightedAverage([2, 4, 6, 8], { span: 3, start: "meanOfSpan" }))).toEqual([
      null,
      null,
      4,
      6,
    ]);
  });

  test("equals the closed form: the first load and every later one, each with its weight", () => {
    const series = fc.array(fc.nat(1000), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(series, fc.integer({ min: 1, max: 40 }), (loads, span) => {
        const weight = 2 / (span + 1);
        const last = loads.length - 1;
        const closed = loads.reduce(
          (sum, load, day) => sum + (day === 0 ? 1 : weight) * (1 - weight) ** (last - day) * load,
          0,
        );
        expect(unwrap(exponentiallyWeightedAverage(loads, { span })).at(-1)).toBeCloseTo(closed, 8);
      }),
    );
  });

  test("a day nobody reported has no average and changes no other", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(1000), { minLength: 1, maxLength: 30 }), fc.nat(29), (loads, place) => {
        const at = Math.min(place, loads.length);
        const withGap = [...loads.slice(0, at), null, ...loads.slice(at)];
        for (const start of ["firstLoad", "meanOfSpan"] as const) {
          const whole = unwrap(exponentiallyWeightedAverage(loads, { span: 7, start }));
          const gapped = unwrap(exponentiallyWeightedAverage(withGap, { span: 7, start }));
          expect(gapped[at]).toBeNull();
          expect(gapped.filter((_, index) => index !== at)).toEqual(whole);
        }
      }),
    );
  });

  test("negative loads are refused, an impossible span throws", () => {
    expect(exponentiallyWeightedAverage([1, -1], { span: 7 }).ok).toBe(false);
    expect(() => exponentiallyWeightedAverage([1], { span: 0.5 })).toThrow(RangeError);
  });
});
