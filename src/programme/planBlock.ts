import { say } from "../language/say";
import { dayNumber, isoDay } from "../reading/days";
import { wordOfSide } from "../reading/vocabulary";
import type { Exercise } from "../store/exercises";
import type { PlannedRow } from "../store/planTable";
import { chooseExercises } from "./chooseExercises";
import { type Phase, type Prescription, prescriptionOf } from "./phases";
import { type BarAndPlates, maximumOf, reckonLoad } from "./reckonLoad";

/** What the coach decides about a block. */
export type BlockSettings = {
  /** ISO day on which the block begins. */
  readonly begins: string;
  readonly weeks: number;
  readonly sessionsPerWeek: number;
  readonly exercisesPerSession: number;
  readonly phase: Phase;
  /** Whether the last week is a deload. */
  readonly deload: boolean;
  readonly barAndPlates: BarAndPlates;
};

/** One athlete as the plan sees them. */
export type Planned = {
  readonly athlete: string;
  /** Under 18 in the year of the block; true too where nothing says so, to be on the safe side: false only if known. */
  readonly isMinor: boolean;
  /** Qualities to work on, the most urgent first, each with its reason. */
  readonly priorities: readonly { readonly quality: string; readonly why: string }[];
  /** Side that is weaker beyond noise, by region; null where no test says so. */
  readonly weakerSide: { readonly side: "left" | "right"; readonly why: string } | null;
  /** Estimated maxima, kg, by test. */
  readonly maxima: ReadonlyMap<string, number>;
};

export type Block = {
  readonly rows: readonly PlannedRow[];
  /** What could not be planned, and what is missing for it. */
  readonly missing: readonly string[];
};

/** No plan is made of what nobody tested: an athlete without priorities gets no rows, and it is said why. */
export function planBlock(squad: readonly Planned[], library: readonly Exercise[], settings: BlockSettings): Block {
  const rows: PlannedRow[] = [];
  const missing = new Set<string>();
  for (const planned of squad) {
    if (planned.priorities.length === 0) {
      missing.add(say`${planned.athlete}: no priorities, so nothing is planned. Test first.`);
      continue;
    }
    const sessions = chooseExercises(planned, library, settings);
    for (const quality of sessions.without) {
      missing.add(say`${planned.athlete}: the exercises hold nothing for ${quality}.`);
    }
    for (let week = 1; week <= settings.weeks; week++) {
      const isDeload = settings.deload && week === settings.weeks && settings.weeks > 1;
      sessions.chosen.forEach((session, index) => {
        for (const { exercise, why } of session) {
          rows.push(rowOf(planned, exercise, why, { week, session: index + 1, isDeload }, settings, missing));
        }
      });
    }
  }
  return { rows, missing: [...missing] };
}

/** Minors leave at least this many repetitions in reserve: common practice, no source. */
const reserveOfMinors = 3;

function rowOf(
  planned: Planned,
  exercise: Exercise,
  why: string,
  when: { readonly week: number; readonly session: number; readonly isDeload: boolean },
  { begins, phase, barAndPlates }: BlockSettings,
  missing: Set<string>,
): PlannedRow {
  const usual = prescriptionOf(phase, exercise.dose, when.week, when.isDeload);
  const prescription =
    planned.isMinor && usual.reserve !== null ? { ...usual, reserve: Math.max(usual.reserve, reserveOfMinors) } : usual;
  const { load, intensity } = effort(planned, exercise, prescription, barAndPlates, missing);
  const extra = exercise.limbs === "one" && planned.weakerSide ? planned.weakerSide : null;
  return {
    week: when.week,
    begins: isoDay(dayNumber(begins) + 7 * (when.week - 1)),
    session: when.session,
    athlete: planned.athlete,
    exercise: exercise.exercise,
    sets: prescription.sets,
    repetitions: amountOf(exercise, prescription) + (extra ? say`, one set more on the ${wordOfSide(extra.side)}` : ""),
    intensity,
    load,
    total: totalOf(exercise, prescription, extra !== null),
    why: extra ? `${why} ${extra.why}` : why,
  };
}

function effort(
  { athlete, maxima }: Planned,
  { loadFrom, percentOfMaximum, exercise, dose }: Exercise,
  { amount, reserve }: Prescription,
  barAndPlates: BarAndPlates,
  missing: Set<string>,
): { readonly load: number | null; readonly intensity: string } {
  if (reserve === null) return { load: null, intensity: effortWords[dose] };
  const inReserve = say`leave ${reserve} in reserve`;
  if (loadFrom === null || percentOfMaximum === null) return { load: null, intensity: inReserve };
  const maximum = maximumOf(maxima, loadFrom);
  if (maximum === undefined) {
    missing.add(say`${athlete}: no estimated maximum of ${loadFrom}, so ${exercise} has no load in kg.`);
    return { load: null, intensity: inReserve };
  }
  const reckoned = reckonLoad((maximum * percentOfMaximum) / 100, { repetitions: amount, reserve }, barAndPlates);
  if (!reckoned) return { load: null, intensity: inReserve };
  if (reckoned.load === null) {
    missing.add(say`${athlete}: the bar alone is heavier than the load for ${exercise}.`);
  }
  return { load: reckoned.load, intensity: `${Math.round(reckoned.percent)} %, ${inReserve}` };
}

/** How hard, where no repetitions are left in reserve. */
const effortWords = {
  repetitions: say`clean, never to failure`,
  seconds: say`hold your form; stop when it goes`,
  contacts: say`every one at full effort, and clean`,
  metres: say`full speed, full rest`,
  minutes: say`hard but even`,
} as const;

const doseWords = {
  ...{ repetitions: "", seconds: " s", contacts: say` contacts`, metres: " m", minutes: " min" },
} as const;

const amountOf = ({ dose, limbs }: Exercise, { amount }: Prescription): string =>
  `${amount}${doseWords[dose]}${limbs === "one" ? say` each side` : ""}`;

function totalOf({ dose, limbs }: Exercise, { sets, amount }: Prescription, oneSetMore: boolean): number | null {
  if (dose !== "contacts" && dose !== "metres") return null;
  return (limbs === "one" ? 2 * sets + (oneSetMore ? 1 : 0) : sets) * amount;
}
