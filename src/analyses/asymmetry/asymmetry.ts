import { z } from "zod";
import { percentDifference } from "../../engine/asymmetry/percentDifference";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { betterIs, choice, count, forChart, measured, percent, scoredBy, share, signedPercent, text } from "../fields";
import type { TestFacts } from "../testFacts";
import { about } from "./about";
import { compute } from "./compute";
import { live } from "./live";

const settings = z.object({
  reduction: scoredBy(
    say`Score of each side`,
    say`How the trials of one side become one score. Use the same way at every retest.`,
  ),
  direction: betterIs(),
  noise: choice(
    say`Noise from`,
    say`What the difference is held against. Three trials tell little about one athlete's scatter, and the group's scatter is wrong for an athlete who scatters more or less than the rest: so the athlete's own is steadied by the group's. The CV rule is common and lenient: equal legs fail it in about one athlete of three.`,
    {
      steadied: say`Own trials, steadied by the group's`,
      group: say`The group's trials`,
      athlete: say`Own trials only`,
      variability: say`The larger CV of the two sides`,
    },
  ),
  threshold: share(
    say`Your threshold`,
    say`The size from which a difference matters to you. 10 to 15 % is custom, not a proven limit of risk.`,
    1,
    50,
    10,
  ),
});

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  left: measured(say`Left`, say`Score of the left side, reduced from its trials as chosen.`),
  right: measured(say`Right`, say`Score of the right side, reduced from its trials as chosen.`),
  asymmetry: signedPercent(
    say`Asymmetry`,
    say`How far the smaller side is below the larger, in percent of the larger. Plus: right larger. Minus: left larger.`,
  ),
  stronger: text(say`Stronger side`, say`The side with the better score.`),
  noise: percent(
    say`Noise limit`,
    say`By the scatter of the trials alone, equal sides stay below this difference 19 times in 20 (or, if so chosen, the larger CV).`,
  ),
  verdict: text(say`Verdict`, say`Whether the difference is beyond the noise, and beyond your threshold.`),
  variation: percent(
    say`Trial CV`,
    say`How much this athlete's trials of one side scatter: the larger CV of the two sides.`,
  ),
  leftTrials: count(say`Left trials`, say`How many left trials were used.`),
  rightTrials: count(say`Right trials`, say`How many right trials were used.`),
  beyond: forChart(say`Beyond`, say`The asymmetry where it is beyond the noise limit. For the chart.`),
  within: forChart(say`Within`, say`The asymmetry where it is not beyond the noise limit. For the chart.`),
});

export type AsymmetrySettings = z.output<typeof settings>;
/** The settings, with what "as set up" comes to for the test at hand. */
export type AsymmetryChoices = AsymmetrySettings & Pick<TestFacts, "direction" | "reduction">;
export type AsymmetryRow = z.output<typeof gives>;

export const asymmetry = defineAnalysis({
  ...about,
  select: say`Select the results of a one-leg or one-arm test with its headings: a row per athlete with columns for left and right trials, or a row per attempt with a column for the side.`,
  tests: "one",
  takes: "measuredAndDerived",
  sides: "both",
  needs: [
    ["athlete", "left", "right"],
    ["athlete", "side", "result"],
  ],
  settings,
  gives,
  rowKey: "athlete",
  compute,
  live,
  chart: {
    kind: "bar",
    title: say`Asymmetry: minus left larger, plus right larger`,
    categories: "athlete",
    series: [
      { field: "beyond", name: say`Beyond noise`, tone: "strong" },
      { field: "within", name: say`Within noise`, tone: "soft" },
    ],
    valueAxisTitle: say`Asymmetry (%)`,
    ends: { negative: say`left larger`, positive: say`right larger` },
    band: { field: "noise", name: say`Noise` },
  },
  cautions: [
    say`One test on one day: asymmetry changes with task and day, so test again before you act on it.`,
    say`No number here clears an athlete after injury or predicts one; that is for the clinician in charge.`,
  ],
  method: {
    formula: say`100 × (right − left) ÷ larger side`,
    source: say`Percentage difference: Bishop et al. 2018, Strength Cond J 40(4). Noise: t interval for the difference of two scores on logarithms, with the scatter of the reduced score from normal order statistics; steadied as in Smyth 2004, Stat Appl Genet Mol Biol 3(1).`,
  },
  example: {
    results: [178, 182, 180].flatMap((value, trial) => [
      testResult({ athlete: "Example", side: "left", value, cell: `B${trial + 2}` }),
      testResult({ athlete: "Example", side: "right", value: [196, 204, 200][trial]!, cell: `C${trial + 2}` }),
    ]),
    settings: { reduction: "mean" },
    gives: [{ athlete: "Example", left: 180, right: 200, asymmetry: percentDifference(180, 200), stronger: "Right" }],
  },
});
