import type { Result } from "../../engine/result";
import {
  type ChangeOfDirectionDeficit,
  changeOfDirectionDeficit,
  type DeficitDefinition,
} from "../../engine/sprints/changeOfDirectionDeficit";
import type { TestResult } from "../../reading/testResult";
import type { Side } from "../../reading/vocabulary";
import type { CellRemark } from "../analysis";
import { inUnit } from "../measuredAttempts";
import type { SprintRun } from "./sprintRuns";
import { isTurnTest } from "./turnNames";
import * as words from "./words";

/** One 505, by the side of the leg or hand it was turned on, as the coach names it. */
export type Turn = {
  readonly result: TestResult;
  readonly athlete: string;
  readonly side: Side;
  readonly date: string | null;
  /** s */
  readonly time: number;
};

export type Straight = DeficitDefinition["straight"];

type StraightRun = { readonly seconds: number; readonly definition: DeficitDefinition };

/** The 505 times among the results; those without a side or in another kind of unit are told and left out. */
export function turnsOf(results: readonly TestResult[]): {
  readonly turns: readonly Turn[];
  readonly leftOut: readonly CellRemark[];
} {
  const leftOut: CellRemark[] = [];
  const turns = results
    .filter(({ test, measure }) => measure === null && isTurnTest(test))
    .flatMap((result): Turn[] => {
      const { athlete, side, date, cell } = result;
      const time = inUnit(result.value, result.unit, "s");
      if (time !== null && side !== null) return [{ result, athlete, side, date, time }];
      leftOut.push({ cell, why: side === null ? words.turnWithoutSide : words.turnIsNoTime(result.unit) });
      return [];
    });
  return { turns, leftOut };
}

/**
 * The deficit of a turn: its time less the fastest straight 10 m of the same athlete on the same day. Both were timed
 * alike, so a stopwatch's times need no correction here. Null where there is no such run.
 */
export function deficitOf(
  turn: Turn,
  runs: readonly SprintRun[],
  straight: Straight,
): Result<ChangeOfDirectionDeficit> | null {
  const ownOfDay = runs.filter(({ attempt }) => attempt.athlete === turn.athlete && attempt.date === turn.date);
  const straights = ownOfDay.flatMap(({ attempt: { values } }): StraightRun[] => {
    const { time10: tenMetres, time20: twentyMetres } = values;
    if (tenMetres === undefined) return [];
    if (straight === "first 10 m") return [{ seconds: tenMetres, definition: { straight, tenMetres } }];
    if (twentyMetres === undefined) return [];
    return [{ seconds: twentyMetres - tenMetres, definition: { straight, tenMetres, twentyMetres } }];
  });
  const fastest = straights.sort((a, b) => a.seconds - b.seconds)[0];
  return fastest ? changeOfDirectionDeficit(turn.time, fastest.definition) : null;
}
