import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { amount, betterIs, choice, count, scoredBy, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  spread: amount(
    say`Trials too far apart`,
    say`How many times the usual spread an athlete's trials may have before they are named. At 1, noise alone gets 5 sets of trials in 100 named, at 1.25 about 1, at 1.5 about 1 in 500.`,
    "times",
    { low: 1, high: 3, initial: 1.5 },
  ),
  outliers: choice(
    say`Far from the squad`,
    say`Scores with a robust z beyond 3.5: an error, or an exceptional athlete.`,
    {
      yes: say`Name them`,
      no: say`Do not`,
    },
  ),
  weeks: amount(
    say`Retest after`,
    say`Where the battery sets no interval of its own. 0: only as the battery says.`,
    "weeks",
    { low: 0, high: 104, initial: 0 },
  ),
  untested: choice(
    say`Squad without a result`,
    say`Whether athletes of the squad who have no result of a test are named.`,
    {
      no: say`Do not name them`,
      yes: say`Name them`,
    },
  ),
  reduction: scoredBy(say`Score`, say`How trials become the score that is compared with the squad and between sides.`),
  direction: betterIs(),
});

const gives = z.object({
  what: text(say`What`, say`Whose result of which test and side; or the cell, where it could not be read.`),
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  test: text(say`Test`, say`The test, and the side where there are two.`),
  why: text(say`Why`, say`What was found. Nothing was changed or deleted.`),
  action: text(say`What to do`, say`The first thing to do about it.`),
  cell: text(say`Cell`, say`Where to look.`),
  reasons: count(say`Reasons`, say`How many things were found.`),
});

export type RetestSettings = z.output<typeof settings>;
export type RetestRow = z.output<typeof gives>;

export const retest = defineAnalysis({
  ...about,
  select: say`Select the results with their headings, of one test or of many. With days in them, sides that changed places and overdue retests are found as well.`,
  tests: "all",
  takes: "measuredAndDerived",
  needs: [
    ["athlete", "result"],
    ["athlete", "left", "right"],
  ],
  settings,
  gives,
  rowKey: "what",
  compute,
  chart: {
    kind: "bar",
    title: say`Things to look at`,
    categories: "what",
    series: [{ field: "reasons", name: say`Reasons`, tone: "strong" }],
    valueAxisTitle: say`Reasons`,
  },
  cautions: [
    say`What is named here is a question, not an error: an athlete may be exceptional, and noise alone names one now and then.`,
    say`What is not named can still be wrong.`,
  ],
  method: {
    formula: say`robust z = 0.6745 × (score − median) ÷ MAD; trials: range beyond the studentized range`,
    source: say`Outliers: Iglewicz & Hoaglin 1993. Spread of trials: studentized range (Harter 1960) with the trials' pooled noise. Plausible ranges: your battery, else common practice, no source.`,
  },
  example: {
    // R 4.2.2: 0.6745 * (400 - median(x)) / mad(x, constant = 1) is 168.625 for the last of these nine scores; the others are within 3.5.
    results: [148, 150, 151, 149, 150, 152, 147, 151, 400].map((value, index) =>
      testResult({ athlete: `A${index + 1}`, test: "Throw", value, cell: `B${index + 2}` }),
    ),
    settings: {},
    gives: [{ what: "A9: Throw", athlete: "A9", test: "Throw", cell: "B10", reasons: 1 }],
  },
});
