import { tooFew } from "../../engine/refusals";
import { ok, type Result, refuse } from "../../engine/result";
import { loadVelocityProfile } from "../../engine/strength/loadVelocityProfile";
import { say } from "../../language/say";
import type { MeasureKey } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import type { Answer, CellRemark } from "../analysis";
import { groupBy } from "../groupBy";
import { firstCell, type MeasuredAttempt, measuredAttempts, ofLatestDay } from "../measuredAttempts";
import type { LoadVelocityRow, LoadVelocitySettings } from "./loadVelocity";
import * as words from "./words";

const confidence = 0.95;
const measuresOfLifts: readonly (MeasureKey | null)[] = ["load", "barVelocity"];

type Lift = { readonly attempt: MeasuredAttempt; readonly load: number; readonly velocity: number };

/** One row for each athlete and lift: the line of bar velocity on load of the latest day, and the maximum it points to. */
export function compute(
  results: readonly TestResult[],
  settings: LoadVelocitySettings,
): Result<Answer<LoadVelocityRow>> {
  const measured = measuredAttempts(results.filter(({ measure }) => measuresOfLifts.includes(measure)));
  const leftOut: CellRemark[] = [...measured.leftOut];
  const lifts = measured.attempts.flatMap((attempt): Lift[] => {
    const { load, barVelocity: velocity } = attempt.values;
    if (load !== undefined && velocity !== undefined) return [{ attempt, load, velocity }];
    leftOut.push({ cell: firstCell(attempt), why: words.halfALift(attempt) });
    return [];
  });
  if (lifts.length === 0) return refuse(tooFew(say`sets with a load and a bar velocity`, 1, 0));
  const latest = [...groupBy(lifts, ({ attempt }) => words.rowName(attempt)).values()].map((own) =>
    ofLatestDay(own.map((lift) => ({ ...lift, date: lift.attempt.date }))),
  );
  const used = latest.flat();
  const rows = latest.map((own) => rowOf(own, settings)).sort(strongestFirst);
  return ok({
    rows,
    summary: words.summary(rows),
    cautions: [],
    method: words.method(settings),
    used: {
      athletes: new Set(used.map(({ attempt }) => attempt.athlete)).size,
      count: used.length,
      what: used.length < lifts.length ? words.latestOf(lifts.length) : say`sets`,
    },
    leftOut,
  });
}

function rowOf(lifts: readonly Lift[], { threshold }: LoadVelocitySettings): LoadVelocityRow {
  const { attempt } = lifts[0]!;
  const loads = lifts.map(({ load }) => load);
  const row = {
    athlete: attempt.athlete,
    lift: words.lift(attempt),
    loads: new Set(loads).size,
    heaviest: Math.max(...loads),
    row: words.rowName(attempt),
  };
  const profile = loadVelocityProfile(
    loads,
    lifts.map(({ velocity }) => velocity),
    { minimumVelocityThreshold: threshold, confidence },
  );
  if (!profile.ok) return { ...row, ...nothing, verdict: words.noLine(profile.reasons) };
  const { maximum, velocityAtZeroLoad, slope, rSquared, cautions } = profile.value;
  return {
    ...row,
    maximum: maximum.value,
    low: maximum.low,
    high: maximum.high,
    velocityAtZeroLoad,
    slope: 10 * slope,
    fit: rSquared,
    verdict: words.fitted(cautions),
  };
}

const nothing = {
  maximum: null,
  low: null,
  high: null,
  velocityAtZeroLoad: null,
  slope: null,
  fit: null,
} as const;

/** By lift, the strongest first; those without an answer last. */
const strongestFirst = (a: LoadVelocityRow, b: LoadVelocityRow): number =>
  a.lift.localeCompare(b.lift, "en") || (b.maximum ?? 0) - (a.maximum ?? 0) || a.row.localeCompare(b.row, "en");
