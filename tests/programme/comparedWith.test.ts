import { comparedWith, fewestCompared } from "../../src/programme/comparedWith";
import { priorities } from "../../src/programme/priorities";
import { qualityProfiles } from "../../src/programme/qualityProfile";
import { testResult } from "../../src/reading/testResult";
import type { Background } from "../../src/store/background";
import type { Comparison } from "../../src/store/comparison";
import { batteryTest, squadMember } from "../sheet/storeRows";

const names = (letter: string, count: number) => Array.from({ length: count }, (_, index) => `${letter}${index + 1}`);
const adults = names("A", 6);
const juniors = names("J", 6);
const keepers = names("K", 3);

const background = (comparison?: Comparison): Background => ({
  squad: [
    ...adults.map((name) => squadMember(name, { group: "Seniors", role: "Back", birthYear: 1998 })),
    ...juniors.map((name) => squadMember(name, { group: "Under-18", role: "Back", birthYear: 2010 })),
    ...keepers.map((name) => squadMember(name, { group: "Seniors", role: "Goalkeeper" })),
  ],
  battery: [batteryTest("Jump", { quality: "Lower-body power", unit: "cm" })],
  weights: [],
  ...(comparison ? { comparedWith: comparison } : {}),
});

const jump = (athlete: string, value: number) =>
  testResult({ athlete, test: "Jump", value, unit: "cm", date: "2026-08-13" });
// Under-18s jump 20 cm less: a mean of 42.5 and 22.5 cm, a standard deviation of 1.870829 cm (by hand, of 40 to 45).
const results = [
  ...adults.map((name, index) => jump(name, 40 + index)),
  ...juniors.map((name, index) => jump(name, 20 + index)),
  ...keepers.map((name) => jump(name, 41)),
];

const profileOf = (athlete: string, comparison?: Comparison) =>
  qualityProfiles(results, background(comparison)).find((one) => one.athlete === athlete)!;

describe("whom athletes are compared with", () => {
  it("is the squad, until the coach says otherwise", () => {
    expect(profileOf("J6").comparedWith).toMatchObject({ name: "the squad", athletes: 15 });
    expect(profileOf("J6").qualities[0]!.z).toBeLessThan(0);
  });

  it.each(["group", "age"] as const)(
    "by %s, the best under-18 is the best of hers, not below all adults",
    (comparison) => {
      const { qualities, comparedWith: others } = profileOf("J6", comparison);
      expect(qualities[0]!.z).toBeCloseTo(2.5 / 1.870829, 5);
      expect(others.athletes).toBe(6);
      expect(others.name).toBe(comparison === "group" ? "the group Under-18" : "the under-18s");
    },
  );

  it("falls back on the squad where the group is too small, or nothing says who belongs to it", () => {
    expect(keepers.length).toBeLessThan(fewestCompared);
    expect(profileOf("K1", "role").comparedWith.name).toBe("the squad");
    expect(profileOf("K1", "age").comparedWith.name).toBe("the squad");
    expect(profileOf("K1", "role").qualities[0]!.z).toBe(profileOf("K1").qualities[0]!.z);
    expect(comparedWith(results, background("role"))("Nobody").name).toBe("the squad");
  });

  it("is named in the reason of a priority", () => {
    const said = background("group");
    const { priorities: found } = priorities(qualityProfiles(results, said), [], said, { most: 3 });
    expect(found.find(({ athlete }) => athlete === "J1")!.why).toContain("1.3 SD below the group Under-18.");
  });
});
