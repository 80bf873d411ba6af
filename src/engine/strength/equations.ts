import { say } from "../../language/say";

/** Equations that turn a load lifted `r` times to failure into the load that can be lifted once. */
export type StrengthEquationName =
  | "epley"
  | "brzycki"
  | "brzyckiDecimal"
  | "lander"
  | "lombardi"
  | "mayhew"
  | "oConner"
  | "wathan";

export type StrengthEquation = {
  readonly name: StrengthEquationName;
  readonly label: string;
  /** As printed: w is the load, r the repetitions. */
  readonly formula: string;
  readonly source: string;
  readonly repetitions: RepetitionRange;
  /** Maximum divided by load, for a number of repetitions above one. */
  readonly maximumPerLoad: (repetitions: number) => number;
};

/** Repetitions an estimate is trusted for, and the most it is given for at all. */
type RepetitionRange = { readonly trusted: readonly [number, number]; readonly most: number };

/**
 * Two to ten repetitions are trusted, eleven to fifteen are rough, more is refused: common practice, in line with
 * "no more than 10 repetitions" (Reynolds et al. 2006, J Strength Cond Res 20:584-592, abstract read) and with smaller
 * errors for fewer repetitions (Whisenant et al. 2003, J Strength Cond Res 17:221-227, abstract read).
 */
export const repetitionRange: RepetitionRange = { trusted: [2, 10], most: 15 };

/**
 * The closed list. Coefficients as quoted alike by two unrelated secondary pages and from memory; several were never
 * validated when first printed (Richens & Cleather 2014, Biol Sport 31:157-161, table read). Brzycki's equation is printed
 * as a fraction and with decimals, which differ in the fourth digit; the fraction is our choice, the other is offered.
 */
export const strengthEquations: readonly StrengthEquation[] = [
  {
    name: "epley",
    get label() {
      return say`Epley`;
    },
    formula: "w (1 + r / 30)",
    source: "Epley 1985, poundage chart (as quoted by secondary pages)",
    repetitions: repetitionRange,
    maximumPerLoad: (r) => 1 + r / 30,
  },
  {
    name: "brzycki",
    get label() {
      return say`Brzycki`;
    },
    formula: "36 w / (37 - r)",
    source: "Brzycki 1993, JOPERD 64:88-90 (as quoted by secondary pages)",
    repetitions: repetitionRange,
    maximumPerLoad: (r) => 36 / (37 - r),
  },
  {
    name: "brzyckiDecimal",
    get label() {
      return say`Brzycki, decimal form`;
    },
    formula: "w / (1.0278 - 0.0278 r)",
    source: "Brzycki 1993, JOPERD 64:88-90 (as quoted by secondary pages)",
    repetitions: repetitionRange,
    maximumPerLoad: (r) => 1 / (1.0278 - 0.0278 * r),
  },
  {
    name: "lander",
    get label() {
      return say`Lander`;
    },
    formula: "100 w / (101.3 - 2.67123 r)",
    source: "Lander 1985, NSCA J 6:60-61 (as quoted by secondary pages)",
    repetitions: repetitionRange,
    maximumPerLoad: (r) => 100 / (101.3 - 2.67123 * r),
  },
  {
    name: "lombardi",
    get label() {
      return say`Lombardi`;
    },
    formula: "w r^0.10",
    source: "Lombardi 1989, textbook (as quoted by secondary pages)",
    repetitions: repetitionRange,
    maximumPerLoad: (r) => r ** 0.1,
  },
  {
    name: "mayhew",
    get label() {
      return say`Mayhew et al.`;
    },
    formula: "100 w / (52.2 + 41.9 exp(-0.055 r))",
    source: "Mayhew et al. 1992, J Appl Sport Sci Res 6:200-206, bench press (as quoted by secondary pages)",
    repetitions: repetitionRange,
    maximumPerLoad: (r) => 100 / (52.2 + 41.9 * Math.exp(-0.055 * r)),
  },
  {
    name: "oConner",
    get label() {
      return say`O'Conner et al.`;
    },
    formula: "w (1 + 0.025 r)",
    source: "O'Conner et al. 1989, textbook (as quoted by secondary pages)",
    repetitions: repetitionRange,
    maximumPerLoad: (r) => 1 + 0.025 * r,
  },
  {
    name: "wathan",
    get label() {
      return say`Wathan`;
    },
    formula: "100 w / (48.8 + 53.8 exp(-0.075 r))",
    source: "Wathan 1994, NSCA Essentials, first edition (as quoted by secondary pages)",
    repetitions: repetitionRange,
    maximumPerLoad: (r) => 100 / (48.8 + 53.8 * Math.exp(-0.075 * r)),
  },
];

/** The equation of that name. */
export function strengthEquation(name: StrengthEquationName): StrengthEquation {
  const equation = strengthEquations.find((candidate) => candidate.name === name);
  if (!equation) throw new RangeError(`There is no strength equation "${name}".`);
  return equation;
}
