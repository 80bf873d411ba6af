import { squadMean, squadSpread } from "./hopTest";

export const qualities = [
  "Jumping power",
  "Speed",
  "Change of direction",
  "Throwing power",
  "Maximal strength",
  "Trunk and leg capacity",
  "Endurance",
] as const;
export type Quality = (typeof qualities)[number];

/** One true score of an athlete; the numbers on the sheets vary about it. */
export type BatteryTest = {
  readonly quality: Quality;
  readonly better: "higher" | "lower";
  readonly day: "field" | "gym";
  readonly sides: 1 | 2;
  readonly trials: number;
  /** Mean and standard deviation of the seniors' true scores: invented, to look like a women's handball club. */
  readonly mean: number;
  readonly spread: number;
  /** How far the under-18 squad is behind, in spreads. */
  readonly juniorsBehind: number;
  /** The name at the head of its columns, and the unit. A lift has columns for load and repetitions in place of these. */
  readonly heading: string;
  readonly unit: string;
  /** What the instrument or the tape resolves, in the unit. */
  readonly step: number;
};

/** In the order in which they are done. True scores of the lifts are one-repetition maxima, of the sprint 30 m times. */
export const battery = {
  singleLegHop: {
    quality: "Jumping power",
    better: "higher",
    day: "gym",
    sides: 2,
    trials: 3,
    mean: squadMean,
    spread: squadSpread,
    juniorsBehind: 0.7,
    heading: "Single-leg hop",
    unit: "cm",
    step: 1,
  },
  countermovementJump: {
    quality: "Jumping power",
    better: "higher",
    day: "gym",
    sides: 1,
    trials: 3,
    mean: 495,
    spread: 30,
    juniorsBehind: 0.7,
    heading: "Countermovement jump flight time",
    unit: "ms",
    step: 1,
  },
  dropJumpFlight: {
    quality: "Jumping power",
    better: "higher",
    day: "gym",
    sides: 1,
    trials: 3,
    mean: 470,
    spread: 30,
    juniorsBehind: 0.7,
    heading: "Drop jump flight time",
    unit: "ms",
    step: 1,
  },
  dropJumpContact: {
    quality: "Jumping power",
    better: "lower",
    day: "gym",
    sides: 1,
    trials: 3,
    mean: 215,
    spread: 24,
    juniorsBehind: 0.4,
    heading: "Drop jump contact time",
    unit: "ms",
    step: 1,
  },
  sprint: {
    quality: "Speed",
    better: "lower",
    day: "field",
    sides: 1,
    trials: 2,
    mean: 4.63,
    spread: 0.16,
    juniorsBehind: 0.5,
    heading: "Sprint",
    unit: "s",
    step: 0.01,
  },
  changeOfDirection: {
    quality: "Change of direction",
    better: "lower",
    day: "field",
    sides: 2,
    trials: 2,
    mean: 2.65,
    spread: 0.1,
    juniorsBehind: 0.5,
    heading: "505",
    unit: "s",
    step: 0.01,
  },
  medicineBallThrow: {
    quality: "Throwing power",
    better: "higher",
    day: "field",
    sides: 1,
    trials: 3,
    mean: 7.6,
    spread: 0.8,
    juniorsBehind: 1,
    heading: "Overhead medicine-ball throw",
    unit: "m",
    step: 0.1,
  },
  shuttleRun: {
    quality: "Endurance",
    better: "higher",
    day: "field",
    sides: 1,
    trials: 1,
    mean: 1080,
    spread: 220,
    juniorsBehind: 0.3,
    heading: "Intermittent shuttle run",
    unit: "m",
    step: 40,
  },
  backSquat: {
    quality: "Maximal strength",
    better: "higher",
    day: "gym",
    sides: 1,
    trials: 1,
    mean: 86,
    spread: 11,
    juniorsBehind: 1.3,
    heading: "Back squat",
    unit: "kg",
    step: 2.5,
  },
  benchPress: {
    quality: "Maximal strength",
    better: "higher",
    day: "gym",
    sides: 1,
    trials: 1,
    mean: 54,
    spread: 7,
    juniorsBehind: 1.3,
    heading: "Bench press",
    unit: "kg",
    step: 2.5,
  },
  calfRaise: {
    quality: "Trunk and leg capacity",
    better: "higher",
    day: "gym",
    sides: 2,
    trials: 1,
    mean: 26,
    spread: 4.5,
    juniorsBehind: 0.4,
    heading: "Single-leg calf raise",
    unit: "reps",
    step: 1,
  },
  hamstringBridge: {
    quality: "Trunk and leg capacity",
    better: "higher",
    day: "gym",
    sides: 2,
    trials: 1,
    mean: 28,
    spread: 5,
    juniorsBehind: 0.4,
    heading: "Single-leg hamstring bridge",
    unit: "reps",
    step: 1,
  },
  sidePlank: {
    quality: "Trunk and leg capacity",
    better: "higher",
    day: "gym",
    sides: 2,
    trials: 1,
    mean: 78,
    spread: 16,
    juniorsBehind: 0.4,
    heading: "Side plank",
    unit: "s",
    step: 1,
  },
} as const satisfies Readonly<Record<string, BatteryTest>>;

export type TestKey = keyof typeof battery;

export const testKeys = Object.keys(battery) as readonly TestKey[];

export const testOf = (key: TestKey): BatteryTest => battery[key];

/** Distances of the timing gates in metres. */
export const gates = [5, 10, 20, 30] as const;

/** The lifts are taken to failure with a load near this share of the maximum. */
export const shareOfMaximum = 0.83;

export const isLift = (key: TestKey): boolean => key === "backSquat" || key === "benchPress";
