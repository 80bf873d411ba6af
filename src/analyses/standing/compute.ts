import { normalQuantile } from "../../engine/distributions/normal";
import { standingJudgement } from "../../engine/grouping/standingJudgement";
import { standardDeviation } from "../../engine/moments";
import { tooFew } from "../../engine/refusals";
import { minimalDetectableChange } from "../../engine/reliability/minimalDetectableChange";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { modifiedZScores } from "../../engine/standing/modifiedZScores";
import { percentileRanks } from "../../engine/standing/percentileRanks";
import { percentileShown } from "../../engine/standing/percentileShown";
import { squadRanks } from "../../engine/standing/squadRanks";
import { tScores } from "../../engine/standing/tScores";
import { zScores } from "../../engine/standing/zScores";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import type { Background } from "../../store/background";
import type { Answer } from "../analysis";
import { type AthleteScore, athleteScores } from "../athleteScores";
import { groupBy } from "../groupBy";
import { type ScoreNoise, scoreNoise } from "../scoreNoise";
import { countOf } from "../sessions";
import { factsOf, type TestFacts } from "../testFacts";
import type { StandingRow, StandingSettings } from "./standing";
import * as words from "./words";

const confidence = 0.95;

/** Each athlete's place among the athletes they are compared with, and how much of it the trials' noise could move. */
export function compute(
  results: readonly TestResult[],
  settings: StandingSettings,
  background: Background,
): Result<Answer<StandingRow>> {
  if (results.length === 0) return refuse(tooFew(say`athletes with a result`, 1, 0));
  const facts = factsOf(results[0]!, settings, background);
  const scores = athleteScores(results, facts, settings);
  const noise = scoreNoise(scores, facts, settings);
  const gap = gapOf(noise);
  const groups = settings.among === "everybody" ? [scores] : [...groupBy(scores, ({ group }) => group ?? "").values()];
  const counted = scores.flatMap((score) => score.results);
  const hasDays = new Set(scores.map(({ date }) => date)).size > 1;
  const rows = groups
    .flatMap((group) => standingsAmong(group, { facts, settings, noise, gap }))
    .map((row) => (hasDays ? row : { ...row, date: "" }))
    .sort(bestFirst(settings));
  return ok({
    rows,
    summary: words.summary(rows, settings, gap, results[0]!.unit),
    cautions: words.cautions({ rows, settings, facts, noise, hasDays }),
    method: words.method(settings, facts),
    ...(counted.length < results.length
      ? { used: { ...countOf(counted), what: say`of ${results.length} results, those of the days that count` } }
      : {}),
    leftOut: [],
  });
}

/** Two athletes closer than this cannot be told apart by these trials; null where the noise is not known. */
const gapOf = (noise: ScoreNoise | null): number | null =>
  noise === null ? null : valueOr(minimalDetectableChange({ ...noise, confidence }), null);

type Comparison = {
  readonly facts: TestFacts;
  readonly settings: StandingSettings;
  readonly noise: ScoreNoise | null;
  readonly gap: number | null;
};

function standingsAmong(group: readonly AthleteScore[], { facts, settings, noise, gap }: Comparison): StandingRow[] {
  const { direction } = facts;
  // Without a role an athlete is nobody's rival, not a rival of all others without one.
  const isCompared = settings.among === "everybody" || group[0]!.group !== null;
  const scores = group.map(({ score }) => (isCompared ? score : null));
  const present = scores.filter((score) => score !== null);
  const nobody = scores.map(() => null);
  const ranks = valueOr(squadRanks(scores, { direction }), nobody);
  const percentiles = valueOr(percentileRanks(scores, { direction, method: settings.percentile }), nobody);
  const z = valueOr(zScores(scores, { direction }), nobody);
  const t = valueOr(tScores(scores, { direction }), nobody);
  const modified = valueOr(modifiedZScores(scores, { direction }), nobody);
  const spread = present.length >= 2 ? standardDeviation(present) : 0;

  return group.map(({ athlete, group: role, score, why, date }, index): StandingRow => {
    const own = z[index] ?? null;
    const percentile = percentiles[index] ?? null;
    const judged = own === null || noise === null ? null : judge(own, noise, spread);
    const isClear = judged?.judgement === "strength" || judged?.judgement === "weakness";
    return {
      athlete,
      group: role ?? "",
      score,
      rank: ranks[index] ?? null,
      places: gap === null || !isCompared ? "" : placesWithin(scores, ranks, index, gap),
      percentile: percentile === null ? null : percentileShown(percentile, present.length),
      z: own,
      t: t[index] ?? null,
      verdict: words.verdict({ z: own, judgement: judged?.judgement ?? null, why, isCompared }),
      date: date ?? "",
      modified: modified[index] ?? null,
      clear: isClear ? own : null,
      unclear: isClear ? null : own,
      noise: judged === null ? null : normalQuantile((1 + confidence) / 2) * judged.standardError,
    };
  });
}

const judge = (z: number, { typicalError }: ScoreNoise, betweenAthletes: number) =>
  valueOr(standingJudgement(z, { typicalError, betweenAthletes, confidence }), null);

/** The ranks of the scores that lie within the gap of an athlete's own, e.g. "4 to 9". */
function placesWithin(
  scores: readonly (number | null)[],
  ranks: readonly (number | null)[],
  index: number,
  gap: number,
): string {
  const own = scores[index] ?? null;
  if (own === null) return "";
  const near = scores.flatMap((score, other) =>
    score !== null && Math.abs(score - own) <= gap ? [ranks[other] ?? 0] : [],
  );
  const [first, last] = [Math.min(...near), Math.max(...near)];
  return first === last ? String(first) : say`${first} to ${last}`;
}

/** By role where roles are compared, then by rank; athletes without a rank last. */
const bestFirst =
  ({ among }: StandingSettings) =>
  (a: StandingRow, b: StandingRow): number =>
    (a.rank === null ? 1 : 0) - (b.rank === null ? 1 : 0) ||
    (among === "role" ? a.group.localeCompare(b.group) : 0) ||
    (a.rank ?? 0) - (b.rank ?? 0);
