import { capacityDifference } from "../../engine/endurance/capacityDifference";
import { type CapacityScore, capacityScores } from "../../engine/endurance/capacityScores";
import { tooFew } from "../../engine/refusals";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import { unitOf } from "../../reading/units";
import type { Side } from "../../reading/vocabulary";
import type { Answer } from "../analysis";
import { groupBy } from "../groupBy";
import { ofLatestDay } from "../measuredAttempts";
import type { CapacityRow, CapacitySettings } from "./capacity";
import * as words from "./words";

type Scores = Readonly<Record<Side, CapacityScore | null>> & { readonly athlete: string };

/** One row for each athlete: the best of each side on the latest day, and their difference held against a retest's. */
export function compute(results: readonly TestResult[], settings: CapacitySettings): Result<Answer<CapacityRow>> {
  const usable = results.filter(({ side, value }) => side !== null && value >= 0);
  if (usable.length === 0) return refuse(tooFew(say`results of a left or a right side`, 1, 0));
  const retest = retestOf(usable, settings);
  const squad = [...groupBy(usable, ({ athlete }) => athlete).values()].map((own) => scoresOf(own, settings));
  const rows = squad.map((scores) => rowOf(scores, retest)).sort(largestFirst);
  const ofSide = (side: Side) => valueOr(capacityScores(squad.map((scores) => scores[side])), null);
  return ok({
    rows,
    summary: words.summary(rows, { left: ofSide("left"), right: ofSide("right") }, retest),
    cautions: words.cautions(squad.flatMap(({ left, right }) => [left, right])),
    method: words.method(retest, settings),
    leftOut: results
      .filter((result) => !usable.includes(result))
      .map(({ cell, side }) => ({ cell, why: side === null ? words.noSide : words.belowZero })),
  });
}

/** What a retest alone brings, in the unit of the results; null where it is not known. */
function retestOf(results: readonly TestResult[], settings: CapacitySettings): number | null {
  const unit = unitOf(results[0]!.unit ?? "");
  if (unit?.quantity !== "time") return settings.retestRepetitions;
  return settings.retestSeconds === 0 ? null : settings.retestSeconds / unit.toBase;
}

function scoresOf(own: readonly TestResult[], { stop }: CapacitySettings): Scores {
  const best = (side: Side): CapacityScore | null => {
    const values = ofLatestDay(own.filter((result) => result.side === side)).map(({ value }) => value);
    if (values.length === 0) return null;
    const value = Math.max(...values);
    return { value, stoppedAtCap: stop > 0 && value >= stop };
  };
  return { athlete: own[0]!.athlete, left: best("left"), right: best("right") };
}

function rowOf({ athlete, left, right }: Scores, retest: number | null): CapacityRow {
  const row = { athlete, left: left?.value ?? null, right: right?.value ?? null };
  if (left === null || right === null) {
    return { ...row, difference: null, share: null, verdict: words.sideMissing(left === null ? "left" : "right") };
  }
  const compared = capacityDifference(left, right);
  const { difference = null, percentOfBetter = null } = compared.ok ? compared.value : {};
  return { ...row, difference, share: percentOfBetter, verdict: words.verdict(compared, retest) };
}

/** Athletes without a difference come last. */
const largestFirst = (a: CapacityRow, b: CapacityRow): number =>
  Math.abs(b.difference ?? -1) - Math.abs(a.difference ?? -1) ||
  Number(a.difference === null) - Number(b.difference === null);
