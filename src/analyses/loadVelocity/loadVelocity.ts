import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { amount, count, index, quantity, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  threshold: amount(
    say`Velocity of a maximal lift`,
    say`The mean velocity at which one repetition just goes. It depends on the lift: about 0.17 in the bench press, 0.3 in the back squat. Keep one for each lift, and use it again at every retest.`,
    "m/s",
    { low: 0.05, high: 1, initial: 0.3 },
  ),
});

const kilograms = (label: string, meaning: string) => quantity(label, meaning, "kg", "0.0");

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  lift: text(say`Lift`, say`The exercise, and the side where there are two.`),
  loads: count(say`Loads`, say`How many different loads were lifted on the latest day; three are the least.`),
  heaviest: quantity(say`Heaviest`, say`The heaviest of these loads.`, "kg", "0.##"),
  maximum: kilograms(
    say`Estimated maximum`,
    say`The load at which the line comes down to the velocity of a maximal lift.`,
  ),
  low: kilograms(
    say`Maximum low`,
    say`Lower 95 % limit of what the line says; how wrong the threshold is for her is not in it.`,
  ),
  high: kilograms(say`Maximum high`, say`Upper 95 % limit of the same.`),
  velocityAtZeroLoad: quantity(say`Velocity without load`, say`Where the line meets no load at all.`, "m/s", "0.00"),
  slope: quantity(say`Change per 10 kg`, say`How much the bar slows down with each 10 kg.`, "m/s", "0.000"),
  fit: index("r²", say`How well the line fits: 1 is all loads on the line. At least 0.95 is wanted.`),
  verdict: text(say`Verdict`, say`What to keep in mind with this athlete's line.`),
  row: z
    .string()
    .meta({ label: say`Row`, meaning: say`Athlete and lift, by which a rerun finds the row.`, quiet: true }),
});

export type LoadVelocitySettings = z.output<typeof settings>;
export type LoadVelocityRow = z.output<typeof gives>;

const example = [
  [40, 1.05],
  [60, 0.83],
  [80, 0.6],
  [100, 0.41],
] as const;

export const loadVelocity = defineAnalysis({
  ...about,
  select: say`Select sets with their headings: columns for the athlete, the load and the mean velocity of the bar, at three loads or more for each athlete; the lift and the date where you have them.`,
  tests: "all",
  takes: "measured",
  needs: [["athlete", "load", "barVelocity"]],
  settings,
  gives,
  rowKey: "row",
  compute,
  chart: {
    kind: "bar",
    title: say`Estimated maximum`,
    categories: "row",
    series: [{ field: "maximum", name: say`Estimated maximum`, tone: "strong" }],
    valueAxisTitle: say`Estimated maximum (kg)`,
  },
  cautions: [
    say`Each lift must be as fast as possible: a bar held back reads as a heavier load.`,
    say`For free-weight squats such estimates were not accurate enough to prescribe loads from: use them to watch one athlete over time, with the same device and threshold.`,
    say`Heavy lifts only for athletes who master them, with spotters; minors only under qualified supervision. After an injury the clinician in charge decides.`,
  ],
  method: {
    formula: say`velocity = a + b × load; maximum = (velocity of a maximal lift − a) ÷ b`,
    source: say`Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347-352 (from memory). Limits: delta method. Squats: Banyard et al. 2017, J Strength Cond Res 31:1897-1904 (title read). r² of at least 0.90: common practice, no source.`,
  },
  example: {
    // R 4.2.2 lm(v ~ load) and vcov for the delta method: tests/reference/expected/load_velocity.json.
    results: example.flatMap(([load, velocity], index) => {
      const set = { athlete: "Example", test: say`Bench press`, attempt: index + 1 };
      return [
        testResult({ ...set, measure: "load", value: load, unit: "kg", cell: `B${index + 2}` }),
        testResult({ ...set, measure: "barVelocity", value: velocity, unit: "m/s", cell: `C${index + 2}` }),
      ];
    }),
    settings: { threshold: 0.3 },
    gives: [
      {
        athlete: "Example",
        lift: say`Bench press`,
        loads: 4,
        heaviest: 100,
        maximum: 109.302325581395,
        velocityAtZeroLoad: 1.475,
        slope: -0.1075,
      },
    ],
  },
});
