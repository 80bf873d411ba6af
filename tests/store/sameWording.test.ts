import { germanTableWords } from "../../src/language/tableWords";
import { demandNames, demandTemplates } from "../../src/programme/demandTemplates";
import { demandWeights } from "../../src/programme/demandWeights";
import { exerciseLibrary } from "../../src/programme/exerciseLibrary";
import { noBackground, weightFor } from "../../src/store/background";
import { readyBatteries } from "../../src/store/readyBatteries";
import { isSameWording, wordingKey } from "../../src/store/sameName";
import { batteryTest, squadMember } from "../sheet/storeRows";

const german = (english: string): string | undefined => (germanTableWords as Readonly<Record<string, string>>)[english];

const offered = [
  ...Object.values(demandNames),
  ...demandTemplates.flatMap(({ roles }) => Object.keys(roles)),
  ...readyBatteries.flatMap(({ tests }) => tests.map(({ test }) => test)),
  ...exerciseLibrary.map(({ exercise }) => exercise),
];

describe("isSameWording(one, other)", () => {
  it.each([...new Set(offered)])("knows %s again in German, and takes it for nothing else", (english) => {
    expect(german(english)).toBeDefined();
    expect(isSameWording(german(english)!, english)).toBe(true);
    expect(wordingKey(english)).toBe(english.toLowerCase());
  });

  it("leaves a coach's own words apart", () => {
    expect(isSameWording("Kraft", "Ausdauer")).toBe(false);
    expect(isSameWording("rhythm ", "Rhythm")).toBe(true);
  });
});

it("a template reads a workbook that was set up in German", () => {
  const qualities = Object.values(demandNames);
  const background = {
    ...noBackground,
    squad: [squadMember("A", { role: "Kreis" })],
    battery: qualities.map((quality) => batteryTest(quality, { quality: german(quality)! })),
  };
  const handball = demandTemplates[0]!;
  const said = demandWeights(handball, background);
  expect({ ...said, weights: [] }).toEqual({ weights: [], unknownRoles: [], unknownQualities: [], untested: [] });
  const { muscleCapacity, ...asked } = handball.roles.Pivot!;
  for (const [demanded, weight] of Object.entries(asked)) {
    const quality = demandNames[demanded as keyof typeof demandNames];
    expect(weightFor({ ...background, weights: said.weights }, quality, "Pivot")).toBe(weight);
  }
  expect(weightFor({ ...background, weights: said.weights }, "Kraftausdauer", "Kreis")).toBe(muscleCapacity.trunk);
});
