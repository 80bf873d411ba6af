import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { dayCounted, sidesAs } from "../athleteScores";
import { betterIs, choice, indexForChart, percent, place, scoredBy, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  reduction: scoredBy(say`Score of each test`, say`How an athlete's trials of a test become one score.`),
  direction: betterIs(),
  sides: sidesAs(),
  day: dayCounted(),
  weighting: choice(
    say`Weights`,
    say`How much each quality counts. The weights of your table of weights are your judgement of what a role asks for; nothing proves them.`,
    { asSetUp: say`As set up for the athlete's role`, alike: say`All qualities alike` },
  ),
});

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  group: text(say`Role`, say`Role or group, from your sheet or from the squad.`),
  rank: place(say`Rank`, say`1 for the best overall among all athletes. Equal ones share a rank.`),
  rankInRole: place(say`Rank in role`, say`1 for the best overall among the athletes of the same role.`),
  overall: place(
    say`Overall (T)`,
    say`Weighted mean of the qualities, as a T score: 50 is the middle of these athletes, 10 a standard deviation. Empty where less than 70 % of the weight was tested.`,
  ),
  tested: percent(say`Tested`, say`Share of the qualities' weight on which the athlete was tested.`),
  missing: text(say`Not tested`, say`Qualities, or tests of them, without a result. Nothing is put in their place.`),
  fromMiddle: indexForChart(
    say`From the middle`,
    say`The overall score in standard deviations from the middle. For the chart.`,
  ),
});

export type RankingSettings = z.output<typeof settings>;
export type RankingRow = z.output<typeof gives>;

/** Heptathlon, Seoul 1988, five athletes: 100 m hurdles (s), high jump (m), shot put (m). Source: R, HSAUR3. */
const heptathlon = [
  [12.69, 1.86, 15.8],
  [12.85, 1.8, 16.23],
  [13.2, 1.83, 14.2],
  [13.61, 1.8, 15.23],
  [13.51, 1.74, 14.76],
] as const;
const events = [
  { test: say`100 m hurdles`, unit: "s" },
  { test: say`High jump`, unit: "m" },
  { test: say`Shot put`, unit: "m" },
] as const;

export const ranking = defineAnalysis({
  ...about,
  select: say`Select the results of several tests with their headings. The battery says which quality a test stands for; without it each test counts as a quality of its own.`,
  tests: "all",
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
    title: say`Overall, in standard deviations from the middle`,
    categories: "athlete",
    series: [{ field: "fromMiddle", name: say`Overall`, tone: "strong" }],
    valueAxisTitle: "z",
    ends: { negative: say`below the middle`, positive: say`above the middle` },
  },
  cautions: [
    say`Neighbours in a ranking are often no more than noise apart: look at the single tests before you say one is better.`,
    say`Weights are an opinion. A ranking is a start for a talk, not a selection; keep lists with young athletes' names to yourself.`,
  ],
  method: {
    formula: say`overall = Σ weight × mean z of the quality's tests ÷ Σ weight, over what was tested`,
    source: say`Mean of z scores: total score of athleticism, Turner et al. 2019, Strength Cond J 41(6):91-101. 70 % of the weight as the least for a rank: common practice, no source.`,
  },
  example: {
    // Mean of the z scores and its T score by R 4.2.2, scale().
    results: heptathlon.flatMap((scores, athlete) =>
      scores.map((value, event) => testResult({ athlete: `H${athlete + 1}`, value, ...events[event]! })),
    ),
    settings: {},
    gives: [
      { athlete: "H1", rank: 1, overall: 62.6746760061, tested: 100 },
      { athlete: "H2", rank: 2, overall: 57.7156593395 },
      { athlete: "H3", rank: 3, overall: 46.6361921952 },
      { athlete: "H4", rank: 4, overall: 44.9185481491 },
      { athlete: "H5", rank: 5, overall: 38.0549243101 },
    ],
  },
});
