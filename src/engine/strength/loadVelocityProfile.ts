import { say } from "../../language/say";
import { type Caution, extrapolated, fewDegreesOfFreedom } from "../caution";
import { confidenceRefusals, type Estimate } from "../confidence";
import { studentTQuantile } from "../distributions/studentT";
import { positiveRefusals } from "../quantities";
import { notPositive, outOfRange, tooFew, unequalLengths } from "../refusals";
import { type Line, leastSquaresLine } from "../regression/leastSquaresLine";
import { ok, type Refusal, type Result, refuse } from "../result";

export type LoadVelocityProfile = {
  /** Velocity with no load, m/s: the intercept of the line. */
  readonly velocityAtZeroLoad: number;
  /** Change of velocity per unit of load: below zero. */
  readonly slope: number;
  readonly rSquared: number;
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  /** The load at which the line reaches no velocity at all, in the unit of the loads. */
  readonly loadAtZeroVelocity: number;
  /** The load at the minimum velocity threshold, limits by the delta method. */
  readonly maximum: Estimate;
  readonly standardError: number;
  /** Limits of the same load by Fieller's theorem; `null` when the slope is too uncertain for them to be finite. */
  readonly fieller: { readonly low: number; readonly high: number } | null;
  readonly cautions: readonly Caution[];
};

/**
 * One-repetition maximum from mean concentric velocities at submaximal loads: the least-squares line of velocity on load
 * (v = a + b load), read where it meets the velocity of a maximal lift: (threshold - a) / b.
 *
 * Loads in one unit, velocities in m/s, pairs with a missing side (`null`) are left out. Limits use Student's t with n - 2
 * degrees of freedom. Refuses fewer than three distinct loads, values that are not positive, a line that does not fall,
 * r^2 below 0.90 (common practice, no source), and a threshold at or above the velocity with no load.
 * Regressing load on velocity gives a slightly different answer; this is velocity on load.
 *
 * Source: Gonzalez-Badillo & Sanchez-Medina 2010, Int J Sports Med 31:347-352 (from memory). For the free-weight squat such
 * estimates were not accurate enough to prescribe from: Banyard et al. 2017, J Strength Cond Res 31:1897-1904 (title read).
 */
export function loadVelocityProfile(
  loads: readonly (number | null)[],
  velocities: readonly (number | null)[],
  {
    minimumVelocityThreshold,
    confidence = 0.95,
  }: { readonly minimumVelocityThreshold: number; readonly confidence?: number },
): Result<LoadVelocityProfile> {
  if (loads.length !== velocities.length)
    return refuse(unequalLengths(say`loads`, "velocities", [loads.length, velocities.length]));
  const pairs = loads.flatMap((load, index) => {
    const velocity = velocities[index] ?? null;
    return load === null || velocity === null ? [] : [{ load, velocity }];
  });
  const refusals: Refusal[] = [
    ...pairs.flatMap(({ load, velocity }) => positiveRefusals({ load, velocity })),
    ...positiveRefusals({ "minimum velocity threshold": minimumVelocityThreshold }),
    ...confidenceRefusals(confidence),
  ];
  const distinctLoads = new Set(pairs.map(({ load }) => load)).size;
  if (distinctLoads < 3) refusals.push(tooFew(say`different loads with a velocity`, 3, distinctLoads));
  if (refusals.length > 0) return refuse(...refusals);

  const liftedLoads = pairs.map(({ load }) => load);
  const fit = leastSquaresLine(
    liftedLoads,
    pairs.map(({ velocity }) => velocity),
  );
  if (!fit.ok) return fit;
  const line = fit.value;
  const unusable = lineRefusals(line, minimumVelocityThreshold);
  if (unusable.length > 0) return refuse(...unusable);

  const load = (minimumVelocityThreshold - line.intercept) / line.slope;
  const t = studentTQuantile(1 - (1 - confidence) / 2, line.degreesOfFreedom);
  const standardError = standardErrorOfLoad(line, load);
  const maximum = { value: load, low: load - t * standardError, high: load + t * standardError };
  const fieller = fiellerLimits(line, load, t);

  return ok({
    velocityAtZeroLoad: line.intercept,
    slope: line.slope,
    rSquared: line.rSquared,
    residualStandardDeviation: line.residualStandardDeviation,
    degreesOfFreedom: line.degreesOfFreedom,
    loadAtZeroVelocity: -line.intercept / line.slope,
    maximum,
    standardError,
    fieller,
    cautions: cautionsOf(line, load, Math.max(...liftedLoads), fieller),
  });
}

