import { mean, standardDeviation, variance } from "../moments";
import { ok, type Result } from "../result";
import { completeRows, type RepeatedResults } from "./repeatedResults";
import { twoWayLayout } from "./twoWayLayout";

/**
 * Which standard deviation between athletes is meant:
 * - `observed`: root of the mean of the session variances; noise is in it;
 * - `ofMeans`: of the athletes' means; less noise in it;
 * - `true`: noise taken out, sqrt((between athletes - residual) / k), 0 when there is no more than noise.
 */
export type SpreadKind = "observed" | "ofMeans" | "true";

/**
 * Standard deviation between athletes in the unit of the results, complete cases.
 * Refuses what `twoWayLayout` refuses. Source: variance components of the two-way layout (textbook).
 */
export function betweenAthleteSpread(results: RepeatedResults, kind: SpreadKind): Result<number> {
  const layout = twoWayLayout(results);
  if (!layout.ok) return layout;
  const rows = completeRows(results);
  switch (kind) {
    case "observed":
      return ok(Math.sqrt(mean(rows[0]!.map((_, session) => variance(rows.map((row) => row[session]!))))));
    case "ofMeans":
      return ok(standardDeviation(rows.map(mean)));
    case "true": {
      const { betweenAthletes, residual, sessions } = layout.value;
      return ok(Math.sqrt(Math.max(0, betweenAthletes - residual) / sessions));
    }
  }
}
