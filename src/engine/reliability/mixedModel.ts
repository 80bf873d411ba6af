import { bisect } from "../bisect";
import { confidenceRefusals, type Estimate } from "../confidence";
import { isRoundingOnly } from "../moments";
import { presentValues } from "../presentValues";
import { noSpread, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { fewestAthletes, largestSize, type RepeatedResults } from "./repeatedResults";
import { standardDeviationEstimate } from "./standardDeviationEstimate";

export type MixedModel = {
  /** Athletes with at least one result, and their results. */
  readonly athletes: number;
  readonly resultCount: number;
  readonly varianceBetween: number;
  readonly varianceWithin: number;
  readonly typicalError: Estimate;
  readonly degreesOfFreedom: number;
  /** Of one result, consistency; 0 when no difference between athletes is seen beyond noise. */
  readonly intraclassCorrelation: number;
};

/**
 * Typical error and intraclass correlation from all results when some are missing:
 *
 *     result = session (fixed) + athlete (random) + error,   restricted maximum likelihood
 *
 * One ratio, lambda = between / within variance, is searched; everything else follows from it in closed form, in time
 * proportional to the number of results. For complete data it equals the analysis of variance when athletes differ beyond
 * noise. Limits of the typical error are chi-square with N - athletes - sessions + 1 degrees of freedom, those of the
 * contrasts within athletes, so for complete data they are `typicalError`'s.
 *
 * Refuses fewer than three athletes with two results, a single session and results without noise.
 * Source: Patterson & Thompson 1971, Biometrika 58:545-554 (from memory); same numbers as lme4::lmer.
 */
export function mixedModel(
  results: RepeatedResults,
  { confidence }: { readonly confidence: number },
): Result<MixedModel> {
  const reasons = confidenceRefusals(confidence);
  const present = results.map(presentValues).filter((row) => row.length > 0);
  const repeated = present.filter((row) => row.length >= 2).length;
  if (repeated < fewestAthletes) reasons.push(tooFew("athletes with two results", fewestAthletes, repeated));
  if (reasons.length > 0) return refuse(...reasons);

  const design = designOf(results);
  const resultCount = present.flat().length;
  const degreesOfFreedom = resultCount - present.length - design.sessions + 1;
  if (degreesOfFreedom < 1) return refuse(tooFew("repeated results", resultCount + 1 - degreesOfFreedom, resultCount));

  const isRounding = (squares: number): boolean =>
    isRoundingOnly(Math.sqrt(squares / degreesOfFreedom), largestSize(present));
  if (isRounding(leastSquaresAt(design, 0).squares)) return refuse(noSpread("results"));
  const ratio = likeliestRatio(design, resultCount);
  const { squares } = leastSquaresAt(design, ratio);
  if (ratio === largestRatio || isRounding(squares)) return refuse(noSpread("repeated results"));
  const varianceWithin = squares / (resultCount - design.sessions);
  return ok({
    athletes: present.length,
    resultCount,
    varianceBetween: ratio * varianceWithin,
    varianceWithin,
    typicalError: standardDeviationEstimate(Math.sqrt(varianceWithin), degreesOfFreedom, confidence),
    degreesOfFreedom,
    intraclassCorrelation: ratio / (1 + ratio),
  });
}

/** Results counted from the first one, and which sessions each athlete took part in. */
type Design = {
  readonly sessions: number;
  readonly athletes: readonly { readonly session: number; readonly value: number }[][];
};

function designOf(results: RepeatedResults): Design {
  const used = (results[0] ?? []).flatMap((_, column) => (results.some((row) => row[column] != null) ? [column] : []));
  const origin = presentValues(results.flat())[0]!;
  const athletes = results
    .map((row) =>
      used.flatMap((column, session) => {
        const value = row[column];
        return value == null ? [] : [{ session, value: value - origin }];
      }),
    )
    .filter((cells) => cells.length > 0);
  return { sessions: used.length, athletes };
}

type LeastSquares = {
  /** Generalised least-squares sum of squares. */
  readonly squares: number;
  /** Minus two restricted log likelihoods, variance profiled out, up to a constant. */
  readonly deviance: (resultCount: number) => number;
  /** Its slope along lambda. */
  readonly devianceSlope: (resultCount: number) => number;
};

/**
 * Generalised least squares at one ratio lambda. An athlete with m results has covariance I + lambda 11', whose inverse is
 * I - w 11' with w = lambda / (1 + lambda m), so all sums are over results and the only matrix is sessions by sessions.
 */
function leastSquaresAt({ sessions, athletes }: Design, ratio: number): LeastSquares {
  const information = Array.from({ length: sessions }, () => new Array<number>(sessions).fill(0));
  const moments = new Array<number>(sessions).fill(0);
  for (const cells of athletes) {
    const weight = ratio / (1 + ratio * cells.length);
    const total = cells.reduce((sum, cell) => sum + cell.value, 0);
    for (const { session, value } of cells) {
      moments[session]! += value - weight * total;
      information[session]![session]! += 1;
      for (const other of cells) information[session]![other.session]! -= weight;
    }
  }
  const root = choleskyRoot(information);
  const effects = backward(root, forward(root, moments));

  let squares = 0;
  let squaresSlope = 0;
  let logDeterminant = 0;
  let logDeterminantSlope = 0;
  for (const cells of athletes) {
    const inflation = 1 + ratio * cells.length;
    const residuals = cells.map(({ session, value }) => value - effects[session]!);
    const total = residuals.reduce((sum, residual) => sum + residual, 0);
    const centre = total / cells.length;
    squares += residuals.reduce((sum, residual) => sum + (residual - centre) ** 2, 0) + (total * centre) / inflation;
    squaresSlope -= (total / inflation) ** 2;
    logDeterminant += Math.log(inflation);
    const taken = new Array<number>(sessions).fill(0);
    for (const { session } of cells) taken[session] = 1;
    const leverage = forward(root, taken).reduce((sum, value) => sum + value ** 2, 0);
    logDeterminantSlope += cells.length / inflation - leverage / inflation ** 2;
  }
  logDeterminant += root.reduce((sum, row, index) => sum + 2 * Math.log(row[index]!), 0);
  return {
    squares,
    deviance: (resultCount) => (resultCount - sessions) * Math.log(squares) + logDeterminant,
    devianceSlope: (resultCount) => ((resultCount - sessions) * squaresSlope) / squares + logDeterminantSlope,
  };
}

/** Noise of a hundred-thousandth of the spread between athletes or less: copied results. */
const largestRatio = 1e10;

/** The ratio of least deviance: the best cell of a coarse grid over 20 powers of ten, then the root of the slope in it. */
function likeliestRatio(design: Design, resultCount: number): number {
  const grid = [0, ...Array.from({ length: 40 }, (_, index) => 10 ** (index / 2 - 10)), largestRatio];
  const deviances = grid.map((ratio) => leastSquaresAt(design, ratio).deviance(resultCount));
  const best = deviances.indexOf(Math.min(...deviances));
  const slope = (ratio: number): number => leastSquaresAt(design, ratio).devianceSlope(resultCount);
  const [low, high] = [grid[Math.max(0, best - 1)]!, grid[Math.min(grid.length - 1, best + 1)]!];
  if (slope(low) >= 0) return low;
  if (slope(high) <= 0) return high;
  return bisect(slope, low, high);
}

/** Lower triangular root of a positive definite matrix. */
function choleskyRoot(matrix: readonly (readonly number[])[]): number[][] {
  const root: number[][] = [];
  matrix.forEach((row, i) => {
    const current: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? current : root[j]!;
      let rest = row[j]!;
      for (let k = 0; k < j; k++) rest -= current[k]! * other[k]!;
      current.push(j === i ? Math.sqrt(Math.max(rest, Number.EPSILON)) : rest / other[j]!);
    }
    root.push(current);
  });
  return root;
}

/** Solves root * x = right. */
function forward(root: readonly (readonly number[])[], right: readonly number[]): number[] {
  const solution: number[] = [];
  root.forEach((row, i) => {
    let rest = right[i]!;
    for (let j = 0; j < i; j++) rest -= row[j]! * solution[j]!;
    solution.push(rest / row[i]!);
  });
  return solution;
}

/** Solves root' * x = right. */
function backward(root: readonly (readonly number[])[], right: readonly number[]): number[] {
  const solution = [...right];
  for (let i = root.length - 1; i >= 0; i--) {
    let rest = solution[i]!;
    for (let j = i + 1; j < root.length; j++) rest -= root[j]![i]! * solution[j]!;
    solution[i] = rest / root[i]![i]!;
  }
  return solution;
}
