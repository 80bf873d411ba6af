import { z } from "zod";
import { type PowerEquationName, powerEquations } from "../../engine/jumps/powerEquations";
import { say } from "../../language/say";
import { testResult } from "../../reading/testResult";
import { defineAnalysis } from "../analysis";
import { choice, index, place, quantity, text } from "../fields";
import { about } from "./about";
import { compute } from "./compute";

const peakEquations = Object.fromEntries(
  powerEquations
    .filter(({ power }) => power === "peak")
    .map(({ name, label, formula }) => [name, `${label}: ${formula}`]),
) as Record<PowerEquationName, string>;

const settings = z.object({
  equation: choice(
    say`Equation for peak power`,
    say`How height (h, cm), body mass (m, kg) and stature (s, cm) become an estimate of peak power. Equations differ by hundreds of watts: keep one.`,
    peakEquations,
  ),
  others: choice(
    say`Other jumps are`,
    say`What a jump is whose name does not say it (CMJ, squat jump, drop jump ..). A jump with a contact time is always a drop jump.`,
    {
      none: say`Left out`,
      countermovement: say`Countermovement jumps`,
      squat: say`Squat jumps`,
      drop: say`Drop jumps`,
    },
  ),
});

const centimetres = (label: string, meaning: string) => quantity(label, meaning, "cm", "0.0");

const gives = z.object({
  athlete: text(say`Athlete`, say`Name as it stands in your sheet.`),
  countermovement: centimetres(
    say`Countermovement jump`,
    say`Highest of the latest day; from the time in the air where no height was measured.`,
  ),
  heightRank: place(say`Rank, height`, say`Place by the countermovement jump; 1 is the highest.`),
  squat: centimetres(say`Squat jump`, say`Highest of the latest day.`),
  utilisation: index(
    say`Countermovement ÷ squat`,
    say`Eccentric utilisation ratio, where both were jumped on one day. About 1.0 to 1.2.`,
  ),
  power: quantity(
    say`Peak power`,
    say`Estimated from the countermovement jump (else the squat jump) and body mass.`,
    "W",
    "0",
  ),
  relativePower: quantity(say`Power per kg`, say`Estimated peak power divided by body mass.`, "W/kg", "0.0"),
  drop: centimetres(say`Drop jump`, say`Height of the drop jump with the best index of the latest day.`),
  contact: quantity(say`Contact`, say`How long the same jump was on the ground.`, "ms", "0"),
  reactive: quantity(
    say`RSI`,
    say`Reactive strength index: height of the drop jump divided by its contact time.`,
    "m/s",
    "0.00",
  ),
  reactiveRank: place(say`Rank, RSI`, say`Place by the reactive strength index; 1 is the largest.`),
  verdict: text(say`Verdict`, say`What the numbers say side by side, and what is missing.`),
});

export type JumpsSettings = z.output<typeof settings>;
export type JumpsRow = z.output<typeof gives>;

export const jumps = defineAnalysis({
  ...about,
  select: say`Select vertical jumps with their headings: columns for the athlete and for height or flight time, and the contact time of drop jumps. The test's name says which jump it is: countermovement, squat or drop jump.`,
  tests: "all",
  takes: "measured",
  needs: [
    ["athlete", "flightTime", "contactTime"],
    ["athlete", "flightTime"],
    ["athlete", "jumpHeight"],
    ["athlete", "result"],
  ],
  settings,
  gives,
  rowKey: "athlete",
  compute,
  chart: {
    kind: "bar",
    title: say`Jump height`,
    categories: "athlete",
    series: [
      { field: "countermovement", name: say`Countermovement jump`, tone: "strong" },
      { field: "drop", name: say`Drop jump`, tone: "soft" },
    ],
    valueAxisTitle: say`Height (cm)`,
  },
  cautions: [
    say`Height from the time in the air is true only when athletes land as straight as they took off; heights by reach, flight and force plate are not comparable.`,
    say`Peak power is an estimate with an error of hundreds of watts: a change in it with the same height is a change in body mass.`,
    say`Drop jumps are for athletes used to landing from that height; minors only under qualified supervision.`,
  ],
  method: {
    formula: say`height = 9.81 × flight² ÷ 8; RSI = height ÷ contact; ratio = countermovement ÷ squat jump`,
    source: say`Flight time: uniform motion under gravity. RSI: Young 1995; Flanagan & Comyns 2008. Ratio: McGuigan et al. 2006, J Strength Cond Res 20:992-995 (all from memory). Power: Sayers et al. 1999, Med Sci Sports Exerc 31:572-577, and others; 20 % too much in women: Canavan & Vescovi 2004, ibid. 36:1589-1593.`,
  },
  example: {
    // Arithmetic in R 4.2.2: 0.5 s of flight are 30.65625 cm, with 0.2 s of contact 1.5328125 m/s; 40 cm and 75 kg are
    // 3770.5 W by the first equation; 40 over 32 cm by hand.
    results: [
      testResult({ athlete: "Example", test: "CMJ", measure: "jumpHeight", value: 40, unit: "cm", cell: "B2" }),
      testResult({
        athlete: "Example",
        test: say`Squat jump`,
        measure: "jumpHeight",
        value: 32,
        unit: "cm",
        cell: "C2",
      }),
      testResult({
        athlete: "Example",
        test: say`Drop jump`,
        measure: "flightTime",
        value: 500,
        unit: "ms",
        cell: "D2",
      }),
      testResult({
        athlete: "Example",
        test: say`Drop jump`,
        measure: "contactTime",
        value: 200,
        unit: "ms",
        cell: "E2",
      }),
      testResult({ athlete: "Example", measure: "bodyMass", value: 75, unit: "kg", cell: "F2" }),
    ],
    settings: { equation: "sayersSquatJump", others: "countermovement" },
    gives: [
      {
        athlete: "Example",
        countermovement: 40,
        squat: 32,
        utilisation: 1.25,
        power: 3770.5,
        drop: 30.65625,
        contact: 200,
        reactive: 1.5328125,
      },
    ],
  },
});
