/**
 * What the script put into the season on purpose: the answers that a sound analysis has to find, and the ones it must not
 * find. Everybody who is not named here is the rest; how often the rest may be flagged stands at the end.
 */
import type { Quality, TestKey } from "./battery";

/** Distances of the single-leg hop in centimetres, in the order they were hopped. */
export type HopTrials = { readonly left: readonly number[]; readonly right: readonly number[] };

export type PlantedAsymmetry = HopTrials & {
  readonly athlete: string;
  /** The side that is truly stronger; "neither" where the difference is only noise. */
  readonly strongerSide: "left" | "right" | "neither";
  readonly truth: string;
};

export const plantedAsymmetries: readonly PlantedAsymmetry[] = [
  {
    athlete: "Torvei Bjørnemose",
    left: [171, 174, 168],
    right: [147, 150, 144],
    strongerSide: "left",
    truth: "Large and real: every left trial is far beyond every right one, and her trials repeat well.",
  },
  {
    athlete: "Marvi Skumring",
    left: [139, 143, 141],
    right: [163, 160, 165],
    strongerSide: "right",
    truth: "Large and real, the other way round.",
  },
  {
    athlete: "Gudvi Solgangsbris",
    left: [168, 137, 141],
    right: [150, 136, 149],
    strongerSide: "neither",
    truth:
      "Best against best differs by more than 10 %, but one lucky left trial made it: her trials scatter as widely.",
  },
  {
    athlete: "Sivje Fjærestein",
    left: [156, 155, 157],
    right: [167, 166, 168],
    strongerSide: "right",
    truth: "Small and real: below 10 %, yet far beyond the scatter of her very even trials.",
  },
];

/** Everyone else's true difference between the sides is at most this many percent. */
export const largestUnplantedDifference = 3;

/** One trial of an ordinary athlete varies about her own true distance with this coefficient of variation, in percent. */
export const trialVariation = 3;

/** The block made everybody better by what `block.ts` says; her it changed by this much, in percent of her true score. */
export const improver: {
  readonly athlete: string;
  readonly changes: Partial<Record<TestKey, number>>;
  readonly truth: string;
} = {
  athlete: "Havdisa Lyngsti",
  changes: { countermovementJump: 10, backSquat: 22, shuttleRun: 45 },
  truth:
    "Real: in these three tests her true change is more than four times the noise of a retest. In the others she is as the rest.",
};

export const lucky = {
  athlete: "Kaivi Rognebær",
  test: "countermovementJump",
  /** Flight times in ms of the two days before the block and the one after it. Her true change is zero. */
  trials: [
    [487, 490, 482],
    [488, 484, 489],
    [483, 508, 486],
  ],
  truth:
    "Luck: one trial of three is 18 ms longer than her best before. Best against best she is 7 % higher, which looks like a worthwhile gain; it is within the noise of the test.",
} as const satisfies { athlete: string; test: TestKey; trials: readonly (readonly number[])[]; truth: string };

/** Right above left in percent; the trials of one day were typed under the other side. */
export const swappedSides = {
  athlete: "Nelvi Blåskjell",
  test: "singleLegHop",
  trueDifference: 16,
  sheet: "Gym 27 Aug",
  truth:
    "Her right leg hops 16 % further. On one of three days left and right are swapped: the direction flips, beyond the noise both times. She is asymmetric, and that day is to be asked about.",
} as const satisfies { athlete: string; test: TestKey; trueDifference: number; sheet: string; truth: string };

/** Cells in which what was measured was typed as another number. */
export const slips = [
  {
    athlete: "Embrit Blåknapp",
    sheet: "Field 18 Aug",
    heading: "Sprint 30 m 2 (s)",
    times: 100,
    truth: "The comma was lost: a hundred times too large for a sprint in seconds.",
  },
  {
    athlete: "Tuvja Myrull",
    sheet: "Field 25 Aug",
    heading: "Sprint 10 m 1 (s)",
    times: 1000,
    truth: "Typed in milliseconds, as the gates show it, in a column of seconds.",
  },
] as const;

export const implausible = {
  athlete: "Gunja Skogsnipe",
  sheet: "Gym 20 Aug",
  heading: "Countermovement jump flight time 3 (ms)",
  typed: 968,
  truth: "No one flies that long (115 cm high): the mat missed a landing. No unit and no comma explains it.",
} as const;

export const misspelt = {
  athlete: "Ragnvi Tåkelur",
  typed: "Ragnvi Takelur",
  sheet: "Field 25 Aug",
  truth: "Not in the squad by that spelling: the same person, to be asked about and never merged unasked.",
} as const;

export const overdue = {
  athlete: "Oddla Steinsprang",
  truth: "Absent from the retest: her last results are of August, and she is due.",
} as const;

export const injured = {
  athlete: "Solunna Havblikk",
  /** The last day she trained. */
  lastDay: "2026-10-14",
  note: "Out since 14 October 2026; return is decided with her physiotherapist",
  truth:
    "Out since 14 October: “inj” in place of every retest result. Neither a zero nor a decline; when she is tested again is for those who treat her to say.",
} as const;

export const lateJoiner = {
  athlete: "Lunja Sommerregn",
  joined: "2026-09-28",
  note: "Joined on 28 September 2026",
  truth:
    "No results in August, so there is no change to tell; her first results are those of October. Her weekly load rises from nothing, which is no spike.",
} as const;

/** By the mean z score of the quality's tests among the seniors, on either day before the block. */
export const weakest: Readonly<Record<Quality, string>> = {
  "Jumping power": "Tyrin Kveldsol",
  Speed: "Ylvana Kvistebu",
  "Change of direction": "Brynka Nordavind",
  "Throwing power": "Ingvja Nattfrost",
  "Maximal strength": "Eldvi Morgendis",
  "Trunk and leg capacity": "Runjal Vindkast",
  Endurance: "Dagnja Stillevann",
};

export const spike = {
  athlete: "Jorvei Regnbøye",
  /** Monday of the week. */
  week: "2026-10-05",
  truth:
    "Three evenings of a selection camp on top of the club's week: more than twice her mean of the four weeks before. A reason to talk to her, no prediction of an injury.",
} as const;

/** Weeks of the rest stay below this multiple of the mean of the athlete's four weeks before. */
export const largestUnplantedRise = 1.75;

/**
 * How often the rest may be flagged. By the meaning of 95 % limits, one result in twenty lies outside them by chance alone;
 * the tests hold the season to these bounds.
 */
export const falseAlarms = {
  /** Share of the changes from one day before the block to the other, in percent, beyond the 95 % limits: 5 expected. */
  betweenSessions: { least: 2.5, most: 7.5 },
  /** Share of the retest's 95 % intervals, in percent, that miss the true change: 5 expected. */
  intervalsThatMiss: { least: 2.5, most: 7.5 },
  /** Athletes a day whose hops differ by more than 10 % and the noise, though their legs are alike within 3 %. */
  asymmetries: 1,
} as const;
