import { z } from "zod";
import { repetitionRange, type StrengthEquationName, strengthEquations } from "../../engine/strength/equations";
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
    "Equation",
    "How a load and its repetitions (w and r) become a maximum. None is best for all lifts: keep one, and use it again " +
      "at every retest. The range over all of them stands beside each estimate.",
    equations,
  ),
  repetitions: amount("Repetitions planned", "How many repetitions a working set is to have.", "reps", {
    low: 1,
    high: repetitionRange.most,
    initial: 5,
  }),
  reserve: amount(
    "To leave in reserve",
    "How many more repetitions should be possible after the working set.",
    "reps",
    {
      low: 0,
      high: 5,
      initial: 2,
    },
  ),
  bar: amount("Bar", "What the empty bar weighs.", "kg", { low: 1, high: 50, initial: 20 }),
  smallestPlate: amount("Smallest plate", "The lightest plate of which you have a pair.", "kg", {
    low: 0.25,
    high: 25,
    initial: 1.25,
  }),
  rounding: choice("Round the load", "Rounding down never asks for more than was planned.", {
    down: "Down",
    nearest: "To the nearest",
  }),
});

const kilograms = (label: string, meaning: string) => quantity(label, meaning, "kg", "0.0");

const gives = z.object({
  athlete: text("Athlete", "Name as it stands in your sheet."),
  lift: text("Lift", "The exercise, and the side where there are two."),
  load: quantity("Load", "Load of the set that counts: the highest estimate of the latest day.", "kg", "0.##"),
  repetitions: quantity("To failure", "Repetitions of that set, those left in reserve counted in.", "reps", "0.#"),
  maximum: kilograms("Estimated maximum", "The load that can be expected to go once, by the equation chosen."),
  lowest: kilograms("Lowest equation", "The lowest answer of all equations for the same set."),
  highest: kilograms("Highest equation", "The highest answer of all equations for the same set."),
  relative: index("Per body mass", "Estimated maximum divided by body mass: kg for each kg. Favours light athletes."),
  rank: place("Rank", "Place by estimated maximum among those who did this lift; 1 is the strongest."),
  workingLoad: quantity("Working load", "Bar and plates for the repetitions planned: where to start.", "kg", "0.##"),
  share: percent("Of the maximum", "The working load, as it can be loaded, in percent of the estimated maximum."),
  plates: text("Plates per side", "Plates in kg for one side of the bar, heaviest first."),
  verdict: text("Verdict", "What to keep in mind with this athlete's numbers."),
  row: z.string().meta({ label: "Row", meaning: "Athlete and lift, by which a rerun finds the row.", quiet: true }),
});

export type StrengthSettings = z.output<typeof settings>;
export type StrengthRow = z.output<typeof gives>;

export const strength = defineAnalysis({
  ...about,
  select:
    "Select sets with their headings: columns for the athlete, the load and the repetitions done with it; repetitions in " +
    "reserve, the lift and the date where you have them. Body mass comes from the selection or from your squad's table.",
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
    title: "Estimated maximum",
    categories: "row",
    series: [{ field: "maximum", name: "Estimated maximum", tone: "strong" }],
    valueAxisTitle: "Estimated maximum (kg)",
  },
  cautions: [
    "These are estimates: one athlete's may be wrong by a tenth, and no tested maximum may be compared with them as a change.",
    "Working loads are where to start; let the first set correct them.",
    "Test heavy only athletes who master the lift, with spotters; minors only under qualified supervision. After an injury " +
      "the clinician in charge decides.",
  ],
  method: {
    formula: "maximum = load × factor of the repetitions; working load = maximum ÷ factor of the repetitions planned",
    source:
      "Equations as quoted by secondary pages; several were never validated when first printed (Richens & Cleather 2014, " +
      "Biol Sport 31:157-161). No more than 10 repetitions: Reynolds et al. 2006, J Strength Cond Res 20:584-592. " +
      "Error of an estimate: Hutchins & Gearhart 2010.",
  },
  example: {
    // Arithmetic in R 4.2.2 on the printed equations, 100 kg lifted five times: Epley 116.67, the least of all 112.5
    // (Brzycki, O'Conner), 94.59 for seven repetitions, hence 92.5 on a bar of 20 with plates from 1.25.
    results: [
      testResult({ athlete: "Example", test: "Back squat", measure: "load", value: 100, unit: "kg", cell: "B2" }),
      testResult({
        athlete: "Example",
        test: "Back squat",
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
        lift: "Back squat",
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
