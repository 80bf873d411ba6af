import { say } from "../../language/say";
import { confidenceRefusals, type Estimate } from "../confidence";
import { studentTCumulative, studentTQuantile } from "../distributions/studentT";
import { isRoundingOnly, mean, standardDeviation } from "../moments";
import { noSpread, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { completePairs, fewestAthletes, largestSize, type RepeatedResults } from "./repeatedResults";

export type MeanChange = {
  readonly athletes: number;
  /** Later minus earlier, in the unit of the results. */
  readonly change: Estimate;
  readonly standardDeviation: number;
  readonly t: number;
  readonly degreesOfFreedom: number;
  /** Two-sided p of the paired t test. */
  readonly p: number;
};

/**
 * Systematic shift from one session to another (learning, fatigue), over the athletes who have both:
 *
 *     mean(d) -/+ t((1 + confidence) / 2; n-1) * SD(d) / sqrt(n),   d = later - earlier
 *
 * `earlier` and `later` are column numbers from 0. Refuses fewer than three athletes and changes that are all equal.
 * Source: Hopkins 2000, Sports Med 30:1-15; Atkinson & Nevill 1998, Sports Med 26:217-238 (from memory).
 */
export function meanChange(
  results: RepeatedResults,
  {
    earlier = 0,
    later = 1,
    confidence,
  }: { readonly earlier?: number; readonly later?: number; readonly confidence: number },
): Result<MeanChange> {
  const pairs = completePairs(results, earlier, later);
  const reasons = confidenceRefusals(confidence);
  if (pairs.length < fewestAthletes)
    reasons.push(tooFew(say`athletes with both results`, fewestAthletes, pairs.length));
  if (reasons.length > 0) return refuse(...reasons);

  const differences = pairs.map(([first, second]) => second - first);
  const spread = standardDeviation(differences);
  if (isRoundingOnly(spread, largestSize(pairs))) return refuse(noSpread(say`changes`));
  const value = mean(differences);
  const degreesOfFreedom = pairs.length - 1;
  const standardError = spread / Math.sqrt(pairs.length);
  const margin = studentTQuantile((1 + confidence) / 2, degreesOfFreedom) * standardError;
  const t = value / standardError;
  return ok({
    athletes: pairs.length,
    change: { value, low: value - margin, high: value + margin },
    standardDeviation: spread,
    t,
    degreesOfFreedom,
    p: 2 * studentTCumulative(-Math.abs(t), degreesOfFreedom),
  });
}
