import { inverseOfSymmetric } from "./inverseOfSymmetric";

/** Residuals (observed minus fitted) at some parameters, and the derivatives of the fitted values, one row per observation. */
export type Linearised = {
  readonly residuals: readonly number[];
  readonly derivatives: readonly (readonly number[])[];
};

export type LeastSquaresFit = {
  readonly parameters: readonly number[];
  readonly residualSumOfSquares: number;
  /** Inverse of J'J at the solution: times the residual variance it is the parameters' covariance matrix. */
  readonly inverseInformation: readonly (readonly number[])[];
};

const mostIterations = 100;
const mostHalvings = 30;
const convergedStep = 1e-10;
/** Where rounding stops the sum of squares from falling further, steps are still larger than `convergedStep`. */
const stalledStep = 1e-5;

/**
 * Nonlinear least squares by Gauss-Newton steps, halved until the fit improves, for a handful of parameters above or below zero.
 * `linearise` returns `null` where the parameters are impossible; such a step is halved too. Gives `null` when no fit is found.
 *
 * Written out rather than taken from a library: the curves here have simple derivatives, whose J'J gives the standard errors
 * as well; the general solver at hand gives none, does not say whether it converged, and costs 18.6 kB compressed.
 * Method: Bates & Watts 1988 (from memory). Checked against R 4.2.2 `nls` and against ml-levenberg-marquardt.
 */
export function gaussNewton(
  start: readonly number[],
  linearise: (parameters: readonly number[]) => Linearised | null,
): LeastSquaresFit | null {
  let parameters = start;
  let current = linearise(parameters);
  for (let iteration = 0; current && iteration < mostIterations; iteration++) {
    const inverseInformation = inverseOfSymmetric(informationOf(current));
    if (!inverseInformation) return null;
    const residualSumOfSquares = sumOfSquaredResiduals(current);
    const fit = { parameters, residualSumOfSquares, inverseInformation };
    const step = stepOf(current, inverseInformation);
    const size = Math.max(...step.map((change, index) => Math.abs(change) / Math.max(Math.abs(parameters[index]!), 1)));
    if (size <= convergedStep) return fit;

    const next = improvedAlong(step, parameters, residualSumOfSquares, linearise);
    if (!next) return size <= stalledStep ? fit : null;
    parameters = next.parameters;
    current = next.linearised;
  }
  return null;
}

function improvedAlong(
  step: readonly number[],
  from: readonly number[],
  sumOfSquares: number,
  linearise: (parameters: readonly number[]) => Linearised | null,
): { readonly parameters: readonly number[]; readonly linearised: Linearised } | null {
  for (let halving = 0; halving < mostHalvings; halving++) {
    const parameters = from.map((value, index) => value + step[index]! / 2 ** halving);
    const linearised = linearise(parameters);
    if (linearised && sumOfSquaredResiduals(linearised) < sumOfSquares) return { parameters, linearised };
  }
  return null;
}

/** J'J. */
function informationOf({ derivatives }: Linearised): number[][] {
  const columns = derivatives[0]!.map((_, column) => derivatives.map((row) => row[column]!));
  return columns.map((one) => columns.map((other) => dot(one, other)));
}

/** (J'J)^-1 J'r. */
function stepOf({ residuals, derivatives }: Linearised, inverseInformation: readonly (readonly number[])[]): number[] {
  const gradient = derivatives[0]!.map((_, column) =>
    dot(
      derivatives.map((row) => row[column]!),
      residuals,
    ),
  );
  return inverseInformation.map((row) => dot(row, gradient));
}

const sumOfSquaredResiduals = ({ residuals }: Linearised): number => dot(residuals, residuals);

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, index) => sum + value * other[index]!, 0);
