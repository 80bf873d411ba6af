import { say } from "../../language/say";
import { confidenceRefusals, type Estimate } from "../confidence";
import { normalQuantile } from "../distributions/normal";
import { negativeRefusals, positiveRefusals, rangeRefusals } from "../quantities";
import { ok, type Result, refuse } from "../result";

export type StandingJudgement = {
  readonly judgement: "strength" | "weakness" | "in between" | "too noisy to say";
  /** The z score with its limits. */
  readonly z: Estimate;
  readonly standardError: number;
};

/**
 * Whether a z score (positive is better) is a strength (at or above `threshold`) or a weakness (at or below its negative).
 * It counts only when its limits, z +/- quantile x standard error, do not reach past zero; with `against` "threshold" they
 * must not reach past the threshold itself. Else it is too noisy to say. The standard error of z is the typical error of the
 * score over the standard deviation between athletes.
 * Refuses a z outside -10 to 10, a negative typical error, a standard deviation or threshold that is not positive.
 *
 * Source: threshold 0.5 and the rule: common practice, no source; standard error: error propagation with the squad's mean and
 * spread taken as known.
 */
export function standingJudgement(
  z: number,
  {
    typicalError,
    betweenAthletes,
    threshold = 0.5,
    against = "zero",
    confidence = 0.95,
  }: {
    readonly typicalError: number;
    readonly betweenAthletes: number;
    readonly threshold?: number;
    readonly against?: "zero" | "threshold";
    readonly confidence?: number;
  },
): Result<StandingJudgement> {
  const refusals = [
    ...rangeRefusals(say`z score`, -10, 10, z),
    ...negativeRefusals({ "typical error": typicalError }),
    ...positiveRefusals({ "standard deviation between athletes": betweenAthletes, threshold }),
    ...confidenceRefusals(confidence),
  ];
  if (refusals.length > 0) return refuse(...refusals);

  const standardError = typicalError / betweenAthletes;
  const reach = normalQuantile(1 - (1 - confidence) / 2) * standardError;
  const isClear = Math.abs(z) - reach >= (against === "zero" ? 0 : threshold);
  return ok({
    judgement: judge(z, threshold, isClear),
    z: { value: z, low: z - reach, high: z + reach },
    standardError,
  });
}

function judge(z: number, threshold: number, isClear: boolean): StandingJudgement["judgement"] {
  if (Math.abs(z) < threshold) return "in between";
  if (!isClear) return "too noisy to say";
  return z > 0 ? "strength" : "weakness";
}
