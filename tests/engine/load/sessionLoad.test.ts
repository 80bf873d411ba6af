import { sessionLoad } from "../../../src/engine/load/sessionLoad";
import { unwrap } from "../../../src/engine/result";

describe("session load", () => {
  // Source: by hand, rating x minutes (Foster et al. 2001).
  test.each([
    [6, 70, 420],
    [4.5, 80, 360],
    [0, 30, 0],
  ])("rating %d for %d minutes is %d", (rating, minutes, load) => {
    expect(unwrap(sessionLoad(rating, minutes))).toBe(load);
  });

  test("a rating above 10, negative minutes and nonsense are refused", () => {
    for (const [rating, minutes] of [
      [70, 6],
      [5, -1],
      [Number.NaN, 60],
    ] as const) {
      // biome-ignore format: pairs
      expect(sessionLoad(rating, minutes).ok).toBe(false);
    }
  });
});
