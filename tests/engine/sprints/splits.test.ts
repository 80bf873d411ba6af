import { unwrap } from "../../../src/engine/result";
import { splitsFrom } from "../../../src/engine/sprints/splits";

describe("splits from two lists", () => {
  test("pair distance and time, missing ones left out", () => {
    expect(unwrap(splitsFrom([5, 10, 20, null, 30], [1.1, 1.8, null, 3.5, 4.2]))).toEqual([
      { distance: 5, time: 1.1 },
      { distance: 10, time: 1.8 },
      { distance: 30, time: 4.2 },
    ]);
  });

  test("of unequal length are refused", () => {
    expect(splitsFrom([5, 10], [1.1])).toMatchObject({
      ok: false,
      reasons: [
        { code: "unequalLengths", facts: { first: "distances", second: "times", firstCount: 2, secondCount: 1 } },
      ],
    });
  });

  test("that are not positive are refused one by one, by their names", () => {
    expect(splitsFrom([0, 10], [1.1, -1.8])).toMatchObject({
      ok: false,
      reasons: [
        { code: "notPositive", facts: { what: "distance", value: 0 } },
        { code: "notPositive", facts: { what: "split time", value: -1.8 } },
      ],
    });
  });

  test.each([
    ["a distance that stands still", [5, 5], [1.1, 1.8]],
    ["a time that stands still", [5, 10], [1.1, 1.1]],
    ["a time that falls", [5, 10], [1.8, 1.1]],
  ])("with %s are refused", (_, distances, times) => {
    expect(splitsFrom(distances, times)).toEqual({
      ok: false,
      reasons: [
        {
          code: "notRising",
          message: `Distances and times must rise from split to split; ${distances[1]} m in ${times[1]} s follows 5 m in ${times[0]} s.`,
          facts: { distance: distances[1], time: times[1], distanceBefore: 5, timeBefore: times[0] },
        },
      ],
    });
  });
});
