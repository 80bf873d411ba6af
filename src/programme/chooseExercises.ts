import type { Exercise } from "../store/exercises";
import { isSameWording } from "../store/sameName";
import type { BlockSettings, Planned } from "./planBlock";
import { maximumOf } from "./reckonLoad";

export type Chosen = { readonly exercise: Exercise; readonly why: string };

/**
 * The exercises of each session of a week, the same every week so that progress can be seen. Slots are dealt to the
 * priorities in turn, the most urgent first and again, so that the first has the most; within a quality the exercises
 * take turns from session to session. With a weaker side, one-limb exercises come before two-limb ones; then those come first
 * whose load can be reckoned from a test of the athlete's. Basic exercises only for minors. `without` lists priorities for which the library holds nothing.
 */
export function chooseExercises(
  { priorities, weakerSide, isMinor, maxima }: Planned,
  library: readonly Exercise[],
  { sessionsPerWeek, exercisesPerSession }: BlockSettings,
): { readonly chosen: readonly (readonly Chosen[])[]; readonly without: readonly string[] } {
  const fitting = (quality: string): Exercise[] => {
    const own = library.filter((one) => isSameWording(one.quality, quality) && (!isMinor || one.level === "basic"));
    const isTwoLimb = ({ limbs }: Exercise) => Number(weakerSide !== null && limbs === "both");
    const hasNoLoad = ({ loadFrom }: Exercise) =>
      Number(loadFrom === null || maximumOf(maxima, loadFrom) === undefined);
    return own.sort((a, b) => isTwoLimb(a) - isTwoLimb(b) || hasNoLoad(a) - hasNoLoad(b));
  };
  const offered = priorities.map(({ quality, why }) => ({ quality, why, exercises: fitting(quality) }));
  const withExercises = offered.filter(({ exercises }) => exercises.length > 0);
  const without = offered.filter(({ exercises }) => exercises.length === 0).map(({ quality }) => quality);
  const turns = withExercises.map(() => 0);
  const chosen = Array.from({ length: sessionsPerWeek }, () => {
    const session: Chosen[] = [];
    const slots = dealtSlots(withExercises.length, exercisesPerSession);
    for (const priority of slots) {
      const { exercises, why } = withExercises[priority]!;
      const free = exercises.length - session.filter(({ exercise }) => exercises.includes(exercise)).length;
      if (free === 0) continue;
      let exercise = exercises[turns[priority]! % exercises.length]!;
      while (session.some((one) => one.exercise === exercise)) {
        turns[priority]!++;
        exercise = exercises[turns[priority]! % exercises.length]!;
      }
      turns[priority]!++;
      session.push({ exercise, why });
    }
    return session;
  });
  return { chosen, without };
}

/** Which priority each slot goes to: 0 1 2 0 1 0 .. so that the first of three gets half. */
function dealtSlots(priorities: number, slots: number): number[] {
  const dealt: number[] = [];
  for (let round = priorities; dealt.length < slots && priorities > 0; round = round > 1 ? round - 1 : priorities) {
    for (let priority = 0; priority < round && dealt.length < slots; priority++) dealt.push(priority);
  }
  return dealt;
}
