import { groupBy } from "../analyses/groupBy";
import { standingJudgement } from "../engine/grouping/standingJudgement";
import { valueOr } from "../engine/result";
import { seriesName } from "../reading/measures";
import type { TestResult } from "../reading/testResult";
import { type Background, memberCalled } from "../store/background";
import type { BatteryTest } from "../store/battery";
import { nameKey, wordingKey } from "../store/sameName";
import { type ComparedWith, comparedWith } from "./comparedWith";
import { squadNames } from "./squadNames";
import { type TestScore, testScores } from "./testScores";

/** How an athlete stands in one physical quality. */
export type QualityStanding = {
  readonly quality: string;
  /** Mean z of the quality's tests, positive is better; null where none was done. */
  readonly z: number | null;
  /** Standard error of `z` by the scatter of trials; null where that is not known. */
  readonly standardError: number | null;
  readonly judgement: "strength" | "weakness" | "in between" | "too noisy to say" | "not tested";
  readonly tests: readonly (TestScore & { readonly series: string; readonly unit: string | null })[];
};

export type QualityProfile = {
  readonly athlete: string;
  readonly role: string | null;
  readonly comparedWith: ComparedWith;
  /** In the same order for everybody. */
  readonly qualities: readonly QualityStanding[];
};

/**
 * How every athlete stands in the qualities of the battery, within the squad that was tested, or the part of it that
 * the coach has them compared with: each test's z, and of a quality's tests the mean. The athletes are those of the squad, then those with results who are not in it.
 */
export function qualityProfiles(results: readonly TestResult[], background: Background): QualityProfile[] {
  const nameOf = squadNames(background);
  const rated = background.battery.filter(({ quality }) => quality !== null);
  const others = comparedWith(results, background);
  const bySeries = groupBy(results, ({ test, measure }) => nameKey(seriesName(test, measure)));
  const scores = rated.map((test) => {
    const own = bySeries.get(nameKey(seriesName(test.test, test.measure))) ?? [];
    return { test, scores: scoresIn(test, own, others, nameOf) };
  });
  const byQuality = groupBy(scores, ({ test }) => wordingKey(test.quality!));
  const athletes = new Set([
    ...background.squad.map(({ athlete }) => athlete),
    ...results.map(({ athlete }) => nameOf(athlete)),
  ]);
  return [...athletes].map((athlete) => ({
    athlete,
    role: memberCalled(background, athlete)?.role ?? null,
    comparedWith: others(athlete),
    qualities: [...byQuality.values()].map((tests) =>
      standingIn(
        tests[0]!.test.quality!,
        tests.flatMap(({ test, scores: all }) =>
          (all.get(athlete) ?? []).map((score) => ({
            ...score,
            series: seriesName(test.test, test.measure),
            unit: test.unit,
          })),
        ),
      ),
    ),
  }));
}

/** Scores of a test from its own results, by athlete, each athlete's among those they are compared with. */
function scoresIn(
  test: BatteryTest,
  results: readonly TestResult[],
  others: (athlete: string) => ComparedWith,
  nameOf: (athlete: string) => string,
): ReadonlyMap<string, readonly TestScore[]> {
  const athletes = [...new Set(results.map(({ athlete }) => nameOf(athlete)))];
  const circles = new Set(athletes.map(others));
  const scores = [...circles].flatMap((circle) => {
    const isCompared = (athlete: string) => circle.among === null || circle.among.has(nameKey(nameOf(athlete)));
    return testScores(results, test, isCompared).filter(({ athlete }) => others(nameOf(athlete)) === circle);
  });
  return groupBy(scores, ({ athlete }) => nameOf(athlete));
}

function standingIn(quality: string, tests: QualityStanding["tests"]): QualityStanding {
  if (tests.length === 0) return { quality, z: null, standardError: null, judgement: "not tested", tests };
  const z = tests.reduce((sum, test) => sum + test.z, 0) / tests.length;
  const known = tests.every(({ standardError }) => standardError !== null);
  const standardError = known
    ? Math.sqrt(tests.reduce((sum, test) => sum + test.standardError! ** 2, 0)) / tests.length
    : null;
  return { quality, z, standardError, judgement: judge(z, standardError), tests };
}

/** Without a known noise a standing is judged by its size alone. */
function judge(z: number, standardError: number | null): QualityStanding["judgement"] {
  const judged = standingJudgement(z, { typicalError: standardError ?? 0, betweenAthletes: 1 });
  return valueOr(judged, null)?.judgement ?? "too noisy to say";
}
