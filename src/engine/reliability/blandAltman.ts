import { say } from "../../language/say";
import { confidenceRefusals, type Estimate } from "../confidence";
import { noncentralTQuantile } from "../distributions/noncentralT";
import { normalQuantile } from "../distributions/normal";
import { studentTQuantile } from "../distributions/studentT";
import { isRoundingOnly, mean, standardDeviation } from "../moments";
import { noSpread, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { completePairs, fewestAthletes, largestSize, type RepeatedResults } from "./repeatedResults";

/**
 * How the limits of agreement get their own confidence limits: `exact` by the noncentral t distribution, or the
 * approximations of the papers of 1999 and 1986.
 */
export type AgreementLimitsMethod = "exact" | "1999" | "1986";

export type BlandAltman = {
  readonly count: number;
  /** Mean of first minus second. */
  readonly bias: Estimate;
  readonly standardDeviation: number;
  /** Limits of agreement, each with its own confidence limits. */
  readonly lower: Estimate;
  readonly upper: Estimate;
};

/**
 * Agreement of two methods, testers or sessions: bias and the limits between which 95 % of differences lie.
 *
 *     bias = mean(d), limits = bias -/+ multiplier * SD(d), d = first - second
 *
 * All in the unit of the results. `multiplier` is 1.96, or 2 as the paper of 1986 prints. Limits of the limits:
 *
 *     1999:  limit -/+ t * SD * sqrt(1/n + multiplier^2 / (2(n-1)))
 *     1986:  limit -/+ t * SD * sqrt(3/n)
 *     exact: bias + SD * noncentral t((1 -/+ confidence)/2; n-1, z sqrt(n)) / sqrt(n), mirrored for the lower one
 *
 * Rough below 30 pairs. Pairs are the first two columns; a pair with a missing value is left out.
 * Refuses fewer than three pairs and differences that are all equal.
 * Sources: Bland & Altman 1986, Lancet 1:307-310; 1999, Stat Methods Med Res 8:135-160; exact: Carkeet 2015, Optom Vis
 * Sci 92:e71-e80 (from memory).
 */
export function blandAltman(
  results: RepeatedResults,
  {
    confidence,
    method = "exact",
    multiplier = 1.96,
  }: { readonly confidence: number; readonly method?: AgreementLimitsMethod; readonly multiplier?: 1.96 | 2 },
): Result<BlandAltman> {
  const pairs = completePairs(results, 0, 1);
  const count = pairs.length;
  const reasons = confidenceRefusals(confidence);
  if (count < fewestAthletes) reasons.push(tooFew(say`pairs`, fewestAthletes, count));
  if (reasons.length > 0) return refuse(...reasons);

  const differences = pairs.map(([first, second]) => first - second);
  const bias = mean(differences);
  const spread = standardDeviation(differences);
  if (isRoundingOnly(spread, largestSize(pairs))) return refuse(noSpread(say`differences`));
  const t = studentTQuantile((1 + confidence) / 2, count - 1);
  const [inner, outer] = limitDistances(method, multiplier, count, confidence, t);
  const biasMargin = (t * spread) / Math.sqrt(count);
  return ok({
    count,
    bias: { value: bias, low: bias - biasMargin, high: bias + biasMargin },
    standardDeviation: spread,
    lower: { value: bias - multiplier * spread, low: bias - outer * spread, high: bias - inner * spread },
    upper: { value: bias + multiplier * spread, low: bias + inner * spread, high: bias + outer * spread },
  });
}

/** Distances from the bias, in standard deviations, of the confidence limits of a limit of agreement. */
function limitDistances(
  method: AgreementLimitsMethod,
  multiplier: 1.96 | 2,
  count: number,
  confidence: number,
  t: number,
): readonly [number, number] {
  if (method === "exact") {
    // 1.96 is the rounded name of the 97.5 % point; the exact method speaks of the point itself.
    const noncentrality = (multiplier === 1.96 ? normalQuantile(0.975) : multiplier) * Math.sqrt(count);
    const distance = (share: number): number => noncentralTQuantile(share, count - 1, noncentrality) / Math.sqrt(count);
    return [distance((1 - confidence) / 2), distance((1 + confidence) / 2)];
  }
  const margin =
    t * (method === "1999" ? Math.sqrt(1 / count + multiplier ** 2 / (2 * (count - 1))) : Math.sqrt(3 / count));
  return [multiplier - margin, multiplier + margin];
}
