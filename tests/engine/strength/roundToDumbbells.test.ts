import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { roundToDumbbells } from "../../../src/engine/strength/roundToDumbbells";

const weights = [10, 5, 7.5, 20];

describe("rounding to the dumbbells owned", () => {
  // Source: by hand.
  test.each([
    [8.9, "down", 7.5],
    [8.9, "nearest", 10],
    [8.75, "nearest", 7.5],
    [50, "nearest", 20],
    [5, "down", 5],
  ] as const)("%d, %s, is %d", (target, rule, load) => {
    expect(unwrap(roundToDumbbells(target, { weights, rule })).load).toBe(load);
  });

  test("says how much of the target is reached", () => {
    expect(unwrap(roundToDumbbells(12.5, { weights })).percentOfTarget).toBe(80);
  });

  test("below the lightest, without any and with nonsense it refuses", () => {
    expect(roundToDumbbells(4, { weights })).toMatchObject({
      ok: false,
      reasons: [{ code: "belowLightest", facts: { what: "the lightest dumbbell", lightest: 5, target: 4 } }],
    });
    expect(roundToDumbbells(4, { weights: [] })).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "dumbbells", needed: 1, got: 0 } }],
    });
    expect(roundToDumbbells(-4, { weights: [Number.NaN, 0] })).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "target load", value: -4 } },
        { code: "notFinite", facts: { what: "weight" } },
        { code: "notPositive", facts: { what: "weight", value: 0 } },
      ],
    });
  });

  test("rounding down never exceeds the target and never misses a heavier one below it", () => {
    const owned = fc.array(fc.double({ min: 1, max: 60, noNaN: true }), { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(owned, fc.double({ min: 1, max: 80, noNaN: true }), (list, target) => {
        const result = roundToDumbbells(target, { weights: list });
        const below = list.filter((weight) => weight <= target);
        expect(result.ok ? result.value.load : null).toBe(below.length === 0 ? null : Math.max(...below));
      }),
    );
  });
});
