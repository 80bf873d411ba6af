import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { sidesAs } from "../athleteScores";
import { betterIs, choice, derived, forChart, measured, percent, scoredBy, share, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  from: choice(say`Compared with`, say`The session each athlete's latest one is held against.`, {
    previous: say`The session before`,
    first: say`The first session`,
  }),
  reduction: scoredBy(
    say`Score of a session`,
    say`How the trials of a session become one score. Use the same way at every retest.`,
  ),
  direction: betterIs(),
  sides: sidesAs(),
  error: share(
    say`Typical error you know`,
    say`The test's error from day to day, in percent. 0: from your data, by two sessions within a fortnight, else by the trials.`,
    0,
    50,
    0,
  ),
  worthwhile: share(
    say`Change that matters`,
    say`The smallest change worth having, in percent. 0: a fifth of the spread between your athletes.`,
    0,
    50,
    0,
  ),
});

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  group: text(say`Role`, say`Role or group, from your sheet or from the squad.`),
  earlier: measured(say`Before`, say`Score of the earlier session.`),
  later: measured(say`After`, say`Score of the latest session.`),
  change: derived(say`Change`, say`After minus before.`),
  low: derived(say`Change low`, say`Lower 95 % limit of the true change.`),
  high: derived(say`Change high`, say`Upper 95 % limit of the true change.`),
  better: percent(
    say`Chance better`,
    say`How likely the true change is an improvement that matters, from these data alone.`,
  ),
  worse: percent(say`Chance worse`, say`How likely the true change is a decline that matters, from these data alone.`),
  verdict: text(say`Verdict`, say`The change beside the test's noise and the smallest change that matters.`),
  days: text(say`Days`, say`The two days compared.`),
  clear: forChart(say`Beyond noise`, say`Change in percent where it is beyond the noise. For the chart.`),
  within: forChart(say`Within noise`, say`Change in percent where it is not. For the chart.`),
  noise: forChart(say`Noise`, say`The change that noise alone explains, 19 times in 20. For the chart.`),
});

export type ChangeSettings = z.output<typeof settings>;
export type ChangeRow = z.output<typeof gives>;

export const change = defineAnalysis({
  ...about,
  select: say`Select the results of a test on two or more days, with their headings and a column for the date.`,
  tests: "one",
  takes: "measuredAndDerived",
  needs: [
    ["athlete", "result"],
    ["athlete", "left", "right"],
  ],
  settings,
  gives,
  rowKey: "athlete",
  compute,
  chart: {
    kind: "bar",
    title: say`Change in percent`,
    categories: "athlete",
    series: [
      { field: "clear", name: say`Beyond noise`, tone: "strong" },
      { field: "within", name: say`Within noise`, tone: "soft" },
    ],
    valueAxisTitle: say`Change (%)`,
    ends: { negative: "less", positive: "more" },
    band: { field: "noise", name: say`Noise` },
  },
  cautions: [
    say`A change tells that something changed, not what made it: growth, rest, practice of the test and the block all count.`,
    say`Who was far below their usual last time will come back by itself: expect less of a gain that follows a bad day.`,
  ],
  method: {
    formula: say`change ∓ t × √2 × typical error; chance better = P(true change > smallest change that matters)`,
    source: say`Hopkins 2000, Sports Med 30:1-15; Swinton et al. 2018, Front Nutr 5:41. A fifth of the spread: Hopkins 2004, Sportscience 8:1-7.`,
  },
  example: {
    // 40 to 44 with a typical error of 1.5 (3.75 %) and 1 (2.5 %) that matters: 4 ∓ 1.96 × √2 × 1.5 by hand, the chance by R 4.2.2 pnorm.
    results: [
      testResult({ athlete: "Example", date: "2026-08-20", value: 40, unit: "cm", cell: "B2" }),
      testResult({ athlete: "Example", date: "2026-10-29", value: 44, unit: "cm", cell: "C2" }),
    ],
    settings: { error: 3.75, worthwhile: 2.5 },
    gives: [
      {
        athlete: "Example",
        earlier: 40,
        later: 44,
        change: 4,
        low: -0.157787873377,
        high: 8.157787873377,
        better: 92.135039647486,
      },
    ],
  },
});
