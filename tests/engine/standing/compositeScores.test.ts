import { unwrap } from "../../../src/engine/result";
import { compositeScores, type WeightedQuality } from "../../../src/engine/standing/compositeScores";
import { squadRanks } from "../../../src/engine/standing/squadRanks";
import { tScores } from "../../../src/engine/standing/tScores";
import { zScores } from "../../../src/engine/standing/zScores";
import { column, expected, expectRelative, labels } from "../../reference/reference";
import { eventDirection } from "../../reference/standingSets";

describe("composite by quality and role", () => {
  const athletes = labels("heptathlon", "athlete");

  // Source: R 4.2.2 scale and weighted sums.
  test.each(["composite", "composite_equal"])("heptathlon, %s", (key) => {
    const reference = expected("heptathlon")[key];
    const weighted = Object.entries<number>(reference.weights).map(([event, weight]) => ({
      quality: event,
      weight,
      tests: [{ test: event, weight: 1, direction: eventDirection(event), scores: column("heptathlon", event) }],
    }));
    const { composites, coverage } = unwrap(compositeScores(weighted));
    const t = unwrap(tScores(composites, { direction: "higher" }));
    athletes.forEach((athlete, index) => {
      expect(composites[index]!).toBeCloseTo(reference.composite_z[athlete], 9);
      expectRelative(t[index]!, reference.composite_T_restandardised[athlete], 1e-9);
      expect(coverage[index]).toBeCloseTo(1, 12);
    });
    const ranks = athletes.map((athlete) => reference.rank[athlete]);
    expect(unwrap(squadRanks(composites, { direction: "higher" }))).toEqual(ranks);
  });

  const quality = (name: string, weight: number, ...tests: (number | null)[][]): WeightedQuality => ({
    quality: name,
    weight,
    tests: tests.map((scores, index) => ({ test: `${name} ${index}`, weight: 1, direction: "higher", scores })),
  });

  test("two tests of one quality count as one quality", () => {
    const speed = [1, 2, 3, 5];
    const strength = [4, 1, 2, 9];
    const once = unwrap(compositeScores([quality("speed", 1, speed), quality("strength", 1, strength)]));
    const twice = unwrap(compositeScores([quality("speed", 1, speed, speed), quality("strength", 1, strength)]));
    twice.composites.forEach((composite, index) => {
      expect(composite).toBeCloseTo(once.composites[index]!, 12);
    });
  });

  test("below 70 % of the weight an athlete has no composite, from there on the rest is weighted anew", () => {
    const speed = [1, 2, 3, 5];
    const strength = [4, 1, 2, null];
    const result = unwrap(compositeScores([quality("speed", 7, speed), quality("strength", 3, strength)]));
    const z = unwrap(zScores(speed, { direction: "higher" }));
    expect(result.composites[3]).toBeCloseTo(z[3]!, 12);
    expect(result.coverage[3]).toBeCloseTo(0.7, 12);
    const less = unwrap(compositeScores([quality("speed", 6.9, speed), quality("strength", 3.1, strength)]));
    expect(less.composites[3]).toBeNull();
    expect(less.qualities[1]!.scores[3]).toBeNull();
  });

  // Source: by hand: z of 1, 2, 3 is -1, 0, 1; weights 3 and 1.
  test("the tests of a quality count by their weights, and so does the coverage", () => {
    const { qualities, composites, coverage } = unwrap(
      compositeScores([
        {
          quality: "speed",
          weight: 2,
          tests: [
            { test: "sprint", weight: 3, direction: "higher", scores: [1, 2, 3, null] },
            { test: "shuttle", weight: 1, direction: "higher", scores: [null, 1, 2, 3] },
          ],
        },
      ]),
    );
    expect(qualities).toEqual([{ quality: "speed", scores: [-1, -0.25, 0.75, 1] }]);
    expect(coverage).toEqual([0.75, 1, 1, 0.25]);
    expect(composites).toEqual([-1, -0.25, 0.75, null]);
  });

  test("bad weights, unequal lists and tests without spread are refused, each with its reason", () => {
    const noTest = { reasons: [{ code: "tooFew", facts: { what: "tests of each quality", needed: 1, got: 0 } }] };
    expect(compositeScores([])).toMatchObject(noTest);
    expect(compositeScores([quality("speed", 1, [1, 2, 3]), quality("strength", 1)])).toMatchObject(noTest);
    const sprint = { test: "sprint", weight: -1, direction: "lower", scores: [1, 2, 3] } as const;
    const hop = { test: "hop", weight: 0, direction: "higher", scores: [1, 2] } as const;
    expect(compositeScores([{ quality: "speed", weight: 0, tests: [sprint, hop] }])).toMatchObject({
      reasons: [
        { code: "notPositive", facts: { what: "the weight of speed", value: 0 } },
        { code: "notPositive", facts: { what: "the weight of sprint", value: -1 } },
        { code: "notPositive", facts: { what: "the weight of hop", value: 0 } },
        {
          code: "unequalLengths",
          facts: { first: "scores of sprint", second: "scores of hop", firstCount: 3, secondCount: 2 },
        },
      ],
    });
    expect(compositeScores([quality("speed", 1, [2, 2, 2])])).toMatchObject({
      reasons: [{ code: "noSpread", facts: { what: "scores" } }],
    });
  });
});
