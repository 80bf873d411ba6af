import { presentValues } from "../presentValues";
import type { RepeatedResults } from "./repeatedResults";

/** Results counted from the first one, and which sessions each athlete took part in. */
export type Design = {
  readonly sessions: number;
  readonly resultCount: number;
  readonly athletes: readonly { readonly session: number; readonly value: number }[][];
};

/** The design of the results that are there; sessions without any are left out. */
export function designOf(results: RepeatedResults): Design {
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
  return { sessions: used.length, resultCount: athletes.flat().length, athletes };
}

export type LeastSquares = {
  /** Generalised least-squares sum of squares. */
  readonly squares: number;
  /** Minus two restricted log likelihoods, variance profiled out, up to a constant. */
  readonly deviance: number;
  /** Its slope along lambda. */
  readonly devianceSlope: number;
};

/**
 * Generalised least squares at one ratio lambda. An athlete with m results has covariance I + lambda 11', whose inverse is
 * I - w 11' with w = lambda / (1 + lambda m), so all sums are over results and the only matrix is sessions by sessions.
 */
export function leastSquaresAt({ sessions, resultCount, athletes }: Design, ratio: number): LeastSquares {
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
    deviance: (resultCount - sessions) * Math.log(squares) + logDeterminant,
    devianceSlope: ((resultCount - sessions) * squaresSlope) / squares + logDeterminantSlope,
  };
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
