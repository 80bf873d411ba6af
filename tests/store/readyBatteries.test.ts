import { measureOf, seriesName } from "../../src/reading/measures";
import { unitOf } from "../../src/reading/units";
import { batteryTable, isEntered, readBattery } from "../../src/store/battery";
import { defaultWeights } from "../../src/store/qualityWeights";
import { qualities, readyBatteries } from "../../src/store/readyBatteries";
import { cellsOf } from "./cellsOf";

const tests = readyBatteries.flatMap((battery) => battery.tests);

describe("the ready-made batteries", () => {
  it("come back from the table as they were written, with nothing to remark, all together", () => {
    const { battery, remarks } = readBattery(cellsOf(batteryTable, tests));
    expect(remarks).toEqual([]);
    expect(battery).toEqual(tests);
  });

  it.each(tests.map((test) => [seriesName(test.test, test.measure), test] as const))("%s is complete", (_, test) => {
    expect(test.lowest).toBeLessThan(test.highest!);
    expect(test.protocol!.split("\n")).toHaveLength(2);
    if (test.unit !== null) expect(unitOf(test.unit)?.symbol).toBe(test.unit);
    if (test.measure !== null) {
      const { unit, better } = measureOf(test.measure);
      expect(test.unit).toBe(unit);
      if (better !== null) expect(test.direction).toBe(better);
    }
    if (isEntered(test)) {
      expect(test.caution).toMatch(/Pain.* stops the (test|set)\./);
      expect(test.caution).toMatch(/minors only with a qualified person/);
    }
  });

  it("give each quality at least one test, and no quality without a name of ours", () => {
    const named = new Set(tests.flatMap(({ quality }) => quality ?? []));
    expect([...named].sort()).toEqual(Object.values(qualities).sort());
  });

  it("print no line longer than an entry sheet is wide", () => {
    const lines = tests.flatMap(({ protocol }) => protocol!.split("\n"));
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(125);
  });
});

test("defaultWeights gives every quality the same weight in every role", () => {
  expect(defaultWeights(["Back", "Wing"], ["Speed"])).toEqual([
    { quality: "Speed", role: "Back", weight: 1 },
    { quality: "Speed", role: "Wing", weight: 1 },
  ]);
});
