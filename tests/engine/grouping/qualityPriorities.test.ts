import fc from "fast-check";
import { qualityPriorities } from "../../../src/engine/grouping/qualityPriorities";
import { unwrap } from "../../../src/engine/result";
import { measurement, notFinitePaths } from "../measurements";

const athlete = [
  { name: "mobility", z: -0.4, target: 0, weight: 1 },
  { name: "strength", z: -1, target: 0.5, weight: 2 },
  { name: "speed", z: 0.2, target: 0.5, weight: 3, trainability: 0.5 },
  { name: "power", z: 1.2, target: 0.5, weight: 3 },
  { name: "endurance", z: null, target: 0.5, weight: 9 },
];

describe("what to train first", () => {
  // Source: by hand: 2 x 1.5 x 1 = 3, 3 x 0.3 x 0.5 = 0.45, 1 x 0.4 x 1 = 0.4; power is above its target.
  test("shows the parts of each priority, the highest first", () => {
    const { priorities, untested } = unwrap(qualityPriorities(athlete, { top: 9 }));
    expect(priorities.map(({ name }) => name)).toEqual(["strength", "speed", "mobility"]);
    expect(priorities[0]).toEqual({ name: "strength", priority: 3, weight: 2, shortfall: 1.5, trainability: 1 });
    expect(priorities[1]!.priority).toBeCloseTo(0.45, 12);
    expect(priorities[2]!.priority).toBeCloseTo(0.4, 12);
    expect(untested).toEqual(["endurance"]);
    const [first] = priorities;
    expect(unwrap(qualityPriorities(athlete, { top: 1 })).priorities).toEqual([first]);
  });

  test("are three unless more are asked for", () => {
    const five = ["a", "b", "c", "d", "e"].map((name) => ({ name, z: -1, target: 0, weight: 1 }));
    expect(unwrap(qualityPriorities(five)).priorities.map(({ name }) => name)).toEqual(["a", "b", "c"]);
  });

  test("wild scores, negative weights and a trainability in percent are refused, all at once", () => {
    const result = qualityPriorities([{ name: "strength", z: 50, target: Number.NaN, weight: -1, trainability: 80 }]);
    expect(result).toMatchObject({
      ok: false,
      reasons: [
        { code: "outOfRange", facts: { what: "z score of strength", low: -10, high: 10, value: 50 } },
        { code: "notFinite", facts: { what: "target of strength" } },
        { code: "negative", facts: { what: "weight of strength", value: -1 } },
        { code: "outOfRange", facts: { what: "trainability of strength", low: 0, high: 1, value: 80 } },
      ],
    });
  });

  test("a lower score never lowers a priority, never NaN", () => {
    fc.assert(
      fc.property(measurement(-4, 4), measurement(-4, 4), measurement(0, 5), (score, target, weight) => {
        const priority = (value: number) =>
          unwrap(qualityPriorities([{ name: "speed", z: value, target, weight }])).priorities[0]?.priority ?? 0;
        expect(priority(score - 1)).toBeGreaterThanOrEqual(priority(score));
      }),
    );
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), fc.double(), (score, target, weight, trainability) => {
        expect(notFinitePaths(qualityPriorities([{ name: "speed", z: score, target, weight, trainability }]))).toEqual(
          [],
        );
      }),
    );
  });
});
