import { assumedDirection, factsOf } from "../../src/analyses/testFacts";
import { noBackground } from "../../src/store/background";
import type { BatteryTest } from "../../src/store/battery";
import { batteryTest } from "./batteryTest";

const asSetUp = { direction: "asSetUp", reduction: "asSetUp" } as const;
const series = { test: "Plank", measure: null, unit: "s" } as const;
const withBattery = (...battery: BatteryTest[]) => ({ ...noBackground, battery });

describe("the facts of a test", () => {
  it("come from the battery where it knows the test, whatever the case of its name", () => {
    const battery = withBattery(
      batteryTest({ test: "plank ", direction: "higher", reduction: "mean", quality: "Trunk", unit: "s" }),
    );
    expect(factsOf(series, asSetUp, battery)).toMatchObject({
      direction: "higher",
      directionFrom: "battery",
      reduction: "mean",
      quality: "Trunk",
    });
  });

  it("come from the form before all else", () => {
    const battery = withBattery(batteryTest({ test: "Plank", direction: "higher", reduction: "mean" }));
    expect(factsOf(series, { direction: "lower", reduction: "median" }, battery)).toMatchObject({
      direction: "lower",
      directionFrom: "settings",
      reduction: "median",
    });
  });

  it.each([
    ["a time by its unit", "s", null, "lower", "unit"],
    ["a distance by its unit", "cm", null, "higher", "unit"],
    ["no unit at all", null, null, "higher", "unit"],
    ["a flight time by its measure, though it is a time", "ms", "flightTime", "higher", "measure"],
    ["a contact time by its measure", "ms", "contactTime", "lower", "measure"],
  ] as const)("else are guessed: %s", (_, unit, measure, direction, directionFrom) => {
    expect(factsOf({ test: "Drop jump", measure, unit }, asSetUp, noBackground)).toEqual({
      direction,
      directionFrom,
      reduction: "best",
      quality: null,
      setUp: null,
    });
  });

  it("say so where a shorter time was merely assumed to be better", () => {
    expect(assumedDirection(factsOf(series, asSetUp, noBackground))).toMatch(/^A time was taken as better when/);
    expect(assumedDirection(factsOf({ ...series, unit: "cm" }, asSetUp, noBackground))).toBeNull();
    expect(assumedDirection(factsOf(series, { ...asSetUp, direction: "lower" }, noBackground))).toBeNull();
  });
});
