import fc from "fast-check";
import { dynamicStrengthIndex } from "../../../src/engine/jumps/dynamicStrengthIndex";
import { eccentricUtilisationRatio } from "../../../src/engine/jumps/eccentricUtilisationRatio";
import { flightContactRatio } from "../../../src/engine/jumps/flightContactRatio";
import { heightFromFlightTime } from "../../../src/engine/jumps/heightFromFlightTime";
import { modifiedReactiveStrengthIndex } from "../../../src/engine/jumps/modifiedReactiveStrengthIndex";
import { normalisedHop } from "../../../src/engine/jumps/normalisedHop";
import { reactiveStrengthIndex } from "../../../src/engine/jumps/reactiveStrengthIndex";
import { unwrap } from "../../../src/engine/result";
import { expectRelative } from "../../reference/reference";
import { notFinitePaths } from "../measurements";

describe("ratios of jumps", () => {
  // Source: R 4.2.2 arithmetic, flight 0.5 s, contact 0.2 s.
  test("the two forms of the reactive strength index are different numbers", () => {
    const height = unwrap(heightFromFlightTime(0.5));
    expectRelative(unwrap(reactiveStrengthIndex(height, 0.2)), 1.5328125, 1e-12);
    expectRelative(unwrap(flightContactRatio(0.5, 0.2)), 2.5, 1e-12);
  });

  // Source: by hand.
  test("modified index, utilisation ratio, dynamic strength index, hop by leg length", () => {
    expectRelative(unwrap(modifiedReactiveStrengthIndex(0.36, 0.8)), 0.45, 1e-12);
    expectRelative(unwrap(eccentricUtilisationRatio(36, 32)).ratio, 1.125, 1e-12);
    expectRelative(unwrap(dynamicStrengthIndex(1800, 2400)).index, 0.75, 1e-12);
    expectRelative(unwrap(normalisedHop(171, 90)), 190, 1e-12);
  });

  test("what cannot be is given with a caution", () => {
    expect(unwrap(eccentricUtilisationRatio(30, 32)).cautions).toMatchObject([{ code: "hiddenCountermovement" }]);
    expect(unwrap(dynamicStrengthIndex(2500, 2400)).cautions).toMatchObject([{ code: "pullBelowJump" }]);
    expect(unwrap(eccentricUtilisationRatio(32, 32)).cautions).toEqual([]);
    expect(unwrap(dynamicStrengthIndex(2400, 2400)).cautions).toEqual([]);
  });

  const all = [
    reactiveStrengthIndex,
    flightContactRatio,
    modifiedReactiveStrengthIndex,
    eccentricUtilisationRatio,
    dynamicStrengthIndex,
    normalisedHop,
  ];

  test.each(all)("%p refuses a part that is zero, negative or no number", (ratio) => {
    for (const [one, other] of [
      [0, 1],
      [1, 0],
      [-1, 1],
      [1, Number.NaN],
    ] as const) {
      // biome-ignore format: pairs
      expect(ratio(one, other).ok).toBe(false);
    }
  });

  test.each(all)("%p never gives NaN or Infinity", (ratio) => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (one, other) => {
        expect(notFinitePaths(ratio(one, other))).toEqual([]);
      }),
    );
  });
});
