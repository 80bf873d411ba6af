import { z } from "zod";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { amount, measured, percent, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  retestRepetitions: amount(
    "A retest alone brings",
    "For counts: how far apart two results of the same limb lie without any change. 6 is from calf raises; take your own " +
      "from the reliability of your test.",
    "reps",
    { low: 1, high: 50, initial: 6 },
  ),
  retestSeconds: amount(
    "A retest alone brings",
    "For times such as a side plank: how far apart two results of the same side lie without any change. 0 where you do " +
      "not know it: then no difference is judged.",
    "s",
    { low: 0, high: 120, initial: 0 },
  ),
  stop: amount(
    "Stopped at",
    "Where you end the test for those who could go on: their true result is at least this. 0 where you never do.",
    "reps or s",
    { low: 0, high: 1000, initial: 0 },
  ),
});

const gives = z.object({
  athlete: text("Athlete", "Name as it stands in your sheet."),
  left: measured("Left", "Best result of the left side on the latest day."),
  right: measured("Right", "Best result of the right side on the latest day."),
  difference: measured("Right less left", "How much longer the right side lasted; with a minus, the left side."),
  share: percent(
    "Weaker side",
    "The weaker side in percent of the better one. With small numbers one repetition is many percent.",
  ),
  verdict: text("Verdict", "Whether the sides differ by more than a retest alone brings."),
});

export type CapacitySettings = z.output<typeof settings>;
export type CapacityRow = z.output<typeof gives>;

export const capacity = defineAnalysis({
  ...about,
  select:
    "Select repetitions or seconds to failure (calf raises, bridges, side planks) with their headings: a row per athlete with " +
    "columns for left and right, or a row per attempt with a column for the side.",
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
    title: "Capacity of each side",
    categories: "athlete",
    series: [
      { field: "left", name: "Left", tone: "strong" },
      { field: "right", name: "Right", tone: "soft" },
    ],
    valueAxisTitle: "Result",
  },
  cautions: [
    "Compare only results with the same pace, range of movement and rule for stopping.",
    "No count here clears an athlete after injury or predicts one; that is for the clinician in charge.",
  ],
  method: {
    formula: "right − left, in repetitions or seconds; weaker ÷ better side",
    source:
      "Retests of calf raises differ by about 6 repetitions either way: Hébert-Losier et al. 2017, Physiotherapy 103:446-452. " +
      "Quartiles: Hyndman & Fan 1996, Am Stat 50:361-365, type 7. Results stopped at the cap count as at least so high.",
  },
  example: {
    // By hand: 12 less 10, and 10 of 12 in percent.
    results: [
      testResult({ athlete: "Example", test: "Calf raise", side: "left", value: 10, unit: "reps", cell: "B2" }),
      testResult({ athlete: "Example", test: "Calf raise", side: "right", value: 12, unit: "reps", cell: "C2" }),
    ],
    settings: {},
    gives: [{ athlete: "Example", left: 10, right: 12, difference: 2, share: 83.33333333333333 }],
  },
});
