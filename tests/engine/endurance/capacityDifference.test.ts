import fc from "fast-check";
import { capacityDifference } from "../../../src/engine/endurance/capacityDifference";
import type { CapacityScore } from "../../../src/engine/endurance/capacityScores";
import { unwrap } from "../../../src/engine/result";

const reached = (value: number): CapacityScore => ({ value, stoppedAtCap: false });
const stopped = (value: number): CapacityScore => ({ value, stoppedAtCap: true });

describe("the side-to-side difference of capacity scores", () => {
  // Source: by hand.
  test("comes in repetitions, with a caution when counts are small", () => {
    const difference = unwrap(capacityDifference(reached(10), reached(12)));
    expect(difference).toMatchObject({ difference: 2, atLeast: false, cautions: [{ code: "smallCounts" }] });
    expect(difference.percentOfBetter).toBeCloseTo(83.3333, 4);
    expect(unwrap(capacityDifference(reached(30), reached(24)))).toMatchObject({ difference: -6, cautions: [] });
    expect(unwrap(capacityDifference(reached(0), reached(0))).percentOfBetter).toBeNull();
  });

  test("is at least so large when the better side was stopped, and unknown when the weaker was", () => {
    expect(unwrap(capacityDifference(reached(40), stopped(60)))).toMatchObject({ difference: 20, atLeast: true });
    for (const [left, right] of [
      [stopped(60), stopped(60)],
      [stopped(60), reached(75)],
      [reached(60), stopped(60)],
      [stopped(60), reached(60)],
      [reached(-1), reached(5)],
    ] as const) {
      expect(capacityDifference(left, right).ok).toBe(false);
    }
  });

  test("changes only its sign when the sides change places", () => {
    fc.assert(
      fc.property(fc.nat(60), fc.nat(60), (one, other) => {
        const there = unwrap(capacityDifference(reached(one), reached(other)));
        const back = unwrap(capacityDifference(reached(other), reached(one)));
        expect(there.difference + back.difference).toBe(0);
        expect(there.percentOfBetter).toBe(back.percentOfBetter);
      }),
    );
  });
});
