import { ratioSentence, ratiosOf } from "../../src/programme/ratios";
import { testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import { batteryTest, squadMember } from "../sheet/storeRows";

const background = {
  ...noBackground,
  squad: [squadMember("Ane Berg", { bodyMass: 70, stature: 175 })],
  battery: [
    batteryTest("CMJ", { quality: "Jumping" }),
    batteryTest("Drop jump", { measure: "reactiveStrengthIndex", quality: "Stiffness" }),
    batteryTest("Isometric pull", { quality: "Strength", unit: "N" }),
    batteryTest("Sprint", { measure: "time30", quality: "Speed" }),
  ],
};

const date = "2026-08-13";
const height = (athlete: string, test: string, value: number, day = date) =>
  testResult({ athlete, test, measure: "jumpHeight", value, unit: "cm", date: day, cell: `${test}${athlete}` });
const force = (test: string, value: number, day = date) =>
  testResult({ athlete: "Ane Berg", test, value, unit: "N", date: day });

const found = (results: Parameters<typeof ratiosOf>[0]) =>
  ratiosOf(results, background).map(({ athlete, name, value, quality }) => [
    athlete,
    name,
    Number(value.toFixed(3)),
    quality,
  ]);

describe("ratiosOf(results, background)", () => {
  it("divides the countermovement by the squat jump (40 / 32, by hand)", () => {
    expect(found([height("Ane Berg", "CMJ", 40), height("Ane Berg", "Squat jump", 32)])).toEqual([
      ["Ane Berg", "Eccentric utilisation ratio", 1.25, "Jumping"],
    ]);
  });

  it("divides the drop jump's height by its contact (0.5 s of flight are 30.656 cm; over 0.2 s)", () => {
    const drop = (measure: "flightTime" | "contactTime", value: number) =>
      testResult({ athlete: "Ane Berg", test: "Drop jump", measure, value, unit: "ms", date, cell: measure });
    expect(found([drop("flightTime", 500), drop("contactTime", 200)])).toEqual([
      ["Ane Berg", "Reactive strength index", 1.533, "Stiffness"],
    ]);
  });

  it("divides peak force of jump and isometric pull of one day (1600 / 2000, by hand)", () => {
    expect(found([force("Jump, peak force", 1600), force("Isometric pull", 2000)])).toEqual([
      ["Ane Berg", "Dynamic strength index", 0.8, "Strength"],
    ]);
    expect(found([force("Jump, peak force", 1600), force("Isometric pull", 2000, "2026-08-20")])).toEqual([]);
  });

  it("gives both ends of the sprint's force-velocity line where there are enough gates", () => {
    const split = (measure: "time5" | "time10" | "time20" | "time30", value: number) =>
      testResult({ athlete: "Ane Berg", test: "Sprint", measure, value, unit: "s", date, cell: measure });
    const run = [split("time5", 1.2), split("time10", 1.98), split("time20", 3.35), split("time30", 4.65)];
    expect(found(run).map(([, name, , quality]) => [name, quality])).toEqual([
      ["Sprint force at the start", "Speed"],
      ["Sprint maximal speed", "Speed"],
    ]);
    expect(found(run.slice(2))).toEqual([]);
  });

  it("sets the middle of all beside it, from three athletes on", () => {
    const squad = ["A", "B", "C"].flatMap((athlete, index) => [
      height(athlete, "CMJ", 40 + 4 * index),
      height(athlete, "Squat jump", 40),
    ]);
    const [first] = ratiosOf(squad, background);
    expect(ratioSentence(first!)).toBe("Eccentric utilisation ratio 1.20 (the middle of all 1.10)");
    expect(ratioSentence(ratiosOf(squad.slice(0, 4), background)[0]!)).toBe("Eccentric utilisation ratio 1.10");
  });
});
