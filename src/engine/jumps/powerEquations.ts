import { say } from "../../language/say";

/** Equations that estimate power in a vertical jump (W) from height, body mass and sometimes stature. */
export type PowerEquationName =
  | "sayersSquatJump"
  | "sayersCountermovementJump"
  | "harmanPeak"
  | "harmanAverage"
  | "johnsonBahamondePeak"
  | "johnsonBahamondeAverage"
  | "canavanVescovi"
  | "lewis";

export type PowerEquation = {
  readonly name: PowerEquationName;
  readonly label: string;
  readonly power: "peak" | "average";
  /** As printed: h jump height in cm, m body mass in kg, s stature in cm. */
  readonly formula: string;
  readonly source: string;
  readonly needsStature: boolean;
  /** What a reader must be told whenever the equation is used. */
  readonly reservation: string | null;
  readonly watts: (heightCentimetres: number, massKilograms: number, statureCentimetres: number) => number;
};

/**
 * The closed list. Many copies print Harman's peak equation with + 1822; minus is right: with the mean predictions that
 * Canavan & Vescovi 2004 report for one group of 20 women (abstract read), only minus agrees (2580 against their 2585 W; plus gives 6224).
 * Copies of Johnson & Bahamonde with "+ 1308" or "age" are wrong in the same way.
 */
export const powerEquations: readonly PowerEquation[] = [
  {
    name: "sayersSquatJump",
    get label() {
      return say`Sayers et al., squat jump`;
    },
    power: "peak",
    formula: "60.7 h + 45.3 m - 2055",
    source:
      "Sayers et al. 1999, Med Sci Sports Exerc 31:572-577 (as quoted by secondary pages); recommended there for both jumps",
    needsStature: false,
    reservation: null,
    watts: (h, m) => 60.7 * h + 45.3 * m - 2055,
  },
  {
    name: "sayersCountermovementJump",
    get label() {
      return say`Sayers et al., countermovement jump`;
    },
    power: "peak",
    formula: "51.9 h + 48.9 m - 2007",
    source: "Sayers et al. 1999, Med Sci Sports Exerc 31:572-577 (from memory, agrees with means in an abstract read)",
    needsStature: false,
    reservation: null,
    watts: (h, m) => 51.9 * h + 48.9 * m - 2007,
  },
  {
    name: "harmanPeak",
    get label() {
      return say`Harman et al., peak`;
    },
    power: "peak",
    formula: "61.9 h + 36.0 m - 1822",
    source: "Harman et al. 1991, J Appl Sport Sci Res 5:116-120 (as quoted by secondary pages; sign checked)",
    needsStature: false,
    reservation: null,
    watts: (h, m) => 61.9 * h + 36 * m - 1822,
  },
  {
    name: "harmanAverage",
    get label() {
      return say`Harman et al., average`;
    },
    power: "average",
    formula: "21.2 h + 23.0 m - 1393",
    source: "Harman et al. 1991, J Appl Sport Sci Res 5:116-120 (as quoted by secondary pages)",
    needsStature: false,
    reservation: null,
    watts: (h, m) => 21.2 * h + 23 * m - 1393,
  },
  {
    name: "johnsonBahamondePeak",
    get label() {
      return say`Johnson & Bahamonde, peak`;
    },
    power: "peak",
    formula: "78.6 h + 60.3 m - 15.3 s - 1308",
    source: "Johnson & Bahamonde 1996, J Strength Cond Res 10:161-166 (from memory)",
    needsStature: true,
    reservation: null,
    watts: (h, m, s) => 78.6 * h + 60.3 * m - 15.3 * s - 1308,
  },
  {
    name: "johnsonBahamondeAverage",
    get label() {
      return say`Johnson & Bahamonde, average`;
    },
    power: "average",
    formula: "43.8 h + 32.7 m - 16.8 s + 431",
    source: "Johnson & Bahamonde 1996, J Strength Cond Res 10:161-166 (from memory)",
    needsStature: true,
    get reservation() {
      return say`Copies of this equation differ in its constants.`;
    },
    watts: (h, m, s) => 43.8 * h + 32.7 * m - 16.8 * s + 431,
  },
  {
    name: "canavanVescovi",
    get label() {
      return say`Canavan & Vescovi, women`;
    },
    power: "peak",
    formula: "65.1 h + 25.8 m - 1413.1",
    source: "Canavan & Vescovi 2004, Med Sci Sports Exerc 36:1589-1593 (abstract read; standard error 120.8 W)",
    needsStature: false,
    get reservation() {
      return say`Fitted on 20 young women in countermovement jumps.`;
    },
    watts: (h, m) => 65.1 * h + 25.8 * m - 1413.1,
  },
  {
    name: "lewis",
    get label() {
      return say`Lewis`;
    },
    power: "average",
    formula: "sqrt(4.9) m sqrt(h in metres) 9.81",
    source: "Fox & Mathews, textbook (as quoted by secondary pages)",
    needsStature: false,
    get reservation() {
      return say`Not recommended: it estimates the average power of falling back, not of jumping.`;
    },
    watts: (h, m) => Math.sqrt(4.9) * m * Math.sqrt(h / 100) * 9.81,
  },
];

/** The equation of that name. */
export function powerEquation(name: PowerEquationName): PowerEquation {
  const equation = powerEquations.find((candidate) => candidate.name === name);
  if (!equation) throw new RangeError(`There is no power equation "${name}".`);
  return equation;
}
