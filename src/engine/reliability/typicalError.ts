import { confidenceRefusals, type Estimate } from "../confidence";
import { ok, type Result, refuse } from "../result";
import type { RepeatedResults } from "./repeatedResults";
import { standardDeviationEstimate } from "./standardDeviationEstimate";
import { twoWayLayout } from "./twoWayLayout";

/**
 * What becomes of a shift that all athletes share, such as learning: `removed` from the error (two-way, the usual
 * typical error) or `kept` in it (one-way, the standard error of measurement for agreement).
 */
export type SessionShift = "removed" | "kept";

export type TypicalError = {
  /** In the unit of the results. */
  readonly error: Estimate;
  readonly degreesOfFreedom: number;
  readonly athletes: number;
  /** Athletes left out because a result is missing. */
  readonly leftOut: number;
};

/**
 * Typical error: the standard deviation of one athlete's results from session to session.
 *
 *     removed: sqrt(residual mean square), df (n-1)(k-1); with two sessions SD(d) / sqrt(2)
 *     kept:    sqrt(mean square within athletes), df n(k-1)
 *
 * with chi-square limits. Complete cases; `mixedModel` uses all data. From trials of one session it is noise within a
 * session, from sessions on different days it is noise between sessions: only the latter judges a retest.
 *
 * Refuses what `twoWayLayout` refuses. Source: Hopkins 2000, Sports Med 30:1-15 (from memory).
 */
export function typicalError(
  results: RepeatedResults,
  { confidence, sessionShift = "removed" }: { readonly confidence: number; readonly sessionShift?: SessionShift },
): Result<TypicalError> {
  const layout = twoWayLayout(results);
  const reasons = [...confidenceRefusals(confidence), ...(layout.ok ? [] : layout.reasons)];
  if (!layout.ok || reasons.length > 0) return refuse(...reasons);

  const { athletes, sessions, leftOut, residual, withinAthletes } = layout.value;
  const [variance, degreesOfFreedom] =
    sessionShift === "removed"
      ? [residual, (athletes - 1) * (sessions - 1)]
      : [withinAthletes, athletes * (sessions - 1)];
  return ok({
    error: standardDeviationEstimate(Math.sqrt(variance), degreesOfFreedom, confidence),
    degreesOfFreedom,
    athletes,
    leftOut,
  });
}
