import fc from "fast-check";
import { type CapacityScore, capacityScores } from "../../../src/engine/endurance/capacityScores";
import { unwrap } from "../../../src/engine/result";
import { notFinitePaths } from "../measurements";

const reached = (value: number): CapacityScore => ({ value, stoppedAtCap: false });
const stopped = (value: number): CapacityScore => ({ value, stoppedAtCap: true });

describe("capacity scores of a squad", () => {
  // Source: R 4.2.2 quantile(c(10, 20, 20, 30, 40), c(.25, .5, .75), type = 7).
  test("median and quartiles as R and spreadsheets give them", () => {
    const scores = unwrap(capacityScores([40, 20, 10, 30, 20].map(reached)));
    expect([scores.lowerQuartile, scores.median, scores.upperQuartile]).toEqual(
      [20, 20, 30].map((value) => ({ value, atLeast: false })),
    );
    expect(scores.cautions).toEqual([]);
  });

  test("scores stopped at the cap make the quantiles they reach at least so high", () => {
    const scores = unwrap(capacityScores([reached(20), null, reached(30), reached(40), stopped(60), stopped(60)]));
    expect(scores).toMatchObject({
      count: 5,
      stoppedAtCap: 2,
      cautions: [
        {
          code: "stoppedAtCap",
          message: "2 of 5 were stopped at the cap; their true scores are at least what was recorded.",
          facts: { stopped: 2, count: 5 },
        },
      ],
    });
    expect(scores.median).toEqual({ value: 40, atLeast: false });
    expect(scores.upperQuartile).toEqual({ value: 60, atLeast: true });
  });

  test("fewer than three and negative scores are refused", () => {
    expect(capacityScores([reached(3), null, reached(4)])).toMatchObject({
      ok: false,
      reasons: [{ code: "tooFew", facts: { what: "capacity scores", needed: 3, got: 2 } }],
    });
    expect(capacityScores([3, -4, 5].map(reached))).toMatchObject({
      ok: false,
      reasons: [{ code: "negative", facts: { what: "capacity score", value: -4 } }],
    });
    expect(capacityScores([3, 4, 5].map(reached)).ok).toBe(true);
  });

  test("of equal scores those stopped at the cap are the higher ones, and the lowest may be stopped", () => {
    const middle = unwrap(capacityScores([stopped(30), reached(30), reached(30), reached(10), stopped(60)]));
    expect(middle.median).toEqual({ value: 30, atLeast: false });
    expect(middle.upperQuartile).toEqual({ value: 30, atLeast: true });
    expect(unwrap(capacityScores([10, 20, 30].map(stopped))).lowerQuartile).toEqual({ value: 15, atLeast: true });
  });

  const aScore = fc.record({ value: fc.integer({ min: 0, max: 60 }), stoppedAtCap: fc.boolean() });

  test("whatever the stopped athletes would have reached, exact quantiles stay and the others only rise", () => {
    fc.assert(
      fc.property(
        fc.array(aScore, { minLength: 3, maxLength: 15 }),
        fc.infiniteStream(fc.nat(100)),
        (scores, extra) => {
          const recorded = unwrap(capacityScores(scores));
          const truth = unwrap(
            capacityScores(
              scores.map(({ value, stoppedAtCap }) => reached(stoppedAtCap ? value + extra.next().value : value)),
            ),
          );
          for (const part of ["lowerQuartile", "median", "upperQuartile"] as const) {
            if (recorded[part].atLeast) expect(truth[part].value).toBeGreaterThanOrEqual(recorded[part].value);
            else expect(truth[part].value).toBe(recorded[part].value);
          }
          expect(notFinitePaths(recorded)).toEqual([]);
        },
      ),
    );
  });
});
