import fc from "fast-check";
import { groupsByLowestQualities } from "../../../src/engine/grouping/groupsByLowestQualities";
import { cell } from "../measurements";

const qualities = ["strength", "speed", "power", "endurance"];

describe("groups by the two lowest qualities", () => {
  // Source: by hand.
  test("put athletes with the same two together, the largest group first", () => {
    const { groups, ungrouped } = groupsByLowestQualities(qualities, [
      { athlete: "A", z: [1, 1, -1, -2] },
      { athlete: "B", z: [-1, -2, 0, 1] },
      { athlete: "C", z: [-0.2, -0.1, 0, 1] },
      { athlete: "D", z: [null, null, 0, 1] },
      { athlete: "E", z: [0, null, 1, -1] },
    ]);
    expect(groups).toEqual([
      { lowest: ["strength", "speed"], athletes: ["B", "C"] },
      { lowest: ["strength", "endurance"], athletes: ["E"] },
      { lowest: ["power", "endurance"], athletes: ["A"] },
    ]);
    expect(ungrouped).toEqual(["D"]);
  });

  test("take the quality named first when two are equally low", () => {
    const { groups } = groupsByLowestQualities(qualities, [{ athlete: "A", z: [0, 0, 0, 0] }]);
    expect(groups[0]!.lowest).toEqual(["strength", "speed"]);
    const one = groupsByLowestQualities(qualities, [{ athlete: "A", z: [0, 0, -1, 0] }], { compared: 1 });
    expect(one.groups[0]!.lowest).toEqual(["power"]);
  });

  test("an untested quality is never among the lowest", () => {
    const { groups } = groupsByLowestQualities(qualities, [{ athlete: "A", z: [1, null, 2, 3] }]);
    expect(groups[0]!.lowest).toEqual(["strength", "power"]);
  });

  test("groups of one size come in the order of their first quality, then of their second", () => {
    const { groups } = groupsByLowestQualities(qualities, [
      { athlete: "A", z: [1, 1, -1, -1] },
      { athlete: "B", z: [-1, 1, 1, -1] },
      { athlete: "C", z: [-1, 1, -1, 1] },
      { athlete: "D", z: [-1, -1, 1, 1] },
    ]);
    expect(groups.flatMap(({ athletes }) => athletes)).toEqual(["D", "C", "B", "A"]);
  });

  test("a profile of another length throws", () => {
    expect(() => groupsByLowestQualities(qualities, [{ athlete: "A", z: [1] }])).toThrow(
      "A profile needs one score (or null) for each quality.",
    );
    for (const compared of [0, 1.5]) {
      expect(() => groupsByLowestQualities(qualities, [], { compared })).toThrow("At least one quality is compared.");
    }
  });

  test("everybody is in exactly one place, and in a group by qualities no other tested one is below", () => {
    const profile = fc.array(cell(-3, 3), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(fc.array(profile, { maxLength: 12 }), (scores) => {
        const profiles = scores.map((z, index) => ({ athlete: `${index}`, z }));
        const { groups, ungrouped } = groupsByLowestQualities(qualities, profiles);
        const placed = [...groups.flatMap(({ athletes }) => athletes), ...ungrouped].sort();
        expect(placed).toEqual(profiles.map(({ athlete }) => athlete).sort());
        for (const { lowest, athletes } of groups) {
          for (const athlete of athletes) {
            const z = scores[Number(athlete)]!;
            const of = (isLowest: boolean) =>
              z.filter((score, index) => score !== null && lowest.includes(qualities[index]!) === isLowest).map(Number);
            expect(Math.max(...of(true))).toBeLessThanOrEqual(Math.min(...of(false)));
          }
        }
      }),
    );
  });
});