function lineRefusals(line: Line, threshold: number): Refusal[] {
  if (line.slope >= 0) return [velocityDoesNotFall(line.slope)];
  const refusals: Refusal[] = [];
  if (line.rSquared < 0.9) refusals.push(outOfRange(say`r squared of the line`, 0.9, 1, line.rSquared));
  if (threshold >= line.intercept)
    refusals.push(notPositive(say`estimated maximum`, (threshold - line.intercept) / line.slope));
  return refusals;
}

/** Delta method: the variance of (threshold - a) / b in terms of the line's residual spread. */
function standardErrorOfLoad(line: Line, load: number): number {
  const n = line.degreesOfFreedom + 2;
  const spread = 1 / n + (load - line.meanX) ** 2 / line.sumOfSquaresX;
  return (line.residualStandardDeviation / Math.abs(line.slope)) * Math.sqrt(spread);
}

/** Where the confidence band of the line meets the threshold: Fieller's theorem for inverse prediction from the mean line. */
function fiellerLimits(line: Line, load: number, t: number): { readonly low: number; readonly high: number } | null {
  const n = line.degreesOfFreedom + 2;
  const g = (t * line.residualStandardDeviation) ** 2 / (line.slope ** 2 * line.sumOfSquaresX);
  if (g >= 1) return null;
  const offset = load - line.meanX;
  const centre = line.meanX + offset / (1 - g);
  const reach =
    ((t * line.residualStandardDeviation) / (Math.abs(line.slope) * (1 - g))) *
    Math.sqrt((1 - g) / n + offset ** 2 / line.sumOfSquaresX);
  return { low: centre - reach, high: centre + reach };
}

function cautionsOf(line: Line, load: number, heaviest: number, fieller: unknown): Caution[] {
  const cautions: Caution[] = [];
  if (line.rSquared < 0.95) cautions.push(scattered(line.rSquared));
  if (line.degreesOfFreedom < 2) cautions.push(fewDegreesOfFreedom(line.degreesOfFreedom));
  if (fieller === null) cautions.push(slopeTooUncertain);
  if (load > 1.25 * heaviest) cautions.push(extrapolated(say`estimated maximum`, load, heaviest));
  if (load < heaviest) cautions.push(belowLifted(load, heaviest));
  return cautions;
}

const velocityDoesNotFall = (slope: number): Refusal => ({
  code: "velocityDoesNotFall",
  message: say`Velocity must fall as the load rises; in these lifts it does not. Check that loads and velocities are paired.`,
  facts: { slope },
});

const scattered = (rSquared: number): Caution => ({
  code: "scattered",
  message: say`The lifts scatter around the line (r squared ${rSquared.toFixed(3)}, at least 0.95 is wanted): a rough estimate.`,
  facts: { rSquared },
});

const slopeTooUncertain: Caution = {
  code: "slopeTooUncertain",
  get message() {
    return say`There are too few or too scattered lifts for finite limits of the maximum. Add loads.`;
  },
  facts: {},
};

const belowLifted = (estimate: number, heaviest: number): Caution => ({
  code: "belowLifted",
  message: say`The estimated maximum is below the heaviest load already lifted: the threshold or an effort was wrong.`,
  facts: { estimate, heaviest },
});
