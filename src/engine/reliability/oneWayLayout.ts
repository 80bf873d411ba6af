import { say } from "../../language/say";
import { confidenceRefusals, type Estimate } from "../confidence";
import { isRoundingOnly, mean, sumOfSquares } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { largestSize, type RepeatedResults } from "./repeatedResults";
import { standardDeviationEstimate } from "./standardDeviationEstimate";

export type OneWayLayout = {
  readonly athletes: number;
  readonly resultCount: number;
  readonly betweenAthletes: number;
  readonly withinAthletes: number;
  readonly f: number;
  /** Number of results per athlete that stands in for k when it differs. */
  readonly effectiveResultsPerAthlete: number;
  readonly intraclassCorrelation: number;
  readonly typicalError: Estimate;
  readonly degreesOfFreedom: number;
};

/**
 * One-way analysis of variance of athletes with unequally many results; no sessions, so a shared shift stays in the error.
 *
 *     k0 = (N - sum(n_i^2) / N) / (a - 1),   ICC(1) = (MSB - MSW) / (MSB + (k0 - 1) MSW),   TE = sqrt(MSW), df N - a
 *
 * Athletes with one result count for the means, not for the error. Rows may differ in length.
 * Refuses fewer than two athletes with two results, and results that are all equal within athletes.
 * Source: textbook; Donner 1986, Int Stat Rev 54:67-82, for k0 (from memory).
 */
export function oneWayLayout(
  results: RepeatedResults,
  { confidence }: { readonly confidence: number },
): Result<OneWayLayout> {
  const rows = results.map(presentValues).filter((row) => row.length > 0);
  const repeated = rows.filter((row) => row.length >= 2).length;
  const reasons = confidenceRefusals(confidence);
  if (repeated < 2) reasons.push(tooFew(say`athletes with two results`, 2, repeated));
  if (reasons.length > 0) return refuse(...reasons);

  const origin = rows[0]![0]!;
  const offsets = rows.map((row) => row.map((value) => value - origin));
  const resultCount = offsets.reduce((count, row) => count + row.length, 0);
  const grandMean = mean(offsets.flat());
  const betweenSquares = offsets.reduce((sum, row) => sum + row.length * (mean(row) - grandMean) ** 2, 0);
  const withinSquares = offsets.reduce((sum, row) => sum + sumOfSquares(row), 0);

  const athletes = rows.length;
  const degreesOfFreedom = resultCount - athletes;
  const betweenAthletes = betweenSquares / (athletes - 1);
  const withinAthletes = withinSquares / degreesOfFreedom;
  if (isRoundingOnly(Math.sqrt(withinAthletes), largestSize(rows)))
    return refuse(noSpread(say`results of each athlete`));
  const squaredCounts = offsets.reduce((sum, row) => sum + row.length ** 2, 0);
  const effective = (resultCount - squaredCounts / resultCount) / (athletes - 1);
  return ok({
    athletes,
    resultCount,
    betweenAthletes,
    withinAthletes,
    f: betweenAthletes / withinAthletes,
    effectiveResultsPerAthlete: effective,
    intraclassCorrelation: (betweenAthletes - withinAthletes) / (betweenAthletes + (effective - 1) * withinAthletes),
    typicalError: standardDeviationEstimate(Math.sqrt(withinAthletes), degreesOfFreedom, confidence),
    degreesOfFreedom,
  });
}
