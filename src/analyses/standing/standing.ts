import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { dayCounted, sidesAs } from "../athleteScores";
import {
  betterIs,
  choice,
  indexForChart,
  measured,
  place,
  scoredBy,
  signedIndex,
  text,
  textWhereSaid,
} from "../fields";
import { about } from "./about";
import { compute } from "./compute";
import { live } from "./live";

const settings = z.object({
  reduction: scoredBy(say`Score`, say`How an athlete's trials become one score. Use the same way for everybody.`),
  direction: betterIs(),
  sides: sidesAs(),
  day: dayCounted(),
  among: choice(say`Compared with`, say`Whose results an athlete's is held against.`, {
    everybody: say`Everybody`,
    role: say`Their own role`,
  }),
  percentile: choice(
    say`Percentile rank`,
    say`Three published definitions, which differ most in small squads. The first is fair with ties and never 0 or 100; the others agree with the sheet's own functions.`,
    {
      midrank: say`Share below, ties half`,
      inclusive: say`As PERCENTRANK.INC: worst 0, best 100`,
      exclusive: say`As PERCENTRANK.EXC`,
    },
  ),
});

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  group: text(say`Role`, say`Role or group, from your sheet or from the squad.`),
  score: measured(say`Score`, say`The athlete's score, reduced from the trials as chosen.`),
  rank: place(say`Rank`, say`1 for the best. Equal scores share a rank.`),
  places: text(
    say`Ranks within noise`,
    say`Scores at these ranks lie so close that the trials' noise alone explains the gap, 19 times in 20: any of them could be this athlete's rank.`,
  ),
  percentile: place(
    say`Percentile rank`,
    say`The share of these athletes who stand below, in percent. Left out below 8 athletes, to the nearest 5 below 20. It describes them and is no norm.`,
  ),
  z: signedIndex("z", say`Distance from the mean in standard deviations. Plus is always better, also for times.`),
  t: place("T", say`The same with 50 for the mean and 10 for a standard deviation.`),
  verdict: text(
    say`Verdict`,
    say`Half a standard deviation or more from the middle counts, if the noise of the trials does not reach past the middle.`,
  ),
  date: textWhereSaid(say`Day`, say`Day of the score.`),
  modified: indexForChart(
    say`Robust z`,
    say`The same distance by median and median deviation, which one wild result does not move. Beyond 3.5 look for a slip.`,
  ),
  clear: indexForChart(say`Clear`, say`The z score where it is a strength or a weakness. For the chart.`),
  unclear: indexForChart(say`Not clear`, say`The z score where it is neither. For the chart.`),
  noise: indexForChart(say`Noise`, say`The size of z that the trials' noise alone explains. For the chart.`),
});

export type StandingSettings = z.output<typeof settings>;
export type StandingRow = z.output<typeof gives>;

/** Heptathlon, Seoul 1988, 100 m hurdles of 25 athletes (s). Source: R, HSAUR3 `heptathlon`. */
const hurdles = [
  ...[12.69, 12.85, 13.2, 13.61, 13.51, 13.75, 13.38, 13.55, 13.63, 13.25, 13.75, 13.24, 13.85],
  ...[13.71, 13.79, 13.93, 13.47, 14.07, 14.39, 14.04, 14.31, 14.23, 14.85, 14.53, 16.42],
];

export const standing = defineAnalysis({
  ...about,
  select: say`Select the results of a test with their headings: a row per athlete with a column for each trial, or a row per attempt. A column of roles, or the squad's table, lets you compare within a role.`,
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
  live,
  chart: {
    kind: "bar",
    title: say`Distance from the middle, in standard deviations`,
    categories: "athlete",
    series: [
      { field: "clear", name: say`Clear`, tone: "strong" },
      { field: "unclear", name: say`Not clear`, tone: "soft" },
    ],
    valueAxisTitle: "z",
    ends: { negative: say`below the middle`, positive: say`above the middle` },
    band: { field: "noise", name: say`Noise` },
  },
  cautions: [
    say`A rank describes these athletes on this day; it is no norm and no selection.`,
    say`Young athletes' ranks say as much about growth as about training. Keep lists with names to yourself.`,
  ],
  method: {
    formula: say`z = (score − mean) ÷ standard deviation, plus is better; T = 50 + 10 z`,
    source: say`z, T, percentile ranks (midrank: Hazen): textbook. Robust z: Iglewicz & Hoaglin 1993. Noise: trials pooled on logarithms (Hopkins 2000, Sports Med 30:1-15). Half a standard deviation as a strength: common practice, no source.`,
  },
  example: {
    // Ranks, z, T and midrank by R 4.2.2, the modified z score by its formula there: tests/reference, "heptathlon".
    results: hurdles.map((value, index) =>
      testResult({ athlete: `H${index + 1}`, test: say`100 m hurdles`, value, unit: "s", cell: `B${index + 2}` }),
    ),
    settings: {},
    gives: [
      {
        athlete: "H1",
        score: 12.69,
        rank: 1,
        percentile: 98,
        z: 1.56112592765,
        t: 65.6112592765,
        modified: 2.23428125,
      },
      { athlete: "H2", rank: 2, percentile: 94, z: 1.34392579859 },
    ],
  },
});
