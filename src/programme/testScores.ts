import { groupBy } from "../analyses/groupBy";
import { noiseOfTrials } from "../analyses/scoreNoise";
import { ofLatestDays } from "../analyses/sessions";
import { standardDeviation } from "../engine/moments";
import { valueOr } from "../engine/result";
import { zScores } from "../engine/standing/zScores";
import { reducedScoreMoments } from "../engine/trials/reducedScoreMoments";
import { reduceTrials } from "../engine/trials/reduceTrials";
import type { TestResult } from "../reading/testResult";
import type { BatteryTest } from "../store/battery";

/** An athlete's score in one test of the battery, beside the squad's. */
export type TestScore = {
  readonly athlete: string;
  /** In the unit of the test; of two sides the mean. */
  readonly score: number;
  /** Standard score among those compared, positive is better. */
  readonly z: number;
  /** Standard error of `z` by the scatter of the trials; null where no athlete has repeated trials. */
  readonly standardError: number | null;
};

/**
 * Each athlete's latest score in a test, and how it stands among those compared. Nothing where fewer than three of them
 * have one, or all are equal: a standing needs others.
 *
 * The standard error comes from the scatter between the trials of a day: z is at least so uncertain, another day adds
 * to it. Trials of everybody count for it, whoever is compared.
 *
 * @param results those of the test, and of no other.
 * @param isCompared whether an athlete, as named in the results, is one of those compared.
 */
export function testScores(
  results: readonly TestResult[],
  test: BatteryTest,
  isCompared: (athlete: string) => boolean,
): TestScore[] {
  const own = ofLatestDays(results);
  const squad = [...groupBy(own, ({ athlete }) => athlete)].flatMap(([athlete, trials]) => {
    const scored = isCompared(athlete) ? scoreOf(trials, test) : null;
    return scored === null ? [] : [{ athlete, ...scored }];
  });
  const z = valueOr(
    zScores(
      squad.map(({ score }) => score),
      { direction: test.direction },
    ),
    null,
  );
  if (z === null) return [];
  const spread = standardDeviation(squad.map(({ score }) => score));
  const noise = noiseOfTrials(own);
  return squad.map(({ athlete, score, relativeVariance }, index) => ({
    athlete,
    score,
    z: z[index]!,
    standardError:
      noise === null ? null : (noise.logStandardDeviation * Math.sqrt(relativeVariance) * Math.abs(score)) / spread,
  }));
}

/** Score of an athlete's trials, and the variance of its logarithm in units of one trial's. */
function scoreOf(trials: readonly TestResult[], { reduction, direction, sides }: BatteryTest) {
  const bySide = [...groupBy(trials, ({ side }) => side ?? "").values()];
  const scores = bySide.map((own) => {
    const values = own.map(({ value }) => value);
    return valueOr(reduceTrials(values, { reduction, direction }), null);
  });
  const present = scores.flatMap((scored) => (scored === null ? [] : [scored]));
  // One side alone is not held against others' two.
  if (present.length === 0 || (sides === 2 && present.length < 2)) return null;
  const variances = present.map(({ count }) => reducedScoreMoments(count, reduction).variance);
  return {
    score: present.reduce((sum, { score }) => sum + score, 0) / present.length,
    relativeVariance: variances.reduce((sum, variance) => sum + variance, 0) / present.length ** 2,
  };
}
