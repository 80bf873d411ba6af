import type { Caution } from "../../engine/caution";
import { valueOr } from "../../engine/result";
import { electronicTime } from "../../engine/sprints/electronicTime";
import { splitVelocities } from "../../engine/sprints/splitVelocities";
import type { MeasureKey } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import type { CellRemark } from "../analysis";
import { firstCell, type MeasuredAttempt, measuredAttempts } from "../measuredAttempts";
import * as words from "./words";

export type Timing = "gates" | "stopwatch";

/** The gates of a sprint: measure and metres from the start, in the order they are passed. */
const gates = [
  ["time5", 5],
  ["time10", 10],
  ["time15", 15],
  ["time20", 20],
  ["time30", 30],
  ["time40", 40],
] as const satisfies readonly (readonly [MeasureKey, number])[];

/** One sprint by its splits. Times are those of gates: a stopwatch's are corrected. */
export type SprintRun = {
  readonly attempt: MeasuredAttempt;
  /** Metres from the start and seconds to there, in the order they are passed. */
  readonly splits: readonly Split[];
  /** m/s, mean of the fastest section. */
  readonly fastest: number;
  /** m/s, mean of the last section. */
  readonly last: number;
  /** Sections that are too fast to be true beside their neighbours. */
  readonly cautions: readonly Caution[];
};

export type Split = { readonly distance: number; readonly time: number; readonly cell: string };

/** The sprints among the results; those whose times do not rise with the distance are told and left out. */
export function sprintRuns(
  results: readonly TestResult[],
  timing: Timing,
): {
  readonly attempts: readonly MeasuredAttempt[];
  readonly runs: readonly SprintRun[];
  readonly leftOut: readonly CellRemark[];
} {
  const ofGates = new Set<MeasureKey | null>(gates.map(([measure]) => measure));
  const measured = measuredAttempts(results.filter(({ measure }) => ofGates.has(measure)));
  const leftOut: CellRemark[] = [...measured.leftOut];
  const runs = measured.attempts.flatMap((attempt): SprintRun[] => {
    const splits = splitsOf(attempt, timing);
    const velocities = splitVelocities(
      splits.map(({ distance }) => distance),
      splits.map(({ time }) => time),
    );
    if (!velocities.ok) {
      leftOut.push({ cell: firstCell(attempt), why: words.reasons(velocities.reasons) });
      return [];
    }
    const { intervals, fastest, cautions } = velocities.value;
    return [{ attempt, splits, fastest, last: intervals.at(-1)!.velocity, cautions }];
  });
  return { attempts: measured.attempts, runs, leftOut };
}

const splitsOf = ({ values, cells }: MeasuredAttempt, timing: Timing): Split[] =>
  gates.flatMap(([measure, distance]) => {
    const time = values[measure];
    return time === undefined ? [] : [{ distance, time: asIfByGates(time, timing), cell: cells[measure]! }];
  });

/** Seconds as gates would have given them; what is no time at all stays as it is, to be refused. */
const asIfByGates = (time: number, timing: Timing): number =>
  timing === "stopwatch" ? (valueOr(electronicTime(time), null)?.seconds ?? time) : time;
