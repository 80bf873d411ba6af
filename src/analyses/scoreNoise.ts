import { mean, median } from "../engine/moments";
import { type Noise, pooledNoise } from "../engine/reliability/pooledNoise";
import { valueOr } from "../engine/result";
import { reducedScoreMoments } from "../engine/trials/reducedScoreMoments";
import { fewestTrials } from "../engine/trials/reduction";
import type { TestResult } from "../reading/testResult";
import type { AthleteScore, ScoreChoices } from "./athleteScores";
import { groupBy } from "./groupBy";
import type { TestFacts } from "./testFacts";

/** Noise of a score as far as the trials of one session show it: what another day adds is not in it. */
export type ScoreNoise = {
  /** In the unit of the results. */
  readonly typicalError: number;
  readonly degreesOfFreedom: number;
};

/** Trials that belong to one athlete, side and day. */
export const trialSets = (results: readonly TestResult[]): TestResult[][] => [
  ...groupBy(results, ({ athlete, side, date }) => [athlete, side, date].join("|")).values(),
];

/** The noise of one trial, pooled over all sets of them; null where no set has two. */
export const noiseOfTrials = (results: readonly TestResult[]): Noise | null =>
  valueOr(pooledNoise(trialSets(results).map((set) => set.map(({ value }) => value))), null);

/**
 * The noise of the athletes' scores from all their trials pooled: the noise of one trial, times what its reduction from
 * the usual number of trials leaves of it, at the size of the middle score; the mean of two sides has half the variance.
 * Null where trials were not repeated.
 */
export function scoreNoise(
  scores: readonly AthleteScore[],
  { reduction }: Pick<TestFacts, "reduction">,
  { sides }: Pick<ScoreChoices, "sides">,
): ScoreNoise | null {
  const results = scores.flatMap((one) => one.results);
  const noise = noiseOfTrials(results);
  const present = scores.flatMap(({ score }) => (score === null ? [] : [score]));
  if (noise === null || present.length === 0) return null;
  const counts = trialSets(results)
    .map(({ length }) => length)
    .filter((count) => count >= fewestTrials(reduction));
  if (counts.length === 0) return null;
  const ofReduction = mean(counts.map((count) => reducedScoreMoments(count, reduction).variance));
  const isMeanOfSides = sides === "mean" && results.some(({ side }) => side !== null);
  return {
    typicalError:
      median(present) * noise.logStandardDeviation * Math.sqrt(isMeanOfSides ? ofReduction / 2 : ofReduction),
    degreesOfFreedom: noise.degreesOfFreedom,
  };
}
