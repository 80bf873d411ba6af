import { noiseOfAthletes } from "../../../src/engine/reliability/noiseOfAthletes";
import { pooledNoise } from "../../../src/engine/reliability/pooledNoise";
import { steadiedNoise } from "../../../src/engine/reliability/steadiedNoise";
import { unwrap } from "../../../src/engine/result";

const sets = [[180, 185, 178], [200, null, 196], [150, 152, 149, 155], [null, 160], []];

describe("pooledNoise(sets)", () => {
  it("pools the squares of the logarithms within sets", () => {
    // Source: numpy 2 log and var, pooled over sets of unequal size.
    const noise = unwrap(pooledNoise(sets));
    expect(noise.logStandardDeviation).toBeCloseTo(0.01779600408030156, 14);
    expect(noise).toMatchObject({ degreesOfFreedom: 6, setCount: 3 });
  });

  it("refuses what has no logarithm, single trials and copied trials", () => {
    expect(pooledNoise([[180, 0]])).toMatchObject({ reasons: [{ code: "notPositive" }] });
    expect(pooledNoise([[180], [200, null]])).toMatchObject({ reasons: [{ code: "tooFew" }] });
    expect(pooledNoise([[180.1, 180.1, 180.1]])).toMatchObject({ reasons: [{ code: "noSpread" }] });
  });
});

describe("noiseOfAthletes(athletes, source)", () => {
  const athletes = [
    [
      [150, 154, 149],
      [151, 152, 158],
    ],
    [
      [160, 171, 163],
      [165, 160, 158],
    ],
    [[140], [141, 140, 144]],
    [[170], [171]],
  ];

  it("is each athlete's own, and refused to one with single trials", () => {
    const own = noiseOfAthletes(athletes, "athlete");
    expect(own.slice(0, 3)).toEqual(athletes.slice(0, 3).map(pooledNoise));
    expect(own[3]).toMatchObject({ ok: false });
  });

  it("is everybody's trials pooled, the same for all", () => {
    const group = noiseOfAthletes(athletes, "group");
    expect(group).toEqual(athletes.map(() => pooledNoise(athletes.flat())));
  });

  it("is steadied, or the group's where fewer than three athletes have repeated trials", () => {
    expect(noiseOfAthletes(athletes, "steadied").map(unwrap)).toEqual(unwrap(steadiedNoise(athletes)));
    const few = athletes.slice(2);
    expect(noiseOfAthletes(few, "steadied")).toEqual(noiseOfAthletes(few, "group"));
  });
});
