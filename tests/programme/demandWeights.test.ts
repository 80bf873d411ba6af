import { demandTemplates } from "../../src/programme/demandTemplates";
import { demandWeights, weightsToWrite } from "../../src/programme/demandWeights";
import { type Background, noBackground } from "../../src/store/background";
import { defaultWeights, type QualityWeight } from "../../src/store/qualityWeights";
import { readyBatteries } from "../../src/store/readyBatteries";
import { batteryTest, squadMember } from "../sheet/storeRows";

const template = (sport: string) => demandTemplates.find((one) => one.sport === sport)!;

const club: Background = {
  ...noBackground,
  squad: [squadMember("A", { role: "wing" }), squadMember("B", { role: "Libero" }), squadMember("C")],
  battery: ["Throwing power", "Jumping power", "Trunk and leg capacity", "Rhythm", "Speed"].map((quality) =>
    batteryTest(`Test of ${quality}`, { quality }),
  ),
};

const of = (weights: readonly QualityWeight[], quality: string, role: string) =>
  weights.find((one) => one.quality === quality && one.role === role)?.weight;

describe("demandWeights(template, background)", () => {
  const said = demandWeights(template("Handball"), club);

  it("speaks of the qualities as the battery calls them, and of those nothing tests", () => {
    expect(of(said.weights, "Throwing power", "Back")).toBe(2);
    expect(of(said.weights, "Jumping power", "Wing")).toBe(1.5);
    expect(said.untested).toEqual(["Change of direction", "Strength", "Endurance", "Robustness"]);
    expect(of(said.weights, "Robustness", "Pivot")).toBe(1.5);
  });

  it("takes of a capacity the regions that it names", () => {
    const named = (quality: string) => ({ ...club, battery: [batteryTest("T", { quality })] });
    const weight = (quality: string) =>
      of(demandWeights(template("Cricket"), named(quality)).weights, quality, "Fast bowler");
    expect(["Muscle capacity, shoulders", "Muscle capacity, trunk", "Muscle capacity"].map(weight)).toEqual([
      1.5, 2, 2,
    ]);
  });

  it("tells roles and qualities it does not know, which count as any other", () => {
    expect(said.unknownRoles).toEqual(["Libero"]);
    expect(said.unknownQualities).toEqual(["Rhythm"]);
    expect(of(said.weights, "Speed", "Libero")).toBe(1);
    expect(of(said.weights, "Rhythm", "Back")).toBe(1);
  });

  it.each(demandTemplates)(
    "$sport knows every quality of the ready-made tests, and asks something of each role",
    (one) => {
      const battery = readyBatteries.flatMap(({ tests }) => tests);
      const { weights, unknownQualities, untested } = demandWeights(one, { ...noBackground, battery });
      expect({ unknownQualities, untested }).toEqual({ unknownQualities: [], untested: ["Robustness"] });
      for (const role of Object.keys(one.roles)) {
        const own = weights.filter((weight) => weight.role === role).map(({ weight }) => weight);
        // A role that asks for all alike would say nothing.
        expect(new Set(own).size).toBeGreaterThan(1);
        expect(own.every((weight) => weight >= 0 && weight <= 2)).toBe(true);
      }
    },
  );
});

describe("weightsToWrite(fresh, background)", () => {
  const fresh = demandWeights(template("Handball"), club).weights;
  const kept = { replaces: false };

  it("fills a table in which only ones stand, since they are nobody's judgement", () => {
    const weights = defaultWeights(["Wing"], ["Speed", "Rhythm"]);
    const { weights: written, coachs } = weightsToWrite(fresh, { ...club, weights }, kept);
    expect(coachs).toBe(0);
    expect(of(written, "Speed", "Wing")).toBe(2);
    // What stands already is not written again.
    expect(of(written, "Rhythm", "Wing")).toBeUndefined();
  });

  it("fills what another template has filled, where the coach has changed nothing", () => {
    const football = demandWeights(template("Football"), club).weights;
    expect(weightsToWrite(fresh, { ...club, weights: football }, kept).coachs).toBe(0);
    const changed = football.with(0, { ...football[0]!, weight: 1.7 });
    expect(weightsToWrite(fresh, { ...club, weights: changed }, kept).coachs).toBeGreaterThan(0);
  });

  it("leaves the coach's numbers, or replaces them when told to", () => {
    const weights = [
      { quality: "speed", role: "Wing", weight: 3 },
      { quality: "Speed", role: "Back", weight: 1 },
    ];
    const standing = { ...club, weights };
    const left = weightsToWrite(fresh, standing, kept);
    expect(left.coachs).toBe(1);
    expect(of(left.weights, "Speed", "Wing")).toBeUndefined();
    expect(of(left.weights, "Speed", "Pivot")).toBe(0.5);
    expect(of(weightsToWrite(fresh, standing, { replaces: true }).weights, "Speed", "Wing")).toBe(2);
  });
});
