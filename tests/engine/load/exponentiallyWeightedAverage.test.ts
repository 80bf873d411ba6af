import fc from "fast-check";
import { exponentiallyWeightedAverage } from "../../../src/engine/load/exponentiallyWeightedAverage";
import { unwrap } from "../../../src/engine/result";
import { expected, expectRelative, fullColumn } from "../../reference/reference";

const days = fullColumn("training_load", "load_au");
const reference = expected("training_load").acwr;

describe("the exponentially weighted average", () => {
  // Source: R 4.2.2, the recursion from the first load on.
  test("with spans of 7 and 28 days agrees with R on every day", () => {
    for (const span of [7, 28]) {
      unwrap(exponentiallyWeightedAverage(days, { span })).forEach((average, day) => {
        expectRelative(average!, reference[`EWMA${span}`][day], 1e-10);
      });
    }
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
    expect(exponentiallyWeightedAverage([1, -1], { span: 7 })).toMatchObject({
      ok: false,
      reasons: [{ code: "negative", facts: { what: "day total", value: -1 } }],
    });
    for (const span of [0, 1.5]) {
      expect(() => exponentiallyWeightedAverage([1], { span })).toThrow("A span is a whole number of days above zero.");
    }
  });
});
