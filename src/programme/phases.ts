import { say } from "../language/say";
import type { Dose } from "../store/exercises";

/** What a block is for. */
export type Phase = "buildUp" | "strength" | "power" | "inSeason";

/** Sets, amount and effort of one exercise in one session. */
export type Prescription = {
  readonly sets: number;
  /** Repetitions, seconds, contacts, metres or minutes of one set. */
  readonly amount: number;
  /** Repetitions left in reserve at the end of a set; null where effort is not told so. */
  readonly reserve: number | null;
};

/**
 * The first week of each phase, by what the exercise is counted in. All of it common practice, no source: a place to
 * start from, to be changed by the coach who sees the athletes.
 */
const firstWeek: Readonly<Record<Phase, Readonly<Record<Dose, Prescription>>>> = {
  buildUp: {
    repetitions: { sets: 3, amount: 8, reserve: 4 },
    seconds: { sets: 3, amount: 30, reserve: null },
    contacts: { sets: 3, amount: 8, reserve: null },
    metres: { sets: 6, amount: 20, reserve: null },
    minutes: { sets: 3, amount: 4, reserve: null },
  },
  strength: {
    repetitions: { sets: 4, amount: 5, reserve: 3 },
    seconds: { sets: 3, amount: 40, reserve: null },
    contacts: { sets: 3, amount: 6, reserve: null },
    metres: { sets: 5, amount: 20, reserve: null },
    minutes: { sets: 3, amount: 4, reserve: null },
  },
  power: {
    repetitions: { sets: 4, amount: 3, reserve: 3 },
    seconds: { sets: 3, amount: 30, reserve: null },
    contacts: { sets: 4, amount: 6, reserve: null },
    metres: { sets: 6, amount: 30, reserve: null },
    minutes: { sets: 2, amount: 4, reserve: null },
  },
  inSeason: {
    repetitions: { sets: 2, amount: 5, reserve: 3 },
    seconds: { sets: 2, amount: 30, reserve: null },
    contacts: { sets: 2, amount: 6, reserve: null },
    metres: { sets: 4, amount: 20, reserve: null },
    minutes: { sets: 2, amount: 4, reserve: null },
  },
};

/** No set is taken closer to failure than this, whatever the week. */
const leastReserve = 1;

/**
 * The prescription of a week, by the stated rules: every second week one repetition less is left in reserve (the load
 * rises with it), or, where effort is not told so, one set is added, at most two; a deload week has half the sets,
 * rounded up, at the effort of the first week.
 *
 * @param week from 1 on.
 * @throws RangeError for a week below 1.
 */
export function prescriptionOf(phase: Phase, dose: Dose, week: number, isDeload: boolean): Prescription {
  if (!Number.isInteger(week) || week < 1) throw new RangeError("Weeks are counted from 1.");
  const first = firstWeek[phase][dose];
  if (isDeload) return { ...first, sets: Math.ceil(first.sets / 2) };
  const steps = Math.floor((week - 1) / 2);
  return first.reserve === null
    ? { ...first, sets: first.sets + Math.min(steps, 2) }
    : { ...first, reserve: Math.max(first.reserve - steps, leastReserve) };
}

export const progressionRule = say`Every second week one repetition less is left in reserve, so the load rises; where no load is reckoned, one set is added (two at most). A deload week has half the sets at the effort of week 1. Common practice, no source.`;
