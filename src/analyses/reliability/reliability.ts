import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { betterIs, choice, count, derived, index, percent, scoredBy, text, textWhereSaid } from "../fields";
import type { TestFacts } from "../testFacts";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  compare: choice(
    say`Repeats are`,
    say`Trials of one session tell how a test scatters on the day. Only sessions on different days tell whether a retest shows a change. Where your sheet has no dates, each result column counts as one session.`,
    {
      trials: say`Trials of one session`,
      sessions: say`Sessions on different days`,
    },
  ),
  reduction: scoredBy(
    say`Score of a session`,
    say`How the trials of one session become one score. Not used between trials.`,
  ),
  direction: betterIs(),
});

const gives = z.object({
  test: text(say`Test`, say`The test, and the side where there are two.`),
  unit: textWhereSaid(say`Unit`, say`Unit of this row's results, where the tests have different ones.`),
  athletes: count(say`Athletes`, say`How many athletes have at least two results.`),
  repeats: count(say`Repeats`, say`How many trials or sessions were compared.`),
  mean: derived(say`Mean`, say`Mean of all results.`),
  shift: derived(
    say`Shift`,
    say`Mean change from the first to the last repeat: learning, warming up or tiring, if beyond chance.`,
  ),
  error: derived(
    say`Typical error`,
    say`How much one athlete's result varies from repeat to repeat, with any shared shift removed.`,
  ),
  errorLow: derived(say`TE low`, say`Lower 95 % limit of the typical error.`),
  errorHigh: derived(say`TE high`, say`Upper 95 % limit of the typical error.`),
  variation: percent(say`CV`, say`The typical error in percent, from logarithms.`),
  correlation: index(
    "ICC(3,1)",
    say`Share of the differences that lies between athletes: 1 is none within. Falls in a squad of like athletes.`,
  ),
  correlationLow: index(say`ICC low`, say`Lower 95 % limit of the intraclass correlation.`),
  correlationHigh: index(say`ICC high`, say`Upper 95 % limit of the intraclass correlation.`),
  worthwhile: derived(
    say`Small change`,
    say`A fifth of the true spread between athletes: the smallest change usually held worthwhile.`,
  ),
  detectable: derived(
    say`Detectable change`,
    say`A change between two sessions beyond this is more than noise, 95 times in 100. Between sessions only.`,
  ),
  verdict: text(say`Verdict`, say`What the test can and cannot show.`),
});

export type ReliabilitySettings = z.output<typeof settings>;
/** The settings, with what "as set up" comes to for one test. */
export type ReliabilityChoices = ReliabilitySettings & Pick<TestFacts, "direction" | "reduction">;
export type ReliabilityRow = z.output<typeof gives>;

export const reliability = defineAnalysis({
  ...about,
  select: say`Select repeated results with their headings: a row per athlete with a column for each trial or session, or a row per attempt with columns for athlete and date.`,
  tests: "all",
  takes: "measuredAndDerived",
  needs: [
    ["athlete", "result"],
    ["athlete", "left", "right"],
  ],
  settings,
  gives,
  rowKey: "test",
  compute,
  chart: {
    kind: "bar",
    title: say`Variation from repeat to repeat`,
    categories: "test",
    series: [{ field: "variation", name: say`CV`, tone: "strong" }],
    valueAxisTitle: say`CV (%)`,
  },
  cautions: [
    say`The numbers hold for athletes, testers and equipment like these.`,
    say`5 and 10 % as limits for a CV are custom without a statistical reason; hold the error against the change you look for.`,
  ],
  method: {
    formula: say`typical error = square root of the variance within athletes, shared shift removed`,
    source: say`Typical error: Hopkins 2000, Sports Med 30:1-15, from all results by restricted maximum likelihood. ICC: Shrout & Fleiss 1979, Psychol Bull 86:420-428, complete athletes only.`,
  },
  example: {
    // Shrout & Fleiss 1979, table 2: six targets, four judges; ICC(3,1) is printed as .71.
    results: [
      [9, 2, 5, 8],
      [6, 1, 3, 2],
      [8, 4, 6, 8],
      [7, 1, 2, 6],
      [10, 5, 6, 9],
      [6, 2, 4, 7],
    ].flatMap((row, target) =>
      row.map((value, judge) => testResult({ athlete: `Target ${target + 1}`, attempt: judge + 1, value })),
    ),
    settings: { compare: "trials" },
    gives: [{ athletes: 6, repeats: 4, correlation: 0.7148407148407154 }],
  },
});
