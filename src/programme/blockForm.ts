import { z } from "zod";
import { amount, choice } from "../analyses/fields";
import { say } from "../language/say";
import type { BlockSettings } from "./planBlock";

/** What the form of a block asks, beside the day on which it begins. */
export const blockForm = z.object({
  weeks: amount(say`Weeks`, say`Length of the block, the deload week included.`, "", { low: 1, high: 12, initial: 4 }),
  sessionsPerWeek: amount(
    say`Sessions a week`,
    say`Sessions of this programme, beside the training of the sport.`,
    "",
    {
      low: 1,
      high: 6,
      initial: 2,
    },
  ),
  exercisesPerSession: amount(say`Exercises a session`, say`How many exercises fit into one session.`, "", {
    low: 1,
    high: 10,
    initial: 4,
  }),
  phase: choice(
    say`Aim of the block`,
    say`Sets, repetitions and effort to begin with follow from it; all can be changed in the plan.`,
    {
      buildUp: say`Build up: more repetitions, far from failure`,
      strength: say`Strength: heavier, fewer repetitions`,
      power: say`Power: few and fast`,
      inSeason: say`In season: little, to keep what is there`,
    },
  ),
  deload: choice(say`Last week`, say`A deload week has half the sets at the effort of the first week.`, {
    deload: say`Deload`,
    full: say`As the others`,
  }),
  bar: amount(say`Bar`, say`Mass of the empty bar.`, "kg", { low: 5, high: 30, initial: 20 }),
  smallestPlate: amount(say`Smallest plate`, say`Lightest plate of which there is a pair.`, "kg", {
    low: 0.25,
    high: 10,
    initial: 1.25,
  }),
});

/** Plates that clubs usually have, kg; those lighter than the smallest at hand are left out. */
const usualPlates = [25, 20, 15, 10, 5, 2.5, 1.25, 0.5, 0.25];

/** @param begins ISO day. */
export function blockSettings(form: z.output<typeof blockForm>, begins: string): BlockSettings {
  const { weeks, sessionsPerWeek, exercisesPerSession, phase, deload, bar, smallestPlate } = form;
  const heavier = usualPlates.filter((weight) => weight > smallestPlate);
  return {
    begins,
    weeks: Math.round(weeks),
    sessionsPerWeek: Math.round(sessionsPerWeek),
    exercisesPerSession: Math.round(exercisesPerSession),
    phase,
    deload: deload === "deload",
    barAndPlates: { bar, plates: [...heavier, smallestPlate].map((weight) => ({ weight, pairs: null })) },
  };
}
