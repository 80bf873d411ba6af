import { tooFew } from "../../engine/refusals";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { forceVelocityProfile } from "../../engine/sprints/forceVelocityProfile";
import { momentum } from "../../engine/sprints/momentum";
import type { SprintModel } from "../../engine/sprints/sprintModel";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import type { Side } from "../../reading/vocabulary";
import type { Background } from "../../store/background";
import type { Answer, CellRemark, MoreColumn } from "../analysis";
import { type Body, bodiesOf } from "../bodies";
import { groupBy } from "../groupBy";
import { ofLatestDay } from "../measuredAttempts";
import { modelOf } from "./modelOf";
import { type Gap, gapsOf, type Section, sectionsOf } from "./sections";
import { type SprintRun, sprintRuns } from "./sprintRuns";
import type { SprintsRow, SprintsSettings } from "./sprints";
import { deficitOf, type Turn, turnsOf } from "./turns";
import * as words from "./words";

const centimetresPerMetre = 100;

/** Less behind or ahead than this is not worth a word: common practice, no source. */
const leastGap = 0.03;

/** One row for each athlete: the best run of the latest day, held against the squad section by section, and its curve. */
export function compute(
  results: readonly TestResult[],
  settings: SprintsSettings,
  background: Background,
): Result<Answer<SprintsRow>> {
  const { attempts, runs, leftOut } = sprintRuns(results, settings.timing);
  if (runs.length === 0) return refuse(tooFew(say`sprints with rising split times`, 1, 0));
  const { turns, leftOut: turnsLeftOut } = turnsOf(results);
  const bodyOf = bodiesOf(results, background);
  const runsOf = groupBy(runs, ({ attempt }) => attempt.athlete);
  const athletes = [...new Set([...attempts, ...turns].map(({ athlete }) => athlete))]
    .map((athlete) => ({ athlete, best: bestRun(runsOf.get(athlete) ?? []) }))
    .sort((a, b) => farthestFirst(a.best, b.best));
  const bests = athletes.map(({ best }) => best);
  const sections = sectionsOf(bests);
  const gaps = bests.map((_, index) => gapsOf(sections, index));
  const rows = athletes.map(({ athlete, best }, index): SprintsRow => {
    const turned = turnsOfAthlete(turns, athlete, runs, settings);
    const { lost, won } = mostOf(gaps[index]!);
    const sides = { left: turned.left.time, right: turned.right.time };
    const deficits = { deficitLeft: turned.left.deficit, deficitRight: turned.right.deficit };
    const row = { athlete, lost: words.gap(lost), won: words.gap(won), ...sides, ...deficits };
    if (best === null) return { ...row, ...noRun, verdict: words.verdict({ model: null, best, turned }) };
    const { distance, time } = best.splits.at(-1)!;
    const body = bodyOf(athlete, best.attempt.date);
    const model = modelOf(best);
    return {
      ...row,
      distance,
      time,
      fastest: best.fastest,
      ...curveOf(valueOr(model, null), body),
      momentum: body.mass === null ? null : valueOr(momentum(body.mass, best.last), null),
      verdict: words.verdict({ model, best, turned }),
    };
  });
  return ok({
    rows,
    moreColumns: sections.map(speedColumn),
    summary: words.summary(
      rows,
      gaps.map((own) => mostOf(own).lost),
    ),
    cautions: words.cautions(rows, settings, bests),
    method: words.method(settings),
    leftOut: [...leftOut, ...turnsLeftOut],
    marks: bests.flatMap((best) => (best ? marksOf(best) : [])),
  });
}

/** The longest run of the latest day; of several the fastest. */
function bestRun(runs: readonly SprintRun[]): SprintRun | null {
  const latest = ofLatestDay(runs.map((run) => ({ run, date: run.attempt.date }))).map(({ run }) => run);
  return latest.sort((a, b) => farthestFirst(a, b) || a.attempt.attempt - b.attempt.attempt)[0] ?? null;
}

function farthestFirst(a: SprintRun | null, b: SprintRun | null): number {
  const [one, other] = [a?.splits.at(-1), b?.splits.at(-1)];
  if (!one || !other) return Number(!one) - Number(!other);
  return other.distance - one.distance || one.time - other.time;
}

const noCurve = { maximal: null, maximalLow: null, maximalHigh: null, constant: null, acceleration: null } as const;
const noForce = { force: null, power: null } as const;
const noRun = { distance: null, time: null, fastest: null, momentum: null, ...noCurve, ...noForce } as const;

function curveOf(model: SprintModel | null, { mass, stature }: Body) {
  if (model === null) return { ...noCurve, ...noForce };
  const { maximalVelocity, timeConstant, initialAcceleration } = model;
  const curve = { maximalVelocity: maximalVelocity.value, timeConstant: timeConstant.value };
  const profile =
    mass === null || stature === null
      ? null
      : valueOr(forceVelocityProfile(curve, mass, { air: { statureMetres: stature / centimetresPerMetre } }), null);
  return {
    maximal: maximalVelocity.value,
    maximalLow: maximalVelocity.low,
    maximalHigh: maximalVelocity.high,
    constant: timeConstant.value,
    acceleration: initialAcceleration,
    force: profile?.relativeForce ?? null,
    power: profile?.relativePower ?? null,
  };
}

export type TurnOfSide = {
  readonly time: number | null;
  readonly deficit: number | null;
  /** Why there is no deficit, or what to beware of in it; "" where nothing is to be said. */
  readonly remark: string;
};

function turnsOfAthlete(
  turns: readonly Turn[],
  athlete: string,
  runs: readonly SprintRun[],
  { straight }: SprintsSettings,
): Readonly<Record<Side, TurnOfSide>> {
  const own = ofLatestDay(turns.filter((turn) => turn.athlete === athlete));
  const ofSide = (side: Side): TurnOfSide => {
    const fastest = own.filter((turn) => turn.side === side).sort((a, b) => a.time - b.time)[0];
    if (!fastest) return { time: null, deficit: null, remark: "" };
    const deficit = deficitOf(fastest, runs, straight);
    const value = deficit?.ok ? deficit.value : null;
    return { time: fastest.time, deficit: value?.seconds ?? null, remark: words.deficit(deficit, straight) };
  };
  return { left: ofSide("left"), right: ofSide("right") };
}

/** The sections with most lost and most won, where there is enough of it. */
function mostOf(gaps: readonly Gap[]): { readonly lost: Gap | null; readonly won: Gap | null } {
  const ordered = [...gaps].sort((a, b) => b.seconds - a.seconds);
  const [lost, won] = [ordered[0] ?? null, ordered.at(-1) ?? null];
  return {
    lost: lost && lost.seconds >= leastGap ? lost : null,
    won: won && won.seconds <= -leastGap ? won : null,
  };
}

const speedColumn = ({ from, to, times }: Section): MoreColumn => ({
  key: `speed${from}to${to}`,
  heading: say`${from} to ${to} m (m/s)`,
  meaning: say`Mean speed from ${from} to ${to} m.`,
  format: "0.00",
  values: times.map((time) => (time === null ? null : (to - from) / time)),
});

/** The times at the end of sections that are too fast to be true. */
const marksOf = ({ splits, cautions }: SprintRun): CellRemark[] =>
  cautions.flatMap(({ message, facts }) => {
    const split = splits.find(({ distance }) => distance === facts.toDistance);
    return split ? [{ cell: split.cell, why: message }] : [];
  });
