import { squadOutliers } from "../../../src/engine/flags/squadOutliers";
import { expected, fullColumn } from "../../reference/reference";

const codes = (squad: readonly (number | null)[]) => squadOutliers(squad).map((flag) => flag?.code ?? null);

describe("scores far from the squad", () => {
  // Source: R 4.2.2, modified z scores of the hurdles of HSAUR3::heptathlon (median 13.75, MAD 0.32); the last, 16.42 s, has
  // -5.62785938 with the sign turned for times.
  test("are exactly the ones R puts beyond 3.5", () => {
    const scores: number[] = Object.values(expected("heptathlon").standing.hurdles.modified_z);
    const flags = squadOutliers(fullColumn("heptathlon", "hurdles"));
    expect(flags.map((flag) => flag !== null)).toEqual(scores.map((score) => Math.abs(score) > 3.5));
    expect(flags.filter((flag) => flag !== null)).toHaveLength(1);
    expect(flags.at(-1)!.facts.modifiedZScore).toBeCloseTo(-scores.at(-1)!, 10);
  });

  test("keep their places past missing scores, on either side", () => {
    expect(codes([10, null, 11, 12, 13, 90])).toEqual([null, null, null, null, null, "squadOutlier"]);
    expect(codes([-90, 10, 11, 12, 13])).toEqual(["squadOutlier", null, null, null, null]);
  });

  // Source: by hand: median 12, median distance 1, 0.6745 x (90 - 12) / 1 = 52.611.
  test("are told with the median and the score", () => {
    const flag = squadOutliers([10, null, 11, 12, 13, 90]).at(-1)!;
    expect(flag.reason).toBe(
      "90 is far from the rest of the squad (median 12, modified z score 52.6): an error, or an exceptional athlete.",
    );
    expect(flag.facts).toEqual({ value: 90, median: 12, modifiedZScore: expect.closeTo(52.611, 9), athletes: 5 });
  });

  test("are not told among fewer than five athletes or in a squad mostly alike", () => {
    expect(squadOutliers([10, 11, 12, 90])).toEqual([null, null, null, null]);
    expect(squadOutliers([10, 10, 10, 10, 90])).toEqual([null, null, null, null, null]);
    expect(squadOutliers([])).toEqual([]);
  });
});
