import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { perceivedExertion } from "../../../src/engine/strength/perceivedExertion";
import { repetitionsInReserve } from "../../../src/engine/strength/repetitionsInReserve";

describe("repetitions in reserve and the rating of the set", () => {
  // Source: the scale of Zourdos et al. 2016, J Strength Cond Res 30:267-275 (from memory).
  test.each([
    [10, 0],
    [9.5, 0.5],
    [9, 1],
    [8, 2],
    [7, 3],
  ])("rating %d is %d in reserve", (rating, reserve) => {
    expect(unwrap(repetitionsInReserve(rating))).toBe(reserve);
    expect(unwrap(perceivedExertion(reserve))).toBe(rating);
  });

  test("turn into each other", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 20 }), (halves) => {
        expect(unwrap(perceivedExertion(unwrap(repetitionsInReserve(halves / 2))))).toBe(halves / 2);
      }),
    );
  });

  test("outside the scale they are refused", () => {
    for (const rating of [0.5, 11, Number.NaN]) expect(repetitionsInReserve(rating).ok).toBe(false);
    for (const reserve of [-1, 9.5, Number.NaN]) expect(perceivedExertion(reserve).ok).toBe(false);
  });
});
