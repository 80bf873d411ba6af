import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { amount, measured, percent, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  retestRepetitions: amount(
    say`A retest alone brings`,
    say`For counts: how far apart two results of the same limb lie without any change. 6 is from calf raises; take your own from the reliability of your test.`,
    say`reps`,
    { low: 1, high: 50, initial: 6 },
  ),
  retestSeconds: amount(
    say`A retest alone brings`,
    say`For times such as a side plank: how far apart two results of the same side lie without any change. 0 where you do not know it: then no difference is judged.`,
    "s",
    { low: 0, high: 120, initial: 0 },
  ),
  stop: amount(
    say`Stopped at`,
    say`Where you end the test for those who could go on: their true result is at least this. 0 where you never do.`,
    say`reps or s`,
    { low: 0, high: 1000, initial: 0 },
  ),
});

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  left: measured(say`Left`, say`Best result of the left side on the latest day.`),
  right: measured(say`Right`, say`Best result of the right side on the latest day.`),
  difference: measured(say`Right less left`, say`How much longer the right side lasted; with a minus, the left side.`),
  share: percent(
    say`Weaker side`,
    say`The weaker side in percent of the better one. With small numbers one repetition is many percent.`,
  ),
  verdict: text(say`Verdict`, say`Whether the sides differ by more than a retest alone brings.`),
});

export type CapacitySettings = z.output<typeof settings>;
export type CapacityRow = z.output<typeof gives>;

export const capacity = defineAnalysis({
  ...about,
  select: say`Select repetitions or seconds to failure (calf raises, bridges, side planks) with their headings: a row per athlete with columns for left and right, or a row per attempt with a column for the side.`,
  tests: "one",
  takes: "measured",
  sides: "both",
  needs: [
    ["athlete", "left", "right"],
    ["athlete", "side", "result"],
  ],
  settings,
  gives,
  rowKey: "athlete",
  compute,
  chart: {
    kind: "bar",
    title: say`Capacity of each side`,
    categories: "athlete",
    series: [
      { field: "left", name: say`Left`, tone: "strong" },
      { field: "right", name: say`Right`, tone: "soft" },
    ],
    valueAxisTitle: say`Result`,
  },
  cautions: [
    say`Compare only results with the same pace, range of movement and rule for stopping.`,
    say`No count here clears an athlete after injury or predicts one; that is for the clinician in charge.`,
  ],
  method: {
    formula: say`right − left, in repetitions or seconds; weaker ÷ better side`,
    source: say`Retests of calf raises differ by about 6 repetitions either way: Hébert-Losier et al. 2017, Physiotherapy 103:446-452. Quartiles: Hyndman & Fan 1996, Am Stat 50:361-365, type 7. Results stopped at the cap count as at least so high.`,
  },
  example: {
    // By hand: 12 less 10, and 10 of 12 in percent.
    results: [
      testResult({ athlete: "Example", test: say`Calf raise`, side: "left", value: 10, unit: "reps", cell: "B2" }),
      testResult({ athlete: "Example", test: say`Calf raise`, side: "right", value: 12, unit: "reps", cell: "C2" }),
    ],
    settings: {},
    gives: [{ athlete: "Example", left: 10, right: 12, difference: 2, share: 83.33333333333333 }],
  },
});
