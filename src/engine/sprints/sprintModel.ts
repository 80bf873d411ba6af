import { say } from "../../language/say";
import { type Caution, extrapolated, fewDegreesOfFreedom } from "../caution";
import { confidenceRefusals, type Estimate } from "../confidence";
import { studentTQuantile } from "../distributions/studentT";
import { tooFew } from "../refusals";
import { ok, type Refusal, type Result, refuse } from "../result";
import { gaussNewton, type Linearised } from "./gaussNewton";
import { type Split, splitsFrom } from "./splits";
import { curveRefusals, distanceAt, type SprintCurve, timeToDistance, velocityAt } from "./sprintCurve";

/** A fitted parameter with its Wald limits (Student's t) and standard error. */
export type FittedParameter = Estimate & { readonly standardError: number };

export type SprintModel = {
  /** m/s. */
  readonly maximalVelocity: FittedParameter;
  /** s. */
  readonly timeConstant: FittedParameter;
  /** How long before the clock the athlete moved, s; `null` when it was not fitted. */
  readonly timeOffset: FittedParameter | null;
  /** Maximal velocity / time constant, m/s^2. */
  readonly initialAcceleration: number;
  /** Sum of squared residuals, in m^2 or s^2 by what was fitted. */
  readonly residualSumOfSquares: number;
  /** In m or s by what was fitted. */
  readonly residualStandardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly cautions: readonly Caution[];
};

/** A run shorter than this does not come near maximal velocity in team sports: common practice, no source. */
const longEnough = 30;
/**
 * Mono-exponential model of a sprint fitted to split times by nonlinear least squares:
 * x(t) = V (t - tau (1 - exp(-t / tau))), t counted from the start of the movement.
 *
 * `residualsIn` "distance" (the most common, the default) makes distances the response; "time" makes the times the response,
 * which carry the noise, and differs little. `withTimeOffset` also fits how long before the clock the athlete moved
 * (t + offset in place of t); it and tau are nearly collinear, so their standard errors grow several times.
 * Distances in m, times in s, missing splits `null`. Refuses fewer than three splits (four with an offset), splits that do not
 * rise, no convergence, V outside 4 to 13 m/s and tau outside 0.4 to 2.5 s.
 *
 * Source: Furusawa, Hill & Parkinson 1927; Samozino et al. 2016, Scand J Med Sci Sports 26:648-658 (abstract read).
 */
export function sprintModel(
  distances: readonly (number | null)[],
  times: readonly (number | null)[],
  {
    residualsIn = "distance",
    withTimeOffset = false,
    confidence = 0.95,
  }: {
    readonly residualsIn?: "distance" | "time";
    readonly withTimeOffset?: boolean;
    readonly confidence?: number;
  } = {},
): Result<SprintModel> {
  const read = splitsFrom(distances, times);
  const refusals = [...(read.ok ? [] : read.reasons), ...confidenceRefusals(confidence)];
  if (!read.ok || refusals.length > 0) return refuse(...refusals);
  const splits = read.value;
  const fewest = withTimeOffset ? 4 : 3;
  if (splits.length < fewest) return refuse(tooFew(say`splits`, fewest, splits.length));

  const start = [1.05 * fastestInterval(splits), 1, ...(withTimeOffset ? [0] : [])];
  const linearise = residualsIn === "distance" ? distanceResiduals : timeResiduals;
  const fit = gaussNewton(start, (parameters) => linearise(splits, parameters));
  if (!fit) return refuse(noFit);
  const [velocity, constant, offset] = fit.parameters;
  const implausible = curveRefusals({ maximalVelocity: velocity!, timeConstant: constant! });
  if (implausible.length > 0) return refuse(...implausible);

  const degreesOfFreedom = splits.length - fit.parameters.length;
  const residualStandardDeviation = Math.sqrt(fit.residualSumOfSquares / degreesOfFreedom);
  const t = studentTQuantile(1 - (1 - confidence) / 2, degreesOfFreedom);
  const fitted = (index: number): FittedParameter => {
    const value = fit.parameters[index]!;
    const standardError = residualStandardDeviation * Math.sqrt(fit.inverseInformation[index]![index]!);
    return { value, standardError, low: value - t * standardError, high: value + t * standardError };
  };
  return ok({
    maximalVelocity: fitted(0),
    timeConstant: fitted(1),
    timeOffset: offset === undefined ? null : fitted(2),
    initialAcceleration: velocity! / constant!,
    residualSumOfSquares: fit.residualSumOfSquares,
    residualStandardDeviation,
    degreesOfFreedom,
    cautions: cautionsOf(splits, velocity!, degreesOfFreedom),
  });
}

/** Distance as a function of time; the derivative by the offset is the velocity. */
function distanceResiduals(splits: readonly Split[], parameters: readonly number[]): Linearised | null {
  const at = curveAndOffset(parameters);
  if (!at || splits.some(({ time }) => time + at.offset <= 0)) return null;
  return {
    residuals: splits.map(({ distance, time }) => distance - distanceAt(time + at.offset, at.curve)),
    derivatives: splits.map(({ time }) => {
      const moved = time + at.offset;
      return [...distanceDerivatives(moved, at.curve), velocityAt(moved, at.curve)].slice(0, parameters.length);
    }),
  };
}

/** Time as a function of distance: the curve inverted, its derivatives by the rule for implicit functions. */
function timeResiduals(splits: readonly Split[], parameters: readonly number[]): Linearised | null {
  const at = curveAndOffset(parameters);
  if (!at) return null;
  const moved = splits.map(({ distance }) => timeToDistance(distance, at.curve));
  return {
    residuals: splits.map(({ time }, index) => time - (moved[index]! - at.offset)),
    derivatives: moved.map((time) => {
      const velocity = velocityAt(time, at.curve);
      const byCurve = distanceDerivatives(time, at.curve).map((derivative) => -derivative / velocity);
      return [...byCurve, -1].slice(0, parameters.length);
    }),
  };
}

/** Derivatives of distance by maximal velocity and by the time constant. */
function distanceDerivatives(time: number, curve: SprintCurve): [number, number] {
  const { maximalVelocity, timeConstant } = curve;
  const decay = Math.exp(-time / timeConstant);
  return [
    distanceAt(time, curve) / maximalVelocity,
    maximalVelocity * (Math.expm1(-time / timeConstant) + (time / timeConstant) * decay),
  ];
}

function curveAndOffset(
  parameters: readonly number[],
): { readonly curve: SprintCurve; readonly offset: number } | null {
  const [maximalVelocity = 0, timeConstant = 0, offset = 0] = parameters;
  return maximalVelocity > 0 && timeConstant > 0 ? { curve: { maximalVelocity, timeConstant }, offset } : null;
}

function fastestInterval(splits: readonly Split[]): number {
  const velocities = splits.map(({ distance, time }, index) => {
    const before = splits[index - 1] ?? { distance: 0, time: 0 };
    return (distance - before.distance) / (time - before.time);
  });
  return Math.max(...velocities);
}

function cautionsOf(splits: readonly Split[], maximalVelocity: number, degreesOfFreedom: number): Caution[] {
  const cautions: Caution[] = [];
  if (splits.at(-1)!.distance < longEnough) {
    cautions.push(extrapolated(say`maximal velocity in m/s`, maximalVelocity, fastestInterval(splits)));
  }
  if (degreesOfFreedom < 3) cautions.push(fewDegreesOfFreedom(degreesOfFreedom));
  return cautions;
}

const noFit: Refusal = {
  code: "noFit",
  get message() {
    return say`No sprint curve fits these splits. Check the distances and times.`;
  },
  facts: {},
};
