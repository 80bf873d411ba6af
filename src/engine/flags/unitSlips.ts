import { say } from "../../language/say";
import type { Unit } from "./plausibleRanges";

/** A way to type a value in the wrong unit: multiplying what was typed by `factor` gives it in the right one. */
export type UnitSlip = { readonly name: string; readonly words: string; readonly factor: number };

const lostDecimalSign: readonly UnitSlip[] = [
  {
    name: "decimalSignLost1",
    get words() {
      return say`with the decimal sign lost`;
    },
    factor: 1 / 10,
  },
  {
    name: "decimalSignLost2",
    get words() {
      return say`with the decimal sign lost`;
    },
    factor: 1 / 100,
  },
];

/** The slips known for each unit, the likeliest first. Factors are definitions; which slips occur is common practice, no source. */
export const unitSlips: Readonly<Record<Unit, readonly UnitSlip[]>> = {
  cm: [
    {
      name: "metres",
      get words() {
        return say`in metres`;
      },
      factor: 100,
    },
    {
      name: "millimetres",
      get words() {
        return say`in millimetres`;
      },
      factor: 1 / 10,
    },
    {
      name: "inches",
      get words() {
        return say`in inches`;
      },
      factor: 2.54,
    },
  ],
  m: [
    {
      name: "centimetres",
      get words() {
        return say`in centimetres`;
      },
      factor: 1 / 100,
    },
    {
      name: "millimetres",
      get words() {
        return say`in millimetres`;
      },
      factor: 1 / 1000,
    },
    {
      name: "inches",
      get words() {
        return say`in inches`;
      },
      factor: 0.0254,
    },
  ],
  s: [
    {
      name: "milliseconds",
      get words() {
        return say`in milliseconds`;
      },
      factor: 1 / 1000,
    },
    // A spreadsheet reads 5:10 as hours and minutes and keeps it as a share of a day.
    {
      name: "minutesAndSeconds",
      get words() {
        return say`as minutes and seconds, which the sheet took for a time of day`;
      },
      factor: 1440,
    },
    ...lostDecimalSign,
  ],
  kg: [
    {
      name: "pounds",
      get words() {
        return say`in pounds`;
      },
      factor: 0.45359237,
    },
    {
      name: "grams",
      get words() {
        return say`in grams`;
      },
      factor: 1 / 1000,
    },
    ...lostDecimalSign,
  ],
  min: [
    {
      name: "seconds",
      get words() {
        return say`in seconds`;
      },
      factor: 1 / 60,
    },
    {
      name: "hoursAndMinutes",
      get words() {
        return say`as hours and minutes, which the sheet took for a time of day`;
      },
      factor: 1440,
    },
    {
      name: "hours",
      get words() {
        return say`in hours`;
      },
      factor: 60,
    },
  ],
  repetitions: [],
  rating: [
    {
      name: "hundredPointScale",
      get words() {
        return say`on a scale to 100`;
      },
      factor: 1 / 10,
    },
  ],
};
