import { z } from "zod";
import { repetitionRange, type StrengthEquationName, strengthEquations } from "../../engine/strength/equations";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { amount, choice, index, percent, place, quantity, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";
import { live } from "./live";

const equations = Object.fromEntries(
  strengthEquations.map(({ name, label, formula }) => [name, `${label}: ${formula}`]),
) as Record<StrengthEquationName, string>;

const settings = z.object({
  equation: choice(
    say`Equation`,
    say`How a load and its repetitions (w and r) become a maximum. None is best for all lifts: keep one, and use it again at every retest. The range over all of them stands beside each estimate.`,
    equations,
  ),
  repetitions: amount(say`Repetitions planned`, say`How many repetitions a working set is to have.`, say`reps`, {
    low: 1,
    high: repetitionRange.most,
    initial: 5,
  }),
  reserve: amount(
    say`To leave in reserve`,
    say`How many more repetitions should be possible after the working set.`,
    say`reps`,
    {
      low: 0,
      high: 5,
      initial: 2,
    },
  ),
  bar: amount(say`Bar`, say`What the empty bar weighs.`, "kg", { low: 1, high: 50, initial: 20 }),
  smallestPlate: amount(say`Smallest plate`, say`The lightest plate of which you have a pair.`, "kg", {
    low: 0.25,
    high: 25,
    initial: 1.25,
  }),
  rounding: choice(say`Round the load`, say`Rounding down never asks for more than was planned.`, {
    down: say`Down`,
    nearest: say`To the nearest`,
  }),
});

const kilograms = (label: string, meaning: string) => quantity(label, meaning, "kg", "0.0");

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  lift: text(say`Lift`, say`The exercise, and the side where there are two.`),
  load: quantity(say`Load`, say`Load of the set that counts: the highest estimate of the latest day.`, "kg", "0.##"),
  repetitions: quantity(
    say`To failure`,
    say`Repetitions of that set, those left in reserve counted in.`,
    say`reps`,
    "0.#",
  ),
  maximum: kilograms(say`Estimated maximum`, say`The load that can be expected to go once, by the equation chosen.`),
  lowest: kilograms(say`Lowest equation`, say`The lowest answer of all equations for the same set.`),
  highest: kilograms(say`Highest equation`, say`The highest answer of all equations for the same set.`),
  relative: index(
    say`Per body mass`,
    say`Estimated maximum divided by body mass: kg for each kg. Favours light athletes.`,
  ),
  rank: place(say`Rank`, say`Place by estimated maximum among those who did this lift; 1 is the strongest.`),
  workingLoad: quantity(
    say`Working load`,
    say`Bar and plates for the repetitions planned: where to start.`,
    "kg",
    "0.##",
  ),
  share: percent(say`Of the maximum`, say`The working load, as it can be loaded, in percent of the estimated maximum.`),
  plates: text(say`Plates per side`, say`Plates in kg for one side of the bar, heaviest first.`),
  verdict: text(say`Verdict`, say`What to keep in mind with this athlete's numbers.`),
  row: z
    .string()
    .meta({ label: say`Row`, meaning: say`Athlete and lift, by which a rerun finds the row.`, quiet: true }),
});

export type StrengthSettings = z.output<typeof settings>;
export type StrengthRow = z.output<typeof gives>;

export const strength = defineAnalysis({
  ...about,
  select: say`Select sets with their headings: columns for the athlete, the load and the repetitions done with it; repetitions in reserve, the lift and the date where you have them. Body mass comes from the selection or from your squad's table.`,
  tests: "all",
  takes: "measured",
  needs: [["athlete", "load", "repetitions"]],
  settings,
  gives,
  rowKey: "row",
  compute,
  live,
  chart: {
    kind: "bar",
    title: say`Estimated maximum`,
    categories: "row",
    series: [{ field: "maximum", name: say`Estimated maximum`, tone: "strong" }],
    valueAxisTitle: say`Estimated maximum (kg)`,
  },
  cautions: [
    say`These are estimates: one athlete's may be wrong by a tenth, and no tested maximum may be compared with them as a change.`,
    say`Working loads are where to start; let the first set correct them.`,
    say`Test heavy only athletes who master the lift, with spotters; minors only under qualified supervision. After an injury the clinician in charge decides.`,
  ],
  method: {
    formula: say`maximum = load × factor of the repetitions; working load = maximum ÷ factor of the repetitions planned`,
    source: say`Equations as quoted by secondary pages; several were never validated when first printed (Richens & Cleather 2014, Biol Sport 31:157-161). No more than 10 repetitions: Reynolds et al. 2006, J Strength Cond Res 20:584-592. Error of an estimate: Hutchins & Gearhart 2010.`,
  },
  example: {
    // Arithmetic in R 4.2.2 on the printed equations, 100 kg lifted five times: Epley 116.67, the least of all 112.5
    // (Brzycki, O'Conner), 94.59 for seven repetitions, hence 92.5 on a bar of 20 with plates from 1.25.
    results: [
      testResult({ athlete: "Example", test: say`Back squat`, measure: "load", value: 100, unit: "kg", cell: "B2" }),
      testResult({
        athlete: "Example",
        test: say`Back squat`,
        measure: "repetitions",
        value: 5,
        unit: "reps",
        cell: "C2",
      }),
      testResult({ athlete: "Example", measure: "bodyMass", value: 75, unit: "kg", cell: "D2" }),
    ],
    settings: { equation: "epley", repetitions: 5, reserve: 2 },
    gives: [
      {
        athlete: "Example",
        lift: say`Back squat`,
        maximum: 116.66666666666667,
        lowest: 112.5,
        relative: 1.5555555555555556,
        rank: 1,
        workingLoad: 92.5,
        plates: "25 + 10 + 1.25",
      },
    ],
  },
});
