import { priorities } from "../../src/programme/priorities";
import { qualityProfiles } from "../../src/programme/qualityProfile";
import { trainingGroups } from "../../src/programme/trainingGroups";
import { weakerSides } from "../../src/programme/weakerSides";
import { testResult } from "../../src/reading/testResult";
import type { Background } from "../../src/store/background";
import type { BatteryTest } from "../../src/store/battery";

const test = (name: string, quality: string, more: Partial<BatteryTest> = {}): BatteryTest => ({
  test: name,
  measure: null,
  quality,
  unit: "cm",
  direction: "higher",
  sides: 1,
  trials: 2,
  reduction: "mean",
  lowest: null,
  highest: null,
  retestAfterWeeks: 8,
  protocol: null,
  caution: null,
  ...more,
});

const member = (athlete: string, role: string | null = null) => ({
  athlete,
  role,
  group: null,
  dominantSide: null,
  birthYear: null,
  bodyMass: null,
  stature: null,
  notes: null,
});

const background: Background = {
  squad: ["A", "B", "C", "D"].map((name) => member(name, name === "A" ? "Wing" : null)),
  battery: [
    test("Jump", "Lower-body power"),
    test("Sprint", "Speed", { unit: "s", direction: "lower" }),
    test("Throw", "Upper-body power"),
  ],
  weights: [{ quality: "Speed", role: "Wing", weight: 2 }],
};

const twice = (athlete: string, name: string, value: number, unit = "cm") =>
  [value * 0.995, value * 1.005].map((trial, index) =>
    testResult({ athlete, test: name, value: trial, unit, attempt: index + 1 }),
  );

const results = [
  // Jump 30 40 50 60: mean 45, SD sqrt(500/3) = 12.909944 (by hand), z -1.161895 -0.387298 0.387298 1.161895.
  ...[30, 40, 50, 60].flatMap((value, index) => twice("ABCD"[index]!, "Jump", value)),
  // Sprint 4.6 4.5 4.4 4.3, lower is better: the same z.
  ...[4.6, 4.5, 4.4, 4.3].flatMap((value, index) => twice("ABCD"[index]!, "Sprint", value, "s")),
];

describe("profiles by quality", () => {
  const profiles = qualityProfiles(results, background);

  it("give each athlete's z in each quality, the better way round", () => {
    const [first] = profiles;
    expect(first!.qualities.map(({ quality }) => quality)).toEqual(["Lower-body power", "Speed", "Upper-body power"]);
    expect(first!.qualities[0]!.z).toBeCloseTo(-1.161895, 6);
    expect(first!.qualities[1]!.z).toBeCloseTo(-1.161895, 6);
    expect(first!.qualities[2]).toMatchObject({ z: null, judgement: "not tested" });
  });

  it("carry their standard error: trial scatter over the squad's spread", () => {
    // Trials 0.5 % to either side: SD of logs 0.00707 pooled, of a mean of two 0.005; at 30 cm 0.15 cm over 12.91 cm.
    expect(profiles[0]!.qualities[0]!.standardError).toBeCloseTo(0.15 / 12.909944, 4);
    expect(profiles[0]!.qualities[0]!.judgement).toBe("weakness");
    expect(profiles[3]!.qualities[0]!.judgement).toBe("strength");
    expect(profiles[1]!.qualities[0]!.judgement).toBe("in between");
  });

  it("make no standing of fewer than three athletes", () => {
    const few = qualityProfiles(
      results.filter(({ athlete }) => athlete < "C"),
      background,
    );
    expect(few[0]!.qualities.every(({ z }) => z === null)).toBe(true);
  });

  it("group athletes by their lowest qualities", () => {
    const { ungrouped } = trainingGroups(profiles);
    // Two tested qualities are one too few to name the two lowest.
    expect(ungrouped).toEqual(["A", "B", "C", "D"]);
  });
});

describe("priorities", () => {
  const profiles = qualityProfiles(results, background);
  const found = priorities(profiles, [], background, { most: 3 });
  const of = (athlete: string) => found.priorities.filter((one) => one.athlete === athlete);

  it("put what counts twice for the role first, with the numbers behind it", () => {
    expect(of("A").map(({ rank, quality }) => [rank, quality])).toEqual([
      [1, "Speed"],
      [2, "Lower-body power"],
    ]);
    expect(of("A")[0]!.why).toBe("1.2 SD below the squad, and it counts 2 for a wing. Sprint 4.6 s (−1.2 SD).");
  });

  it("let an athlete who is below in nothing build on a strength", () => {
    expect(of("D")).toHaveLength(1);
    expect(of("D")[0]!.why).toContain("Below the squad in nothing: build on it");
  });

  it("say who lacks tests, and invent nothing for them", () => {
    const late = { ...background, squad: [...background.squad, member("E")] };
    const answer = priorities(qualityProfiles(results, late), [], late, { most: 3 });
    expect(answer.missing).toEqual(["E: no test of the battery with enough others to compare with."]);
    expect(answer.priorities.some(({ athlete }) => athlete === "E")).toBe(false);
  });

  it("name a side that is weaker beyond noise", () => {
    const hop = (athlete: string, left: readonly number[], right: readonly number[]) =>
      [...left.map((value) => ["left", value] as const), ...right.map((value) => ["right", value] as const)].map(
        ([side, value], index) => testResult({ athlete, test: "Hop", side, value, unit: "cm", attempt: index + 1 }),
      );
    const twoSided = { ...background, battery: [test("Hop", "Lower-body power", { sides: 2, trials: 3 })] };
    const hops = [
      ...hop("A", [150, 151, 149], [120, 121, 119]),
      ...hop("B", [140, 141, 142], [141, 140, 142]),
      ...hop("C", [160, 158, 161], [159, 161, 160]),
    ];
    const sides = weakerSides(hops, twoSided);
    expect(sides.map(({ athlete, side }) => [athlete, side])).toEqual([["A", "right"]]);
    const answer = priorities(qualityProfiles(hops, twoSided), sides, twoSided, { most: 3 });
    expect(answer.priorities.find(({ athlete }) => athlete === "A")!.why).toContain(
      "Hop: the right is 20 % weaker, beyond the test's noise.",
    );
  });
});
