import { z } from "zod";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { amount, choice, measured, place, quantity, share, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";
import { type ProtocolName, protocols } from "./protocols";

const protocolLabels = Object.fromEntries(
  Object.entries(protocols).map(([name, { label }]) => [name, label]),
) as Record<ProtocolName, string>;

const settings = z.object({
  protocol: choice(
    say`Protocol`,
    say`Which test was run, and what was written down. The same number means another thing in another protocol.`,
    protocolLabels,
  ),
  sex: choice(say`Equation for`, say`Some equations differ for women and men; others do not use it.`, {
    female: say`Women`,
    male: say`Men`,
  }),
  firstStage: choice(
    say`First shuttle stage`,
    say`Speed of the first stage of the 20 m shuttle run: versions differ.`,
    {
      at85: say`8.5 km/h`,
      at80: say`8.0 km/h`,
    },
  ),
  runMinutes: amount(say`Run for`, say`How long the all-out run lasted: 5 or 6 minutes.`, "min", {
    low: 3,
    high: 12,
    initial: 6,
  }),
  runMetres: amount(say`Run over`, say`How far the all-out run was: 1200 to 2000 m.`, "m", {
    low: 800,
    high: 3200,
    initial: 1500,
  }),
  intensity: share(say`Intervals at`, say`Share of the speed at which intervals are to be run.`, 50, 140, 100),
  intervalSeconds: amount(say`Intervals of`, say`How long one interval lasts.`, "s", {
    low: 5,
    high: 300,
    initial: 15,
  }),
});

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  result: measured(say`Result`, say`Best result of the latest day: the number to keep and to compare at a retest.`),
  rank: place(say`Rank`, say`Place by the result; 1 is the best.`),
  speed: quantity(
    say`Speed`,
    say`Final speed of the test, or mean speed of the all-out run (maximal aerobic speed).`,
    "km/h",
    "0.0",
  ),
  uptake: quantity(
    say`Oxygen uptake`,
    say`Maximal oxygen uptake as a group's regression estimates it: for one athlete a rough guess.`,
    "ml/kg/min",
    "0.0",
  ),
  run: quantity(
    say`Interval run`,
    say`How far to run in one interval as chosen; only from tests whose speed holds for straight running.`,
    "m",
    "0",
  ),
  verdict: text(say`Verdict`, say`What is missing, and why.`),
});

export type EnduranceSettings = z.output<typeof settings>;
export type EnduranceRow = z.output<typeof gives>;

export const endurance = defineAnalysis({
  ...about,
  select: say`Select the results of one running test with their headings: a row per athlete with the metres, the final speed, the stage or the time. Then say which protocol it was. Birth years and body mass come from your squad's table.`,
  tests: "one",
  takes: "measured",
  needs: [["athlete", "result"]],
  settings,
  gives,
  rowKey: "athlete",
  compute,
  chart: {
    kind: "bar",
    title: say`Endurance`,
    categories: "athlete",
    series: [{ field: "result", name: say`Result`, tone: "strong" }],
    valueAxisTitle: say`Result`,
  },
  cautions: [
    say`Track the result itself. An oxygen uptake from it is a group's regression, off by 3 to 6 ml/kg/min for one athlete, and sets no training zone.`,
    say`Final speeds of different protocols are different things: that of the 30-15 test lies 2 to 5 km/h above a maximal aerobic speed.`,
    say`These are tests to exhaustion: for healthy athletes only, minors under qualified supervision; stop at pain, dizziness or chest complaints and send to a physician.`,
  ],
  method: {
    formula: say`maximal aerobic speed = distance ÷ time; interval run = share × speed × seconds`,
    source: say`Oxygen uptake: Bangsbo et al. 2008, Sports Med 38:37-51; Buchheit 2008, J Strength Cond Res 22:365-374; Léger et al. 1988, J Sports Sci 6:93-101 (under 18); Stickland et al. 2003 (adults); Léger & Lambert 1982. Interval runs: common practice, no source.`,
  },
  example: {
    // Arithmetic in R 4.2.2: 0.0084 × 1200 + 36.4 = 46.48.
    results: [testResult({ athlete: "Example", test: "Shuttles", value: 1200, unit: "m", cell: "B2" })],
    settings: { protocol: "recovery1" },
    gives: [{ athlete: "Example", result: 1200, rank: 1, uptake: 46.48 }],
  },
});
