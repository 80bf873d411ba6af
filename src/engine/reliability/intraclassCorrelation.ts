import { say } from "../../language/say";
import { confidenceRefusals, type Estimate, transformEstimate } from "../confidence";
import { fisherFQuantile } from "../distributions/fisherF";
import { isRoundingOnly } from "../moments";
import { noSpread, noTrueSpread } from "../refusals";
import { ok, type Result, refuse } from "../result";
import type { RepeatedResults } from "./repeatedResults";
import { type TwoWayLayout, twoWayLayout } from "./twoWayLayout";

/** The six forms of Shrout & Fleiss, each by its model and by what is judged: one result or the mean of all k. */
export const intraclassForms = {
  oneWaySingle: {
    label: "ICC(1,1)",
    get meaning() {
      return say`one-way random, one result`;
    },
  },
  agreementSingle: {
    label: "ICC(2,1)",
    get meaning() {
      return say`two-way random, absolute agreement, one result`;
    },
  },
  consistencySingle: {
    label: "ICC(3,1)",
    get meaning() {
      return say`two-way mixed, consistency, one result`;
    },
  },
  oneWayMean: {
    label: "ICC(1,k)",
    get meaning() {
      return say`one-way random, mean of k results`;
    },
  },
  agreementMean: {
    label: "ICC(2,k)",
    get meaning() {
      return say`two-way random, absolute agreement, mean of k results`;
    },
  },
  consistencyMean: {
    label: "ICC(3,k)",
    get meaning() {
      return say`two-way mixed, consistency, mean of k results`;
    },
  },
} as const;

export type IntraclassForm = keyof typeof intraclassForms;

export type IntraclassCorrelation = {
  /** Share of the variance that is between athletes; can be negative, which means "no difference beyond noise". */
  readonly correlation: Estimate;
  readonly athletes: number;
  readonly sessions: number;
  readonly leftOut: number;
};

/**
 * Intraclass correlation with F-based limits, complete cases. Between sessions print the consistency form with the typical
 * error; use agreement when absolute values matter (two testers, a threshold). It falls in a homogeneous squad although
 * the error is the same, so it never judges a test alone.
 *
 * Refuses what `twoWayLayout` refuses, athletes whose means are all equal, and an agreement form whose
 * denominator or lower limit has no meaning (athletes differ less than their own results).
 *
 * Sources: Shrout & Fleiss 1979, Psychol Bull 86:420-428; McGraw & Wong 1996, Psychol Methods 1:30-46 with its
 * correction 1:390 (from memory; same numbers as psych::ICC).
 */
export function intraclassCorrelation(
  results: RepeatedResults,
  { form, confidence }: { readonly form: IntraclassForm; readonly confidence: number },
): Result<IntraclassCorrelation> {
  const layout = twoWayLayout(results);
  const reasons = [...confidenceRefusals(confidence), ...(layout.ok ? [] : layout.reasons)];
  if (!layout.ok || reasons.length > 0) return refuse(...reasons);
  const { athletes, sessions, leftOut, betweenAthletes, grandMean } = layout.value;
  if (isRoundingOnly(Math.sqrt(betweenAthletes), Math.abs(grandMean))) return refuse(noSpread(say`athletes' means`));

  const correlation = estimate(layout.value, form, (1 + confidence) / 2);
  if (correlation === null) return refuse(noTrueSpread(say`${intraclassForms[form].label} with its limits`));
  return ok({ correlation, athletes, sessions, leftOut });
}

function estimate(layout: TwoWayLayout, form: IntraclassForm, share: number): Estimate | null {
  const { athletes: n, sessions: k, betweenAthletes, withinAthletes, residual } = layout;
  switch (form) {
    case "oneWaySingle":
      return transformEstimate(ratioEstimate(betweenAthletes / withinAthletes, n - 1, n * (k - 1), share), single(k));
    case "oneWayMean":
      return transformEstimate(ratioEstimate(betweenAthletes / withinAthletes, n - 1, n * (k - 1), share), ofMean);
    case "consistencySingle":
      return transformEstimate(ratioEstimate(betweenAthletes / residual, n - 1, (n - 1) * (k - 1), share), single(k));
    case "consistencyMean":
      return transformEstimate(ratioEstimate(betweenAthletes / residual, n - 1, (n - 1) * (k - 1), share), ofMean);
    case "agreementSingle":
      return agreement(layout, share);
    case "agreementMean":
      return steppedUp(agreement(layout, share), k);
  }
}

/** The ratio of mean squares F with its limits. */
function ratioEstimate(f: number, numerator: number, denominator: number, share: number): Estimate {
  return {
    value: f,
    low: f / fisherFQuantile(share, numerator, denominator),
    high: f * fisherFQuantile(share, denominator, numerator),
  };
}

const single =
  (k: number) =>
  (f: number): number =>
    (f - 1) / (f + k - 1);

const ofMean = (f: number): number => 1 - 1 / f;

/**
 * Absolute agreement of one result; its limits by Satterthwaite's degrees of freedom, which may be below 1. Near the lowest
 * possible correlation that approximation can stop short of the value itself; the limits then reach to the value.
 */
function agreement(layout: TwoWayLayout, share: number): Estimate | null {
  const { athletes: n, sessions: k, betweenAthletes: rows, betweenSessions: columns, residual } = layout;
  const value = (rows - residual) / (rows + (k - 1) * residual + (k * (columns - residual)) / n);
  const ofColumns = k * value * (columns / residual);
  const ofError = n * (1 + (k - 1) * value) - k * value;
  const degreesOfFreedom = ((k - 1) * (n - 1) * (ofColumns + ofError) ** 2) / ((n - 1) * ofColumns ** 2 + ofError ** 2);
  if (!(degreesOfFreedom > 0)) return null;
  const lowF = fisherFQuantile(share, n - 1, degreesOfFreedom);
  const highF = fisherFQuantile(share, degreesOfFreedom, n - 1);
  const noise = k * columns + (k * n - k - n) * residual;
  return {
    value,
    low: Math.min(value, (n * (rows - lowF * residual)) / (lowF * noise + n * rows)),
    high: Math.max(value, (n * (highF * rows - residual)) / (noise + n * highF * rows)),
  };
}

/** Spearman and Brown's step from one result to the mean of k; it has no meaning at or below -1 / (k - 1). */
function steppedUp(correlation: Estimate | null, k: number): Estimate | null {
  const pole = -1 / (k - 1);
  if (correlation === null || correlation.value <= pole || correlation.low <= pole) return null;
  return transformEstimate(correlation, (r) => (k * r) / (1 + (k - 1) * r));
}
