import { squadOutlier } from "../../../src/engine/flags/squadOutlier";
import { expected, fullColumn } from "../../reference/reference";

describe("values far from the squad", () => {
  // Source: R 4.2.2, modified z scores of the hurdles of HSAUR3::heptathlon (median 13.75, MAD 0.32); the last, 16.42 s, has
  // -5.62785938 with the sign turned for times.
  test("flags exactly the athletes R puts beyond 3.5", () => {
    const hurdles = fullColumn("heptathlon", "hurdles");
    const scores: number[] = Object.values(expected("heptathlon").standing.hurdles.modified_z);
    hurdles.forEach((seconds, index) => {
      const flag = squadOutlier(seconds, hurdles);
      expect(flag !== null).toBe(Math.abs(scores[index]!) > 3.5);
      if (flag) expect(flag.facts.modifiedZScore).toBeCloseTo(-scores[index]!, 8);
    });
    expect(scores.filter((score) => Math.abs(score) > 3.5)).toHaveLength(1);
  });

  test("fewer than five athletes, a missing value and a squad mostly alike give no flag", () => {
    expect(squadOutlier(90, [10, 11, 12, 90])).toBeNull();
    expect(squadOutlier(null, [10, 11, 12, 13, 90])).toBeNull();
    expect(squadOutlier(90, [10, 10, 10, 10, 90])).toBeNull();
    expect(squadOutlier(90, [10, null, 11, 12, 13, 90])).toMatchObject({ code: "squadOutlier" });
  });
});
