import fc from "fast-check";
import { directionFlip } from "../../../src/engine/flags/directionFlip";

// Source: by hand.
describe("a difference that changed sides", () => {
  test("says whether both sessions lie beyond the noise", () => {
    expect(directionFlip(8, -9, { noise: 5 })).toEqual({
      code: "directionFlip",
      reason:
        "The right side was larger before (8), the left side is now (9). Both differences exceed the noise: check that left and right were not swapped.",
      facts: { before: 8, now: -9, noise: 5, beyondNoise: "yes" },
    });
    expect(directionFlip(-8, 2, { noise: 5 })).toEqual({
      code: "directionFlip",
      reason: "The left side was larger before (8), the right side is now (2). One of them may be no more than noise.",
      facts: { before: -8, now: 2, noise: 5, beyondNoise: "no" },
    });
  });

  test("a difference as large as the noise is not beyond it, and nothing is beyond a noise nobody knows", () => {
    expect(directionFlip(8, -5, { noise: 5 })).toMatchObject({ facts: { beyondNoise: "no" } });
    expect(directionFlip(8, -9)).toMatchObject({ facts: { noise: 0, beyondNoise: "no" } });
  });

  test("the same side, equal limbs and a missing session are no flag", () => {
    for (const [before, now] of [
      [8, 2],
      [8, 0],
      [-8, 0],
      [0, -8],
      [null, -3],
      [3, null],
    ] as const) {
      // biome-ignore format: pairs
      expect(directionFlip(before, now)).toBeNull();
    }
  });

  test("is the same flag with left and right, or before and now, exchanged", () => {
    const asymmetry = fc.double({ min: -30, max: 30, noNaN: true });
    fc.assert(
      fc.property(asymmetry, asymmetry, (before, now) => {
        expect(directionFlip(-before, -now, { noise: 4 })?.facts.beyondNoise).toBe(
          directionFlip(now, before, { noise: 4 })?.facts.beyondNoise,
        );
      }),
    );
  });
});
