import { z } from "zod";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { amount, betterIs, choice, count, scoredBy, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  spread: amount(
    "Trials too far apart",
    "How many times the usual spread an athlete's trials may have before they are named. At 1, noise alone gets 5 sets of trials " +
      "in 100 named, at 1.25 about 1, at 1.5 about 1 in 500.",
    "times",
    { low: 1, high: 3, initial: 1.5 },
  ),
  outliers: choice("Far from the squad", "Scores with a robust z beyond 3.5: an error, or an exceptional athlete.", {
    yes: "Name them",
    no: "Do not",
  }),
  weeks: amount(
    "Retest after",
    "Where the battery sets no interval of its own. 0: only as the battery says.",
    "weeks",
    { low: 0, high: 104, initial: 0 },
  ),
  untested: choice("Squad without a result", "Whether athletes of the squad who have no result of a test are named.", {
    no: "Do not name them",
    yes: "Name them",
  }),
  reduction: scoredBy("Score", "How trials become the score that is compared with the squad and between sides."),
  direction: betterIs(),
});

const gives = z.object({
  what: text("What", "Whose result of which test and side; or the cell, where it could not be read."),
  athlete: text("Athlete", "Name as it stands in your sheet."),
  test: text("Test", "The test, and the side where there are two."),
  why: text("Why", "What was found. Nothing was changed or deleted."),
  action: text("What to do", "The first thing to do about it."),
  cell: text("Cell", "Where to look."),
  reasons: count("Reasons", "How many things were found."),
});

export type RetestSettings = z.output<typeof settings>;
export type RetestRow = z.output<typeof gives>;

export const retest = defineAnalysis({
  ...about,
  select:
    "Select the results with their headings, of one test or of many. With days in them, sides that changed places and " +
    "overdue retests are found as well.",
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
    title: "Things to look at",
    categories: "what",
    series: [{ field: "reasons", name: "Reasons", tone: "strong" }],
    valueAxisTitle: "Reasons",
  },
  cautions: [
    "What is named here is a question, not an error: an athlete may be exceptional, and noise alone names one now and then.",
    "What is not named can still be wrong.",
  ],
  method: {
    formula: "robust z = 0.6745 × (score − median) ÷ MAD; trials: range beyond the studentized range",
    source:
      "Outliers: Iglewicz & Hoaglin 1993. Spread of trials: studentized range (Harter 1960) with the trials' pooled noise. " +
      "Plausible ranges: your battery, else common practice, no source.",
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
