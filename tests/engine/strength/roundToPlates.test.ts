import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { type Plates, roundToPlates } from "../../../src/engine/strength/roundToPlates";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

const unlimited: readonly Plates[] = [{ weight: 1.25, pairs: null }];
const club: readonly Plates[] = [
  { weight: 20, pairs: 2 },
  { weight: 10, pairs: 1 },
  { weight: 5, pairs: 1 },
  { weight: 2.5, pairs: 1 },
  { weight: 1.25, pairs: 1 },
];

/** Every load the plates can make, by trying all counts of all sizes: the outside check of the subset sum. */
function everyLoad(bar: number, plates: readonly Plates[]): number[] {
  const sides = plates.reduce<number[]>(
    (sums, { weight, pairs }) =>
      sums.flatMap((sum) => Array.from({ length: pairs! + 1 }, (_, count) => sum + count * weight)),
    [0],
  );
  return sides.map((side) => bar + 2 * side);
}

describe("rounding to the plates at hand", () => {
  // Source: R 4.2.2: 20 + 2.5 * round(26.92) and 20 + 2.5 * floor(26.92).
  test.each([
    ["nearest", 87.5],
    ["down", 85],
  ] as const)("87.3 with plates of 1.25, %s, is %d", (rule, load) => {
    expect(unwrap(roundToPlates(87.3, { bar: 20, plates: unlimited, rule })).load).toBe(load);
  });

  test("loads the fewest plates, the heaviest first, and says what is reached", () => {
    const { load, perSide, percentOfTarget } = unwrap(roundToPlates(88, { bar: 20, plates: club }));
    expect({ load, perSide }).toEqual({ load: 87.5, perSide: [20, 10, 2.5, 1.25] });
    expectRelative(percentOfTarget, (100 * 87.5) / 88, 1e-15);
    const coins = [
      { weight: 4, pairs: null },
      { weight: 3, pairs: null },
      { weight: 1, pairs: null },
    ];
    expect(unwrap(roundToPlates(32, { bar: 20, plates: coins })).perSide).toEqual([3, 3]);
    // Three plates of 4 are found first, 9 and 3 are fewer.
    const later = [9, 4, 3].map((weight) => ({ weight, pairs: null }));
    expect(unwrap(roundToPlates(44, { bar: 20, plates: later })).perSide).toEqual([9, 3]);
  });

  test("names the heaviest first though the lightest were listed first", () => {
    expect(unwrap(roundToPlates(88, { bar: 20, plates: [...club].reverse() })).perSide).toEqual([20, 10, 2.5, 1.25]);
  });

  test("never uses more pairs than there are", () => {
    const { load, perSide } = unwrap(roundToPlates(1000, { bar: 20, plates: club, rule: "nearest" }));
    expect(load).toBe(137.5);
    expect(perSide).toEqual([20, 20, 10, 5, 2.5, 1.25]);
  });

  test("takes the lighter of two equally near loads", () => {
    expect(unwrap(roundToPlates(86.25, { bar: 20, plates: unlimited, rule: "nearest" })).load).toBe(85);
  });

  test("a percentage that falls a hair short of an achievable load is that load", () => {
    expect(unwrap(roundToPlates(0.57 * 100 - 1e-9, { bar: 20, plates: [{ weight: 0.5, pairs: null }] })).load).toBe(57);
  });

  test("the bar alone is a load; below it there is none", () => {
    expect(unwrap(roundToPlates(21, { bar: 20, plates: unlimited }))).toMatchObject({ load: 20, perSide: [] });
    expect(unwrap(roundToPlates(21, { bar: 20, plates: [] })).load).toBe(20);
    expect(roundToPlates(19, { bar: 20, plates: unlimited })).toMatchObject({
      ok: false,
      reasons: [{ code: "belowLightest", facts: { what: "the bar", lightest: 20, target: 19 } }],
    });
  });

  test.each([
    ["a target of zero", 0, 20, unlimited, "target load", 0.1, 1000],
    ["a target beyond reason", 2000, 20, unlimited, "target load", 0.1, 1000],
    ["a weightless plate", 80, 20, [{ weight: 0, pairs: 1 }], "plate weight", 0.1, 1000],
    ["a negative pair", 80, 20, [{ weight: 5, pairs: -1 }], "pairs of a plate", 0, 1000],
  ])("%s is out of range", (_, target, bar, plates, what, low, high) => {
    expect(roundToPlates(target, { bar, plates })).toMatchObject({
      ok: false,
      reasons: [{ code: "outOfRange", facts: { what, low, high } }],
    });
  });

  test("a bar that weighs nothing, half a pair and a plate that is not a number are refused at once", () => {
    const plates = [
      { weight: 5, pairs: 1.5 },
      { weight: Number.NaN, pairs: null },
    ];
    expect(roundToPlates(80, { bar: 0, plates })).toEqual({
      ok: false,
      reasons: [
        expect.objectContaining({ code: "notPositive", facts: { what: "bar", value: 0 } }),
        {
          code: "notWhole",
          message: "The pairs of a plate must be a whole number; 1.5 is not.",
          facts: { what: "pairs of a plate", value: 1.5 },
        },
        expect.objectContaining({ code: "notFinite", facts: { what: "plate weight" } }),
      ],
    });
  });

  const aSize = fc.record({
    weight: fc.integer({ min: 1, max: 100 }).map((quarters) => quarters / 4),
    pairs: fc.integer({ min: 0, max: 3 }),
  });
  const someSizes = fc.array(aSize, { maxLength: 5 });
  const aTarget = fc.double({ min: 20, max: 200, noNaN: true });

  test("agrees with trying everything", () => {
    fc.assert(
      fc.property(aTarget, someSizes, (target, plates) => {
        const loads = everyLoad(20, plates);
        const below = Math.max(...loads.filter((load) => load <= target + 1e-6));
        expect(unwrap(roundToPlates(target, { bar: 20, plates })).load).toBe(below);
        const nearest = unwrap(roundToPlates(target, { bar: 20, plates, rule: "nearest" })).load;
        expect(loads).toContain(nearest);
        const smallestGap = Math.min(...loads.map((load) => Math.abs(load - target)));
        expect(Math.abs(nearest - target)).toBeCloseTo(smallestGap, 5);
      }),
    );
  });

  test("the plates named make the load, within the pairs there are", () => {
    fc.assert(
      fc.property(aTarget, someSizes, (target, plates) => {
        const { load, perSide } = unwrap(roundToPlates(target, { bar: 20, plates }));
        expect(20 + 2 * perSide.reduce((sum, weight) => sum + weight, 0)).toBe(load);
        expect(load).toBeLessThanOrEqual(target + 1e-6);
        for (const weight of new Set(perSide)) {
          const owned = plates.filter((size) => size.weight === weight).reduce((sum, { pairs }) => sum + pairs, 0);
          expect(perSide.filter((plate) => plate === weight).length).toBeLessThanOrEqual(owned);
        }
      }),
    );
  });

  test("never gives NaN", () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (target, bar, weight) => {
        expect(notFinitePaths(roundToPlates(target, { bar, plates: [{ weight, pairs: 3 }] }))).toEqual([]);
      }),
    );
  });

  test("many small plates without limit, which no one could try one by one", () => {
    const smallest = [0.1, 0.25, 0.5, 1.25, 2.5, 5, 10, 20, 25].map((weight) => ({ weight, pairs: null }));
    expect(unwrap(roundToPlates(317.36, { bar: 20, plates: smallest })).load).toBeCloseTo(317.3, 9);
  });
});
