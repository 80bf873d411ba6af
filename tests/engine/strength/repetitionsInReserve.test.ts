import { unwrap } from "../../../src/engine/result";
import { repetitionsInReserve } from "../../../src/engine/strength/repetitionsInReserve";

describe("repetitions in reserve from the rating of a set", () => {
  // Source: the scale of Zourdos et al. 2016, J Strength Cond Res 30:267-275 (from memory).
  test.each([
    [10, 0],
    [9.5, 0.5],
    [9, 1],
    [8, 2],
    [7, 3],
  ])("rating %d is %d in reserve", (rating, reserve) => {
    expect(unwrap(repetitionsInReserve(rating))).toBe(reserve);
  });

  test("outside the scale is refused", () => {
    for (const value of [0.5, 11]) {
      expect(repetitionsInReserve(value)).toMatchObject({
        ok: false,
        reasons: [{ code: "outOfRange", facts: { what: "perceived exertion of the set", low: 1, high: 10, value } }],
      });
    }
    expect(repetitionsInReserve(Number.NaN).ok).toBe(false);
  });
});
