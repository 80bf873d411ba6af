import { valueOr } from "../../engine/result";
import { repetitionRange, type StrengthEquationName } from "../../engine/strength/equations";
import { type EstimatedMaximum, estimatedMaximum } from "../../engine/strength/estimatedMaximum";
import type { MeasureKey } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import type { CellRemark } from "../analysis";
import { firstCell, type MeasuredAttempt, measuredAttempts, ofLatestDay } from "../measuredAttempts";
import * as words from "./words";

const measuresOfSets: readonly (MeasureKey | null)[] = ["load", "repetitions", "repetitionsInReserve"];

/** A set of one lift and the maximum it lets one expect. */
export type LiftedSet = {
  readonly attempt: MeasuredAttempt;
  /** kg */
  readonly load: number;
  readonly estimate: EstimatedMaximum;
};

/**
 * The sets among the results, each with its estimated maximum; and the attempts of which there is none (`attempts` has
 * them all). Told: a load without repetitions, repetitions without a load, and what the equations are not given for.
 */
export function liftedSets(
  results: readonly TestResult[],
  equation: StrengthEquationName,
): {
  readonly attempts: readonly MeasuredAttempt[];
  readonly sets: readonly LiftedSet[];
  readonly leftOut: readonly CellRemark[];
} {
  const measured = measuredAttempts(results.filter(({ measure }) => measuresOfSets.includes(measure)));
  const leftOut: CellRemark[] = [...measured.leftOut];
  const sets = measured.attempts.flatMap((attempt): LiftedSet[] => {
    const { load, repetitions, repetitionsInReserve = 0 } = attempt.values;
    if (load === undefined || repetitions === undefined) {
      leftOut.push({ cell: firstCell(attempt), why: words.halfASet(attempt) });
      return [];
    }
    const estimated = estimatedMaximum(load, repetitions, { equation, repetitionsInReserve });
    if (!estimated.ok) {
      const cell = attempt.cells.repetitions ?? firstCell(attempt);
      leftOut.push({ cell, why: estimated.reasons.map(({ message }) => message).join(" ") });
    }
    const estimate = valueOr(estimated, null);
    return estimate === null ? [] : [{ attempt, load, estimate }];
  });
  return { attempts: measured.attempts, sets, leftOut };
}

/**
 * The sets of an athlete and lift that the estimate is the highest of, the best first: those of the latest day; sets of
 * more than ten repetitions only where there is no other.
 */
export function setsThatCount(sets: readonly LiftedSet[]): LiftedSet[] {
  const latest = ofItsLatestDay(sets);
  const trusted = latest.filter(({ estimate }) => estimate.repetitions <= repetitionRange.trusted[1]);
  return (trusted.length > 0 ? trusted : latest).sort(
    (a, b) => b.estimate.maximum - a.estimate.maximum || a.estimate.repetitions - b.estimate.repetitions,
  );
}

export const ofItsLatestDay = (sets: readonly LiftedSet[]): LiftedSet[] =>
  ofLatestDay(sets.map((set) => ({ ...set, date: set.attempt.date })));
