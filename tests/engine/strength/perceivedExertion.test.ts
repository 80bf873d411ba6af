import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { perceivedExertion } from "../../../src/engine/strength/perceivedExertion";
import { repetitionsInReserve } from "../../../src/engine/strength/repetitionsInReserve";

describe("the rating of a set from repetitions in reserve", () => {
  // Source: the scale of Zourdos et al. 2016, J Strength Cond Res 30:267-275 (from memory).
  test.each([
    [0, 10],
    [0.5, 9.5],
    [2, 8],
  ])("%d in reserve is rated %d", (reserve, rating) => {
    expect(unwrap(perceivedExertion(reserve))).toBe(rating);
  });

  test("leads back to the rating it came from", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 20 }), (halves) => {
        expect(unwrap(perceivedExertion(unwrap(repetitionsInReserve(halves / 2))))).toBe(halves / 2);
      }),
    );
  });

  test("outside the scale is refused", () => {
    for (const value of [-1, 9.5]) {
      expect(perceivedExertion(value)).toMatchObject({
        ok: false,
        reasons: [{ code: "outOfRange", facts: { what: "repetitions in reserve", low: 0, high: 9, value } }],
      });
    }
    expect(perceivedExertion(Number.NaN).ok).toBe(false);
  });
});
