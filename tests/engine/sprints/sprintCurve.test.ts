import fc from "fast-check";
import {
  accelerationAt,
  curveRefusals,
  distanceAt,
  timeToDistance,
  velocityAt,
} from "../../../src/engine/sprints/sprintCurve";
import { expectRelative } from "../../reference/reference";

const aCurve = fc.record({
  maximalVelocity: fc.double({ min: 4, max: 13, noNaN: true }),
  timeConstant: fc.double({ min: 0.4, max: 2.5, noNaN: true }),
});

describe("the sprint curve", () => {
  // Source: R 4.2.2 uniroot(tol = 1e-13).
  test.each([
    [9.2, 1.25, [5, 10, 15, 20, 30, 40], [1.378579072, 2.10490061, 2.740921215, 3.337336434, 4.47605432, 5.583470744]],
    [8, 1, [5, 10, 20, 30], [1.371197033, 2.131319396, 3.468847073, 4.741272466]],
  ])("%d m/s and %d s reaches its gates when R says", (maximalVelocity, timeConstant, distances, times) => {
    distances.forEach((distance, index) => {
      expectRelative(timeToDistance(distance, { maximalVelocity, timeConstant }), times[index]!, 1e-9);
    });
  });

  test("time to a distance and distance at a time undo each other", () => {
    fc.assert(
      fc.property(aCurve, fc.double({ min: 0.01, max: 100, noNaN: true }), (curve, distance) => {
        expectRelative(distanceAt(timeToDistance(distance, curve), curve), distance, 1e-11);
      }),
    );
    expect(timeToDistance(0, { maximalVelocity: 9, timeConstant: 1 })).toBe(0);
  });

  test("a curve at the ends of the range is a human sprint, beyond them it is none", () => {
    expect(curveRefusals({ maximalVelocity: 4, timeConstant: 2.5 })).toEqual([]);
    expect(curveRefusals({ maximalVelocity: 13, timeConstant: 0.4 })).toEqual([]);
    expect(curveRefusals({ maximalVelocity: 3.9, timeConstant: 2.6 })).toMatchObject([
      { code: "outOfRange", facts: { what: "maximal velocity", low: 4, high: 13, value: 3.9 } },
      { code: "outOfRange", facts: { what: "time constant", low: 0.4, high: 2.5, value: 2.6 } },
    ]);
  });

  test("velocity is the slope of distance, acceleration that of velocity", () => {
    fc.assert(
      fc.property(aCurve, fc.double({ min: 0.2, max: 5, noNaN: true }), (curve, time) => {
        const slope = (of: typeof distanceAt) => (of(time + 1e-4, curve) - of(time - 1e-4, curve)) / 2e-4;
        expectRelative(slope(distanceAt), velocityAt(time, curve), 1e-6);
        expectRelative(slope(velocityAt), accelerationAt(time, curve), 1e-6);
      }),
    );
  });
});
