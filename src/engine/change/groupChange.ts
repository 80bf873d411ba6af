import { say } from "../../language/say";
import { confidenceRefusals, type Estimate, transformEstimate } from "../confidence";
import { noncentralityOf } from "../distributions/noncentralT";
import { variance } from "../moments";
import { noSpread, tooFew, unequalLengths } from "../refusals";
import { type MeanChange, meanChange } from "../reliability/meanChange";
import { completePairs } from "../reliability/repeatedResults";
import { ok, type Result, refuse } from "../result";
import { smallSampleCorrection } from "./smallSampleCorrection";

/**
 * Degrees of freedom of the small-sample correction, on which texts differ: `n-1` (Cumming 2012, metafor), or `2(n-1)` with
 * the approximation 1 - 3/(4 df - 1) (Lakens 2013).
 */
export type CorrectionRule = "n-1" | "2(n-1)";

export type GroupChange = MeanChange & {
  /** Change over the SD of the changes, d_z: grows when athletes change alike; not for comparing studies. */
  readonly ofChanges: Estimate;
  /** Change over the root mean of both variances, d_av. */
  readonly ofAverageSpread: Estimate;
  /** Change over the earlier SD, d_pre. */
  readonly ofEarlierSpread: Estimate;
  /** The same three, corrected for small samples: g_z, g_av (the one to print), g_pre. */
  readonly corrected: {
    readonly ofChanges: Estimate;
    readonly ofAverageSpread: Estimate;
    readonly ofEarlierSpread: Estimate;
  };
};

/**
 * Mean change of a group, and the change in standard deviations. Later minus earlier; limits of the standardised changes by
 * the noncentral t distribution, of which all three share the noncentrality limits:
 *
 *     d_z = mean(d) / SD(d),   d_av = mean(d) / sqrt((SD_earlier^2 + SD_later^2) / 2),   d_pre = mean(d) / SD_earlier
 *
 * Athletes missing at either time are left out. Without a control group it says "changed", not "the programme worked".
 * Refuses fewer than five athletes (look at each one), changes that are all equal and scores that are all equal.
 *
 * Sources: Cumming 2012, Understanding the New Statistics; Lakens 2013, Front Psychol 4:863; Algina & Keselman 2003, Educ
 * Psychol Meas 63:537-553, for the limits (from memory).
 */
export function groupChange(
  earlier: readonly (number | null)[],
  later: readonly (number | null)[],
  { confidence, correction = "n-1" }: { readonly confidence: number; readonly correction?: CorrectionRule },
): Result<GroupChange> {
  const results = earlier.map((value, index) => [value, later[index] ?? null]);
  const pairs = completePairs(results, 0, 1);
  const reasons = confidenceRefusals(confidence);
  if (earlier.length !== later.length) {
    reasons.push(unequalLengths(say`earlier scores`, say`later scores`, [earlier.length, later.length]));
  }
  if (pairs.length < 5) reasons.push(tooFew(say`athletes with both results`, 5, pairs.length));
  if (reasons.length > 0) return refuse(...reasons);

  const change = meanChange(results, { confidence });
  if (!change.ok) return change;
  const earlierVariance = variance(pairs.map(([before]) => before));
  const laterVariance = variance(pairs.map(([, after]) => after));
  if (earlierVariance === 0) return refuse(noSpread(say`earlier scores`));

  const { athletes, t, degreesOfFreedom, standardDeviation } = change.value;
  const noncentrality: Estimate = {
    value: t,
    low: noncentralityOf(t, degreesOfFreedom, (1 + confidence) / 2),
    high: noncentralityOf(t, degreesOfFreedom, (1 - confidence) / 2),
  };
  const over = (spread: number): Estimate =>
    transformEstimate(noncentrality, (value) => (value * standardDeviation) / (Math.sqrt(athletes) * spread));
  const uncorrected = {
    ofChanges: over(standardDeviation),
    ofAverageSpread: over(Math.sqrt((earlierVariance + laterVariance) / 2)),
    ofEarlierSpread: over(Math.sqrt(earlierVariance)),
  };
  const factor =
    correction === "n-1" ? smallSampleCorrection(degreesOfFreedom) : 1 - 3 / (4 * 2 * degreesOfFreedom - 1);
  const correct = (estimate: Estimate): Estimate => transformEstimate(estimate, (value) => factor * value);
  return ok({
    ...change.value,
    ...uncorrected,
    corrected: {
      ofChanges: correct(uncorrected.ofChanges),
      ofAverageSpread: correct(uncorrected.ofAverageSpread),
      ofEarlierSpread: correct(uncorrected.ofEarlierSpread),
    },
  });
}
