import { inSentence, say } from "../language/say";
import { wordings } from "../language/tableWords";
import { type Unit, unitOf } from "./units";

/**
 * What a number of a test is, where the formulas need to know it: the load and the repetitions of one set, the splits of
 * one sprint, the flight and the contact of one jump. A test that gives one number and enters no formula needs none.
 */
export type Measure = {
  /** As it stands in the workbook's tables and in the pane. */
  readonly label: string;
  /** Symbol of the unit in which results are kept and the engine is fed (`reading/units.ts`); null for a plain number. */
  readonly unit: string | null;
  /** Which values are better; null where neither is (a load says nothing without its repetitions). */
  readonly better: "higher" | "lower" | null;
  /** Computed from other measures of the same test, never typed in. */
  readonly derived?: true;
  /** Words in headings that mean it, lower case, English and German. */
  readonly spellings: readonly string[];
  /** Words that mean it beside the name of a test only: a "Height" by itself may be the athlete's. */
  readonly spellingsBesideTest?: readonly string[];
  /** Whether 0 can be its value: no repetition managed, none left in reserve. */
  readonly mayBeZero?: true;
};

export const measures = {
  load: {
    get label() {
      return say`Load`;
    },
    unit: "kg",
    better: null,
    spellings: ["load", "weight lifted", "bar load", "last"],
    spellingsBesideTest: ["weight", "gewicht"],
  },
  repetitions: {
    get label() {
      return say`Repetitions`;
    },
    unit: "reps",
    better: "higher",
    spellings: ["repetitions", "reps", "rep", "wiederholungen", "wdh"],
    mayBeZero: true,
  },
  repetitionsInReserve: {
    get label() {
      return say`Repetitions in reserve`;
    },
    unit: "reps",
    better: null,
    spellings: ["repetitions in reserve", "reps in reserve", "reserve", "rir"],
    mayBeZero: true,
  },
  barVelocity: {
    get label() {
      return say`Bar velocity`;
    },
    unit: "m/s",
    better: "higher",
    spellings: ["bar velocity", "mean velocity", "bar speed", "velocity"],
  },
  flightTime: {
    get label() {
      return say`Flight time`;
    },
    unit: "ms",
    better: "higher",
    spellings: ["flight time", "flight", "flugzeit"],
  },
  contactTime: {
    get label() {
      return say`Contact time`;
    },
    unit: "ms",
    better: "lower",
    spellings: ["contact time", "ground contact", "contact", "kontaktzeit"],
  },
  jumpHeight: {
    get label() {
      return say`Jump height`;
    },
    unit: "cm",
    better: "higher",
    spellings: ["jump height", "sprunghöhe"],
    spellingsBesideTest: ["height", "höhe"],
  },
  time5: { label: "5 m", unit: "s", better: "lower", spellings: ["5 m", "5m"] },
  time10: { label: "10 m", unit: "s", better: "lower", spellings: ["10 m", "10m"] },
  time15: { label: "15 m", unit: "s", better: "lower", spellings: ["15 m", "15m"] },
  time20: { label: "20 m", unit: "s", better: "lower", spellings: ["20 m", "20m"] },
  time30: { label: "30 m", unit: "s", better: "lower", spellings: ["30 m", "30m"] },
  time40: { label: "40 m", unit: "s", better: "lower", spellings: ["40 m", "40m"] },
  bodyMass: {
    get label() {
      return say`Body mass`;
    },
    unit: "kg",
    better: null,
    spellings: ["body mass", "body weight", "bodyweight", "mass"],
  },
  stature: {
    get label() {
      return say`Stature`;
    },
    unit: "cm",
    better: null,
    spellings: ["stature", "standing height", "körpergröße"],
  },
  estimatedMaximum: {
    get label() {
      return say`Estimated maximum`;
    },
    unit: "kg",
    better: "higher",
    derived: true,
    spellings: [],
  },
  relativeStrength: {
    get label() {
      return say`Strength per body mass`;
    },
    unit: null,
    better: "higher",
    derived: true,
    spellings: [],
  },
  reactiveStrengthIndex: {
    get label() {
      return say`Reactive strength index`;
    },
    unit: "m/s",
    better: "higher",
    derived: true,
    spellings: [],
  },
  peakPower: {
    get label() {
      return say`Peak power`;
    },
    unit: "W",
    better: "higher",
    derived: true,
    spellings: [],
  },
  maximalSpeed: {
    get label() {
      return say`Maximal speed`;
    },
    unit: "m/s",
    better: "higher",
    derived: true,
    spellings: [],
  },
  deficit: {
    get label() {
      return say`Change-of-direction deficit`;
    },
    unit: "s",
    better: "lower",
    derived: true,
    spellings: [],
  },
} as const satisfies Readonly<Record<string, Measure>>;

export type MeasureKey = keyof typeof measures;

export const measureKeys = Object.keys(measures) as readonly MeasureKey[];

export const measureOf = (key: MeasureKey): Measure => measures[key];

/** Whether results of a measure can be in a unit: always, where either is not known. */
export function fitsMeasure(unit: Unit | null, measure: MeasureKey | null): boolean {
  const wanted = measure === null ? null : unitOf(measureOf(measure).unit ?? "");
  return unit === null || wanted === null || unit.quantity === wanted.quantity;
}

export const isMeasureKey = (key: string): key is MeasureKey => key in measures;

/** The measure a word of a table means ("Load"), whatever its case; null where it means none. */
export function measureCalled(words: string): MeasureKey | null {
  const wanted = words.trim().toLowerCase();
  return (
    measureKeys.find((key) => {
      const { label, spellings } = measureOf(key);
      return wordings(label).some((one) => one.toLowerCase() === wanted) || spellings.includes(wanted);
    }) ?? null
  );
}

/** What a coach calls a series of results: "Single-leg hop", or "Drop jump, contact time". */
export const seriesName = (test: string, measure: MeasureKey | null): string => {
  if (measure === null) return test;
  const { label } = measureOf(measure);
  return test === "" ? label : `${test}, ${inSentence(label)}`;
};
