import fc from "fast-check";
import { unwrap } from "../../../src/engine/result";
import { splitVelocities } from "../../../src/engine/sprints/splitVelocities";
import { expectRelative } from "../../reference/reference";
import { cell, notFinitePaths } from "../measurements";

describe("split velocities", () => {
  // Source: R 4.2.2 arithmetic: 10 m in 1.80 s and 20 m in 3.05 s are an interval of 1.25 s at 8 m/s.
  test("of 10 m in 1.80 s and 20 m in 3.05 s", () => {
    const { intervals, fastest, cautions } = unwrap(splitVelocities([10, 20], [1.8, 3.05]));
    expectRelative(intervals[0]!.velocity, 10 / 1.8, 1e-12);
    expectRelative(intervals[1]!.seconds, 1.25, 1e-12);
    expectRelative(intervals[1]!.velocity, 8, 1e-12);
    expectRelative(fastest, 8, 1e-12);
    expect(cautions).toEqual([]);
  });

  test("a missing split joins its two intervals", () => {
    const { intervals } = unwrap(splitVelocities([10, 20, 30], [1.8, null, 4.2]));
    expect(intervals.map(({ fromDistance, toDistance }) => [fromDistance, toDistance])).toEqual([
      [0, 10],
      [10, 30],
    ]);
  });

  test("a standing start is no suspect, a gate read far too early is", () => {
    expect(unwrap(splitVelocities([5, 10, 20, 30], [1.3, 2.0, 3.2, 4.4])).cautions).toEqual([]);
    expect(unwrap(splitVelocities([5, 10, 20, 30], [1.3, 2, 2.5, 4.4])).cautions).toEqual([
      {
        code: "suspectInterval",
        message:
          "From 10 to 20 m the athlete would have run 20.0 m/s, far faster than just beside it: check the gate times.",
        facts: { fromDistance: 10, toDistance: 20, velocity: 20 },
      },
    ]);
    expect(unwrap(splitVelocities([5, 10, 20], [0.4, 1.4, 2.8])).cautions).toMatchObject([
      { code: "suspectInterval", facts: { fromDistance: 0, toDistance: 5 } },
    ]);
  });

  test("an interval is compared with the one before it too, and the last one as well", () => {
    expect(unwrap(splitVelocities([5, 10, 20], [1.3, 2.0, 2.6])).cautions).toMatchObject([
      { facts: { fromDistance: 10, toDistance: 20 } },
    ]);
    // Source: by hand: 6 m/s beside 10 m/s is a share of 0.6, which is not below it.
    expect(unwrap(splitVelocities([5, 11, 21], [1, 2, 3])).cautions).toEqual([]);
  });

  test("times that do not rise, and no splits, are refused", () => {
    expect(splitVelocities([10, 20], [1.8, 1.8])).toMatchObject({ ok: false, reasons: [{ code: "notRising" }] });
    expect(splitVelocities([], [])).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "splits", needed: 1, got: 0 } }],
    });
  });

  test("interval times and lengths add up, and nothing is NaN", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(cell(-5, 100), cell(-1, 20)), { maxLength: 8 }), (splits) => {
        const result = splitVelocities(
          splits.map(([distance]) => distance),
          splits.map(([, time]) => time),
        );
        expect(notFinitePaths(result)).toEqual([]);
        if (!result.ok) return;
        const last = splits.findLast(([distance, time]) => distance !== null && time !== null)!;
        const seconds = result.value.intervals.reduce((sum, interval) => sum + interval.seconds, 0);
        expect(seconds).toBeCloseTo(last[1]!, 9);
      }),
    );
  });
});
