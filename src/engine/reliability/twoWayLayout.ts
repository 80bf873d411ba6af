import { say } from "../../language/say";
import { isRoundingOnly, mean, sumOfSquares } from "../moments";
import { noSpread, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";
import { completeRows, fewestAthletes, largestSize, type RepeatedResults } from "./repeatedResults";

/** Analysis of variance of athletes by sessions, complete cases. Mean squares are in the squared unit of the results. */
export type TwoWayLayout = {
  readonly athletes: number;
  readonly sessions: number;
  /** Athletes left out because a result is missing. */
  readonly leftOut: number;
  readonly grandMean: number;
  readonly betweenAthletes: number;
  readonly betweenSessions: number;
  /** What is left after athletes and sessions; df (athletes - 1)(sessions - 1). */
  readonly residual: number;
  /** Within athletes, shift between sessions included; df athletes * (sessions - 1). */
  readonly withinAthletes: number;
};

/**
 * Mean squares of athletes (R_i), sessions (C_j) and residual:
 *
 *     k sum (R_i - G)^2 / (n-1),   n sum (C_j - G)^2 / (k-1),   sum (x_ij - R_i - C_j + G)^2 / ((n-1)(k-1))
 *
 * Refuses fewer than three complete athletes, fewer than two sessions, and repeated results that are all equal.
 * Source: textbook analysis of variance; as used by Shrout & Fleiss 1979, Psychol Bull 86:420-428 (from memory).
 */
export function twoWayLayout(results: RepeatedResults): Result<TwoWayLayout> {
  const rows = completeRows(results);
  const athletes = rows.length;
  const sessions = results[0]?.length ?? 0;
  const reasons = [];
  if (sessions < 2) reasons.push(tooFew(say`sessions`, 2, sessions));
  if (athletes < fewestAthletes) {
    reasons.push(tooFew(say`athletes with every result`, fewestAthletes, athletes));
  }
  if (reasons.length > 0) return refuse(...reasons);

  const origin = rows[0]![0]!;
  const offsets = rows.map((row) => row.map((value) => value - origin));
  const athleteMeans = offsets.map(mean);
  const sessionMeans = offsets[0]!.map((_, session) => mean(offsets.map((row) => row[session]!)));
  const grandMean = mean(athleteMeans);

  let residualSquares = 0;
  offsets.forEach((row, athlete) => {
    row.forEach((value, session) => {
      residualSquares += (value - athleteMeans[athlete]! - (sessionMeans[session]! - grandMean)) ** 2;
    });
  });
  const residual = residualSquares / ((athletes - 1) * (sessions - 1));
  if (isRoundingOnly(Math.sqrt(residual), largestSize(rows))) return refuse(noSpread(say`repeated results`));

  const withinSquares = offsets.reduce((sum, row) => sum + sumOfSquares(row), 0);
  return ok({
    athletes,
    sessions,
    leftOut: results.length - athletes,
    grandMean: origin + grandMean,
    betweenAthletes: (sessions * sumOfSquares(athleteMeans)) / (athletes - 1),
    betweenSessions: (athletes * sumOfSquares(sessionMeans)) / (sessions - 1),
    residual,
    withinAthletes: withinSquares / (athletes * (sessions - 1)),
  });
}
