import { inSentence, say } from "../../language/say";

/** The unit a value should be in. */
export type Unit = "cm" | "m" | "s" | "kg" | "min" | "repetitions" | "rating";

export type PlausibleRange = {
  readonly what: string;
  readonly unit: Unit;
  readonly low: number;
  readonly high: number;
};

/** What adult and adolescent team-sport athletes reach: common practice, no source. Outside is a question, not an error. */
export const plausibleRanges = {
  jumpHeight: {
    get what() {
      return say`jump height`;
    },
    unit: "cm",
    low: 5,
    high: 90,
  },
  flightTime: {
    get what() {
      return say`flight time`;
    },
    unit: "s",
    low: 0.2,
    high: 0.85,
  },
  contactTime: {
    get what() {
      return say`contact time`;
    },
    unit: "s",
    low: 0.1,
    high: 0.6,
  },
  singleHop: {
    get what() {
      return say`single hop`;
    },
    unit: "cm",
    low: 30,
    high: 320,
  },
  broadJump: {
    get what() {
      return say`broad jump`;
    },
    unit: "cm",
    low: 80,
    high: 380,
  },
  sprint5: {
    get what() {
      return say`5 m sprint`;
    },
    unit: "s",
    low: 0.8,
    high: 1.8,
  },
  sprint10: {
    get what() {
      return say`10 m sprint`;
    },
    unit: "s",
    low: 1.4,
    high: 2.8,
  },
  sprint20: {
    get what() {
      return say`20 m sprint`;
    },
    unit: "s",
    low: 2.5,
    high: 4.5,
  },
  sprint30: {
    get what() {
      return say`30 m sprint`;
    },
    unit: "s",
    low: 3.5,
    high: 6.5,
  },
  sprint40: {
    get what() {
      return say`40 m sprint`;
    },
    unit: "s",
    low: 4.4,
    high: 8.5,
  },
  changeOfDirection505: {
    get what() {
      return say`505 change of direction`;
    },
    unit: "s",
    low: 1.9,
    high: 4,
  },
  bodyMass: {
    get what() {
      return say`body mass`;
    },
    unit: "kg",
    low: 25,
    high: 180,
  },
  stature: {
    get what() {
      return say`stature`;
    },
    unit: "m",
    low: 1.2,
    high: 2.25,
  },
  sessionRating: {
    get what() {
      return say`session rating`;
    },
    unit: "rating",
    low: 0,
    high: 10,
  },
  sessionDuration: {
    get what() {
      return say`session duration`;
    },
    unit: "min",
    low: 0,
    high: 360,
  },
  repetitions: {
    get what() {
      return say`repetitions`;
    },
    unit: "repetitions",
    low: 1,
    high: 60,
  },
  load: {
    get what() {
      return inSentence(say`Load`);
    },
    unit: "kg",
    low: 0,
    high: 500,
  },
} as const satisfies Readonly<Record<string, PlausibleRange>>;
