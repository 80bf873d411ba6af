import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { choice, quantity, quantityWhereSaid, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const settings = z.object({
  timing: choice(
    say`Timed by`,
    say`A stopwatch is started late: its times are made like those of gates by adding 0.24 s, true to about 0.1 s. Never hold the one against the other.`,
    { gates: say`Timing gates`, stopwatch: say`Stopwatch` },
  ),
  straight: choice(
    say`Deficit of the 505 against`,
    say`Which straight 10 m is taken off the time of the 505. Both are in use and give different numbers; the first is the usual one.`,
    { "first 10 m": say`The first 10 m of the sprint`, "10 to 20 m": say`The stretch from 10 to 20 m` },
  ),
});

const seconds = (label: string, meaning: string) => quantity(label, meaning, "s", "0.00");
const speed = (label: string, meaning: string) => quantity(label, meaning, "m/s", "0.00");
const turn = (label: string, meaning: string) => quantityWhereSaid(label, meaning, "s", "0.00");

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  distance: quantity(
    say`Distance`,
    say`How far the run was timed: the longest of the latest day, of several the fastest.`,
    "m",
    "0",
  ),
  time: seconds(say`Time`, say`Time over that distance, corrected where a stopwatch was used.`),
  lost: text(say`Most lost`, say`The section with most time behind the squad's middle, from 0.03 s on.`),
  won: text(say`Most won`, say`The section with most time ahead of the squad's middle, from 0.03 s on.`),
  fastest: speed(
    say`Fastest section`,
    say`Mean speed of the fastest section between two gates: what was reached for certain.`,
  ),
  maximal: speed(
    say`Maximal speed`,
    say`Speed the run's curve tends to: see its limits, and beyond which distance it is a guess.`,
  ),
  maximalLow: speed(say`Speed low`, say`Lower 95 % limit of the maximal speed.`),
  maximalHigh: speed(say`Speed high`, say`Upper 95 % limit of the maximal speed.`),
  constant: seconds(
    say`Time constant`,
    say`Seconds to 63 % of the maximal speed: the smaller, the quicker the athlete gets going.`,
  ),
  acceleration: quantity(
    say`First acceleration`,
    say`Maximal speed divided by the time constant: the curve's acceleration at the start.`,
    "m/s²",
    "0.00",
  ),
  momentum: quantity(say`Momentum`, say`Body mass times mean speed of the last section.`, say`kg m/s`, "0"),
  force: quantity(
    say`Force at the start`,
    say`Horizontal force for each kg of body mass at no speed, from curve, body mass and stature.`,
    "N/kg",
    "0.0",
  ),
  power: quantity(
    say`Horizontal power`,
    say`The greatest horizontal power for each kg of body mass, from curve, body mass and stature.`,
    "W/kg",
    "0.0",
  ),
  left: turn(say`505 left`, say`Fastest 505 of the latest day on the left side.`),
  right: turn(say`505 right`, say`Fastest 505 of the latest day on the right side.`),
  deficitLeft: turn(say`Deficit left`, say`The 505 on the left less the straight 10 m of the same day.`),
  deficitRight: turn(say`Deficit right`, say`The 505 on the right less the straight 10 m of the same day.`),
  verdict: text(say`Verdict`, say`What is extrapolated or missing, and why.`),
});

export type SprintsSettings = z.output<typeof settings>;
export type SprintsRow = z.output<typeof gives>;

export const sprints = defineAnalysis({
  ...about,
  select: say`Select split times with their headings: columns for the athlete and for 5, 10, 20, 30 m .., counted from the start. The 505, left and right, may stand beside them.`,
  tests: "all",
  takes: "measured",
  needs: [
    ["athlete", "time10", "time20", "time30"],
    ["athlete", "time5"],
    ["athlete", "time10"],
    ["athlete", "time15"],
    ["athlete", "time20"],
    ["athlete", "time30"],
    ["athlete", "time40"],
  ],
  settings,
  gives,
  rowKey: "athlete",
  compute,
  chart: {
    kind: "bar",
    title: say`Speed`,
    categories: "athlete",
    series: [
      { field: "maximal", name: say`Maximal speed of the curve`, tone: "strong" },
      { field: "fastest", name: say`Fastest section`, tone: "soft" },
    ],
    valueAxisTitle: say`Speed (m/s)`,
  },
  cautions: [
    say`Compare only runs with the same start, the same distance to the first gate, the same surface and the same way of timing.`,
    say`From a few gates speed, force and power of the curve carry several percent of error: describe with them, prescribe nothing.`,
    say`All-out sprints and turns need a full warm-up; after an injury the clinician in charge decides.`,
  ],
  method: {
    formula: say`distance = V (t − τ (1 − exp(−t ÷ τ))); deficit = 505 − straight 10 m`,
    source: say`Curve, force and power: Samozino et al. 2016, Scand J Med Sci Sports 26:648-658. Deficit: Nimphius et al. 2016, J Strength Cond Res 30:3024-3032. Stopwatch: Mann et al. 2015, ibid. 29:1509-1514. 0.03 s: common practice, no source.`,
  },
  example: {
    // By hand: the last 10 m in 1.25 s are 8 m/s, for 80 kg 640 kg m/s; 505 in 2.45 s less 10 m in 1.80 s is 0.65 s.
    results: [
      testResult({ athlete: "Example", test: "Sprint", measure: "time10", value: 1.8, unit: "s", cell: "B2" }),
      testResult({ athlete: "Example", test: "Sprint", measure: "time20", value: 3.05, unit: "s", cell: "C2" }),
      testResult({ athlete: "Example", test: "505", side: "left", value: 2.45, unit: "s", cell: "D2" }),
      testResult({ athlete: "Example", measure: "bodyMass", value: 80, unit: "kg", cell: "E2" }),
    ],
    settings: { timing: "gates", straight: "first 10 m" },
    gives: [{ athlete: "Example", distance: 20, time: 3.05, fastest: 8, momentum: 640, left: 2.45, deficitLeft: 0.65 }],
  },
});
