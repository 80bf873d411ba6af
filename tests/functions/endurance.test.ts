import { installCustomFunctionsErrors } from "./customFunctionsErrors";

installCustomFunctionsErrors();

import {
  aerobicSpeed,
  capacityDifference,
  capacitySummary,
  intervalDistance,
  oxygenUptakeOfAdults,
  oxygenUptakeOfIntermittent,
  oxygenUptakeOfRecovery,
  oxygenUptakeOfShuttle,
  shuttleSpeed,
} from "../../src/functions/endurance";
import { expectRelative } from "../reference/reference";
import { across, byLabel, down, expectError, failing } from "./cells";

describe("speeds and distances", () => {
  // Source: R 4.2.2 arithmetic, 1500 m in 5:00 are 18 km/h; by hand, 18 km/h are 5 m/s, 15 s at 90 % are 67.5 m.
  it("of a run, and of an interval at a percentage", () => {
    expectRelative(aerobicSpeed(across(1500), across(300))[0]![0], 18, 1e-14);
    expectRelative(intervalDistance(across(18), across(90), across(15))[0]![0], 67.5, 1e-14);
  });

  // Source: Leger et al. 1988 (from memory): 8.5 km/h first, 0.5 km/h more each minute.
  it("of a stage, with either first speed", () => {
    expect(shuttleSpeed(across(1, 9, 21))).toEqual([[8.5, 12.5, 18.5]]);
    expect(shuttleSpeed(across(9), 8)).toEqual([[12]]);
    expect(shuttleSpeed(across(9), 12)).toEqual([[failing("#N/A", /from 8 to 8.5/)]]);
    expectError(() => shuttleSpeed(across(9), "fast"), "#VALUE!", /fast/);
  });

  it("answer each row for itself", () => {
    expect(aerobicSpeed(across(1500), down([300, null, "5:00", -300]))).toEqual([
      [18],
      [""],
      [failing("#VALUE!", /5:00/)],
      [failing("#N/A", /Running time must be above zero/)],
    ]);
    expect(intervalDistance(down([18, 0, "DNS"]), across(100), across(15))).toEqual([[75], [""], [""]]);
    expect(shuttleSpeed(down([24, null, "level 9"]))).toEqual([
      [failing("#N/A", /from 1 to 23/)],
      [""],
      [failing("#VALUE!", /level 9/)],
    ]);
  });
});

describe("OXYGENUPTAKE", () => {
  // Source: R 4.2.2 arithmetic on the published equations; by hand, 2.75 x 10 + 28.8 and 2.85 x 10 + 25.1 for adults.
  it("agrees with the published equations", () => {
    const [[adult], [junior]] = oxygenUptakeOfShuttle(down([12.5, 11]), down([18, 14])) as [number[], number[]];
    expectRelative(adult!, 47.596, 1e-12);
    expectRelative(junior!, 44.8254, 1e-12);
    const adults = oxygenUptakeOfAdults(across(10), across("male", "Female"));
    expectRelative(adults[0]![0], 56.3, 1e-12);
    expectRelative(adults[0]![1], 53.6, 1e-12);
    expectRelative(oxygenUptakeOfRecovery(across(1200))[0]![0], 46.48, 1e-12);
    expectRelative(oxygenUptakeOfRecovery(across(600), 2)[0]![0], 53.46, 1e-12);
    const intermittent = oxygenUptakeOfIntermittent(
      down([19.5, 17]),
      down(["male", "female"]),
      down([22, 20]),
      down([75, 62]),
    );
    expectRelative(intermittent[0]![0], 52.3949, 1e-12);
    expectRelative(intermittent[1]![0], 44.4006, 1e-12);
  });

  it("answers each row for itself, also for words that are no sex and ages that are missing", () => {
    expect(oxygenUptakeOfAdults(down([10, 10, 10, null, "9-5"]), down(["male", "F", 0, null, "male"]))).toEqual([
      [expect.closeTo(56.3, 9)],
      [failing("#VALUE!", /“F” is no sex for the equation. Use female or male/)],
      [failing("#N/A", /sex is missing/)],
      [""],
      [failing("#VALUE!", /9-5/)],
    ]);
    expect(oxygenUptakeOfAdults(across(10), across({ type: "Error" }))).toEqual([[failing("#VALUE!", /error/)]]);
    expect(oxygenUptakeOfShuttle(down([25, 12, ""]), down([18, "-", ""]))).toEqual([
      [failing("#N/A", /from 8 to 20/)],
      [failing("#N/A", /age is missing/)],
      [""],
    ]);
    expect(oxygenUptakeOfIntermittent(down([null, 60]), across("male"), down([0, 20]), down([0, 60]))).toEqual([
      [""],
      [failing("#N/A", /from 8 to 28/)],
    ]);
    expect(oxygenUptakeOfRecovery(down([null, -40]))).toEqual([[""], [failing("#N/A", /above zero/)]]);
    expectError(() => oxygenUptakeOfRecovery(across(1200), 3), "#VALUE!", /must be 1 or 2; 3 is not/);
  });
});

describe("CAPACITYDIFFERENCE", () => {
  // Source: by hand.
  it("is right less left in repetitions; a 0 is a score, a dash is none", () => {
    expect(capacityDifference(down([10, 0, "-", "-"]), down([12, 8, 8, null]))).toEqual([
      [2],
      [8],
      [failing("#N/A", /left score is missing/)],
      [""],
    ]);
  });

  it("is not known where the weaker side was stopped at the cap", () => {
    expect(capacityDifference(down([30, 40]), down([40, 40]), 40)).toEqual([
      [10],
      [failing("#N/A", /stopped at the cap/)],
    ]);
    expect(capacityDifference(across(-1), across(4))).toEqual([[failing("#N/A", /below zero/)]]);
    expectError(() => capacityDifference(across(1), across(2), -5), "#VALUE!", /cap must be above zero/);
  });
});

describe("CAPACITYSUMMARY", () => {
  // Source: R 4.2.2 quantile(c(10, 20, 20, 30, 40), c(.25, .5, .75), type = 7).
  it("gives median and quartiles as R and spreadsheets do", () => {
    const lines = byLabel(capacitySummary(down([40, 20, 10, null, 30, 20, 0])));
    expect(lines).toMatchObject({
      Athletes: [5, ""],
      "Lower quartile": [20, ""],
      Median: [20, ""],
      "Upper quartile": [30, ""],
    });
    expect(byLabel(capacitySummary(down([40, 20, 0, 30, 20]), null, "value"))["Lower quartile"]).toEqual([20, ""]);
    expect(byLabel(capacitySummary(down([40, 0, 0, 30, 20]), null, "value"))["Lower quartile"]).toEqual([0, ""]);
  });

  it("says at least where the cap hides more, and why it cannot answer", () => {
    const lines = byLabel(capacitySummary(down([20, 30, 40, 60, 60]), 60));
    expect(lines).toMatchObject({
      "Stopped at the cap": [2, ""],
      Median: [40, ""],
      "Upper quartile": [60, "at least"],
    });
    expect(lines.Caution![0]).toMatch(/2 of 5/);
    expectError(() => capacitySummary(down([20, 30])), "#N/A", /At least 3 capacity scores/);
    expectError(() => capacitySummary(down([20, 30, "40 reps"])), "#VALUE!", /40 reps/);
    expectError(() => capacitySummary(down([20, 30, 40]), null, "none"), "#VALUE!", /Use missing or value/);
  });
});
