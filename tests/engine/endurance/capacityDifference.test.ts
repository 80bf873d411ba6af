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
    expect(difference).toMatchObject({
      difference: 2,
      atLeast: false,
      cautions: [
        {
          code: "smallCounts",
          message:
            "With scores this small (12) one repetition is a large percentage; read the difference in repetitions.",
          facts: { better: 12 },
        },
      ],
    });
    expect(difference.percentOfBetter).toBeCloseTo(83.3333, 4);
    expect(unwrap(capacityDifference(reached(30), reached(24)))).toMatchObject({ difference: -6, cautions: [] });
    expect(unwrap(capacityDifference(reached(0), reached(0))).percentOfBetter).toBeNull();
    expect(unwrap(capacityDifference(reached(0), reached(20)))).toMatchObject({ percentOfBetter: 0, cautions: [] });
    expect(unwrap(capacityDifference(reached(0), reached(19))).cautions).toHaveLength(1);
  });

  test("is at least so large when the better side was stopped, and unknown when the weaker was", () => {
    expect(unwrap(capacityDifference(reached(40), stopped(60)))).toMatchObject({ difference: 20, atLeast: true });
    for (const [left, right] of [
      [stopped(60), stopped(60)],
      [stopped(60), reached(75)],
      [reached(60), stopped(60)],
      [stopped(60), reached(60)],
    ] as const) {
      expect(capacityDifference(left, right)).toEqual({
        ok: false,
        reasons: [
          {
            code: "leftOpenByCap",
            message:
              "A side was stopped at the cap while the other scored as much or more, so their difference is not known.",
            facts: {},
          },
        ],
      });
    }
  });

  test("negative scores are refused by their sides", () => {
    expect(capacityDifference(reached(-1), reached(-5))).toMatchObject({
      ok: false,
      reasons: [
        { code: "negative", facts: { what: "left score", value: -1 } },
        { code: "negative", facts: { what: "right score", value: -5 } },
      ],
    });
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
