import { say } from "../../language/say";
import { zWithoutRounding } from "../moments";
import { notPositive, tooFew, unequalLengths } from "../refusals";
import { ok, type Refusal, type Result, refuse } from "../result";
import type { Direction } from "../trials/reduction";
import type { SquadScores } from "./squadScores";
import { zScores } from "./zScores";

/** A physical quality, weighted for a role, and the tests it is judged by, one score per athlete in each. */
export type WeightedQuality = {
  readonly quality: string;
  readonly weight: number;
  readonly tests: readonly {
    readonly test: string;
    readonly weight: number;
    readonly direction: Direction;
    readonly scores: SquadScores;
  }[];
};

export type CompositeScores = {
  /** Mean of each quality's z scores by athlete, null when none of its tests is there. */
  readonly qualities: readonly { readonly quality: string; readonly scores: readonly (number | null)[] }[];
  /** Weighted mean of the qualities by athlete, null when less than 70 % of the weight was tested. */
  readonly composites: readonly (number | null)[];
  /** Share (0 to 1) of the total weight that each athlete was tested on. */
  readonly coverage: readonly number[];
};

/** An athlete must be tested on this share of the weight (common practice, no source). */
export const neededCoverage = 0.7;

/**
 * Composite of z scores by quality and role:
 *
 *     quality = sum(w_test z) / sum(w_test),   composite = sum(w_quality quality) / sum(w_quality)
 *
 * over what is there. Weighting by quality first keeps two tests of one quality from counting double. The composite has no
 * SD of 1; put it through `zScores` or `tScores` before calling it z or T. Weights are the coach's opinion: print them.
 *
 * Refuses weights that are not above zero, no tests, lists of different length, and a test whose z scores are refused.
 * Source: the mean of z scores is the total score of athleticism, Turner et al. 2019, Strength Cond J 41(6):91-101 (from memory).
 */
export function compositeScores(weighted: readonly WeightedQuality[]): Result<CompositeScores> {
  const tests = weighted.flatMap(({ tests }) => tests);
  const first = tests[0];
  if (first === undefined || weighted.some(({ tests }) => tests.length === 0)) {
    return refuse(tooFew(say`tests of each quality`, 1, 0));
  }
  const reasons: Refusal[] = [];
  for (const { quality, weight } of weighted)
    if (!(weight > 0)) reasons.push(notPositive(say`the weight of ${quality}`, weight));
  for (const { test, weight, scores } of tests) {
    if (!(weight > 0)) reasons.push(notPositive(say`the weight of ${test}`, weight));
    if (scores.length !== first.scores.length) {
      reasons.push(
        unequalLengths(say`scores of ${first.test}`, say`scores of ${test}`, [first.scores.length, scores.length]),
      );
    }
  }
  if (reasons.length > 0) return refuse(...reasons);

  const standardised = weighted.map(({ quality, weight, tests }) => ({
    quality,
    weight,
    tests: tests.map(({ weight, scores, direction }) => ({ weight, z: zScores(scores, { direction }) })),
  }));
  const refusals = standardised.flatMap(({ tests }) => tests.flatMap(({ z }) => (z.ok ? [] : z.reasons)));
  if (refusals.length > 0) return refuse(...refusals);

  const athletes = first.scores.map((_, athlete) => athlete);
  const qualities = standardised.map(({ quality, weight, tests }) => {
    const ofAthlete = athletes.map((athlete) =>
      weightedMean(tests.map(({ weight, z }) => ({ weight, value: z.ok ? z.value[athlete]! : null }))),
    );
    return { quality, weight, ofAthlete };
  });
  const combined = athletes.map((athlete) => ({
    composite: weightedMean(qualities.map(({ weight, ofAthlete }) => ({ weight, value: ofAthlete[athlete]!.mean })))
      .mean,
    coverage: coverageOf(qualities.map(({ weight, ofAthlete }) => ({ weight, share: ofAthlete[athlete]!.share }))),
  }));
  return ok({
    qualities: qualities.map(({ quality, ofAthlete }) => ({ quality, scores: ofAthlete.map(({ mean }) => mean) })),
    composites: combined.map(({ composite, coverage }) => (coverage >= neededCoverage - 1e-12 ? composite : null)),
    coverage: combined.map(({ coverage }) => coverage),
  });
}

/** Weighted mean of the values that are there, and the share of the weight they carry. */
function weightedMean(parts: readonly { readonly weight: number; readonly value: number | null }[]) {
  let total = 0;
  let present = 0;
  let sum = 0;
  for (const { weight, value } of parts) {
    total += weight;
    if (value === null) continue;
    present += weight;
    sum += weight * value;
  }
  return { mean: present === 0 ? null : zWithoutRounding(sum / present), share: present / total };
}

function coverageOf(parts: readonly { readonly weight: number; readonly share: number }[]): number {
  const total = parts.reduce((sum, { weight }) => sum + weight, 0);
  return parts.reduce((sum, { weight, share }) => sum + weight * share, 0) / total;
}
