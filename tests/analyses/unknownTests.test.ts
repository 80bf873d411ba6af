import { unknownTests } from "../../src/analyses/unknownTests";
import type { MeasureKey } from "../../src/reading/measures";
import { testResult } from "../../src/reading/testResult";
import { noBackground } from "../../src/store/background";
import type { BatteryTest } from "../../src/store/battery";
import { readyBatteries } from "../../src/store/readyBatteries";
import { batteryTest } from "./batteryTest";

const ready = readyBatteries.flatMap(({ tests }) => tests);

/** Each unknown series with the rows it may be. */
const told = (
  series: readonly (readonly [string, MeasureKey | null, string])[],
  battery: readonly BatteryTest[] = ready,
) =>
  unknownTests(
    { results: series.map(([test, measure, unit]) => testResult({ athlete: "A", test, measure, value: 2, unit })) },
    { ...noBackground, battery },
  ).map(({ name, near }) => [name, ...near.map(({ test, measure }) => `${test}|${measure ?? ""}`)]);

describe("tests that the battery does not know", () => {
  it("are told once, with the rows they may be", () => {
    expect(
      told([
        ["505", null, "s"],
        ["505", null, "s"],
        ["CMJ", "flightTime", "ms"],
        ["Calf raise", null, "reps"],
        ["Grip", null, "kg"],
      ]),
    ).toEqual([
      ["505", "505 change of direction|"],
      ["CMJ, flight time", "Countermovement jump|flightTime"],
      ["Calf raise", "Single-leg calf raise|"],
      ["Grip"],
    ]);
  });

  it("are near a row of the same words in another order, whichever of test and measure holds them", () => {
    const row = batteryTest({ test: "10 m sprint", unit: "s" });
    expect(told([["Sprint", "time10", "s"]], [row])).toEqual([["Sprint, 10 m", "10 m sprint|"]]);
    expect(told([["Sprint", "time20", "s"]], [row])).toEqual([["Sprint, 20 m"]]);
  });

  it("are near no row of another kind of unit, nor one that is computed", () => {
    expect(told([["Hop", null, "s"]], [batteryTest({ test: "Single-leg hop", unit: "cm" })])).toEqual([["Hop"]]);
    expect(told([["505", "deficit", "s"]])).toEqual([["505, change-of-direction deficit"]]);
  });

  it("are none where the name is there whatever its case, where no test is named, or without a battery", () => {
    expect(
      told([
        ["single-leg  HOP", null, "cm"],
        ["", null, "cm"],
        ["", "bodyMass", "kg"],
      ]),
    ).toEqual([]);
    expect(told([["505", null, "s"]], [])).toEqual([]);
  });
});
