import { median } from "../../engine/moments";
import type { SprintRun } from "./sprintRuns";

/** A stretch between two gates that follow each other anywhere in the squad. */
export type Section = {
  readonly from: number;
  readonly to: number;
  /** Seconds each run took for it, in the order of the runs; null where it has not both gates. */
  readonly times: readonly (number | null)[];
  /** The squad's middle time, s; null where too few ran it. */
  readonly middle: number | null;
};

/** Fewer runs than this have no middle to be held against: common practice, no source. */
const fewestForMiddle = 4;

/** The sections of the squad's sprints (null: an athlete without one), from the start on. */
export function sectionsOf(runs: readonly (SprintRun | null)[]): Section[] {
  const distances = new Set(runs.flatMap((run) => run?.splits.map(({ distance }) => distance) ?? []));
  const gates = [0, ...[...distances].sort((a, b) => a - b)];
  return gates.slice(1).map((to, index): Section => {
    const from = gates[index]!;
    const times = runs.map((run) => {
      const [start, end] = [timeAt(run, from), timeAt(run, to)];
      return start === null || end === null ? null : end - start;
    });
    const present = times.filter((time) => time !== null);
    return { from, to, times, middle: present.length < fewestForMiddle ? null : median(present) };
  });
}

const timeAt = (run: SprintRun | null, distance: number): number | null =>
  distance === 0 ? 0 : (run?.splits.find((split) => split.distance === distance)?.time ?? null);

export type Gap = {
  readonly from: number;
  readonly to: number;
  /** Seconds behind the squad's middle; below zero: ahead of it. */
  readonly seconds: number;
};

/** What an athlete, by the place among the runs, loses (or wins) on the squad's middle in each section. */
export const gapsOf = (sections: readonly Section[], athlete: number): Gap[] =>
  sections.flatMap(({ from, to, times, middle }) => {
    const time = times[athlete] ?? null;
    return time === null || middle === null ? [] : [{ from, to, seconds: time - middle }];
  });
