import type { Unit } from "./plausibleRanges";

/** A way to type a value in the wrong unit: multiplying what was typed by `factor` gives it in the right one. */
export type UnitSlip = { readonly name: string; readonly words: string; readonly factor: number };

const lostDecimalSign: readonly UnitSlip[] = [
  { name: "decimalSignLost1", words: "with the decimal sign lost", factor: 1 / 10 },
  { name: "decimalSignLost2", words: "with the decimal sign lost", factor: 1 / 100 },
];

/** The slips known for each unit, the likeliest first. Factors are definitions; which slips occur is common practice, no source. */
export const unitSlips: Readonly<Record<Unit, readonly UnitSlip[]>> = {
  cm: [
    { name: "metres", words: "in metres", factor: 100 },
    { name: "millimetres", words: "in millimetres", factor: 1 / 10 },
    { name: "inches", words: "in inches", factor: 2.54 },
  ],
  m: [
    { name: "centimetres", words: "in centimetres", factor: 1 / 100 },
    { name: "millimetres", words: "in millimetres", factor: 1 / 1000 },
    { name: "inches", words: "in inches", factor: 0.0254 },
  ],
  s: [
    { name: "milliseconds", words: "in milliseconds", factor: 1 / 1000 },
    // A spreadsheet reads 5:10 as hours and minutes and keeps it as a share of a day.
    {
      name: "minutesAndSeconds",
      words: "as minutes and seconds, which the sheet took for a time of day",
      factor: 1440,
    },
    ...lostDecimalSign,
  ],
  kg: [
    { name: "pounds", words: "in pounds", factor: 0.45359237 },
    { name: "grams", words: "in grams", factor: 1 / 1000 },
    ...lostDecimalSign,
  ],
  min: [
    { name: "seconds", words: "in seconds", factor: 1 / 60 },
    { name: "hoursAndMinutes", words: "as hours and minutes, which the sheet took for a time of day", factor: 1440 },
    { name: "hours", words: "in hours", factor: 60 },
  ],
  repetitions: [],
  rating: [{ name: "hundredPointScale", words: "on a scale to 100", factor: 1 / 10 }],
};
