import { noiseOfAthletes } from "../../../src/engine/reliability/noiseOfAthletes";
import { pooledNoise } from "../../../src/engine/reliability/pooledNoise";
import { steadiedNoise } from "../../../src/engine/reliability/steadiedNoise";
import { unwrap } from "../../../src/engine/result";

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
