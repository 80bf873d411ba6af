import { unwrap } from "../../../src/engine/result";
import { quantile } from "../../../src/engine/standing/quantile";
import { expectRelative } from "../../reference/reference";
import { standingSets } from "../../reference/standingSets";

describe("quantiles", () => {
  // Source: R 4.2.2 quantile(type = 5 to 8); numpy agrees.
  test.each(standingSets)("types 5 to 8: $name", ({ scores, reference }) => {
    for (const type of [5, 6, 7, 8] as const) {
      for (const [percent, value] of Object.entries<number>(reference.quantiles[`type${type}`])) {
        expectRelative(unwrap(quantile(scores, Number.parseFloat(percent) / 100, { type })), value, 1e-10);
      }
    }
  });

  // Source: R 4.2.2.
  test.each([
    [6, [10, 15, 20, 35, 40]],
    [7, [14, 20, 20, 30, 36]],
    [8, [10, 16.6666666667, 20, 33.3333333333, 40]],
  ] as const)("type %d of a short list", (type, values) => {
    [0.1, 0.25, 0.5, 0.75, 0.9].forEach((share, index) => {
      expect(unwrap(quantile([40, null, 10, 20, 30, 20], share, { type }))).toBeCloseTo(values[index]!, 9);
    });
  });

  test("the ends of the shares are the ends of the list, by every type; beyond them nothing", () => {
    for (const type of [5, 6, 7, 8] as const) {
      expect(unwrap(quantile([40, 10, 20], 0, { type }))).toBe(10);
      expect(unwrap(quantile([40, 10, 20], 1, { type }))).toBe(40);
      expect(unwrap(quantile([7], 0.3, { type }))).toBe(7);
    }
    expect(quantile([40, 10, 20], -0.1).ok).toBe(false);
  });

  // Source: by hand: (101 - 1) x 0.55 + 1 is 56, though 100 x 0.55 is a hair more in doubles.
  test("a position that misses a whole number by rounding is that number", () => {
    const values = Array.from({ length: 101 }, (_, index) => index + 1);
    expect(unwrap(quantile(values, 0.55))).toBe(56);
  });

  test("no values, and a share in percent, are refused", () => {
    expect(quantile([null], 50)).toMatchObject({
      reasons: [
        { code: "tooFew", facts: { what: "values", needed: 1, got: 0 } },
        { code: "outOfRange", facts: { what: "the share", low: 0, high: 1, value: 50 } },
      ],
    });
  });
});
