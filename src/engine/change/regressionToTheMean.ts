import { say } from "../../language/say";
import { presentValues } from "../presentValues";
import { missing, outOfRange } from "../refusals";
import { ok, type Result, refuse } from "../result";

/**
 * The retest to expect when nothing has changed: squad mean + correlation * (score - squad mean), in the unit of the score.
 * Athletes picked because they tested worst will "improve" by this alone.
 *
 * `intraclassCorrelation` is that of the score in this squad; refuses it outside 0 to 1, and a missing score.
 * Source: Galton's regression; Bland & Altman 1994, BMJ 308:1499 (from memory).
 */
export function regressionToTheMean(
  score: number | null,
  { squadMean, intraclassCorrelation }: { readonly squadMean: number; readonly intraclassCorrelation: number },
): Result<number> {
  const [present] = presentValues([score]);
  if (present === undefined) return refuse(missing(say`the score`));
  if (!(intraclassCorrelation >= 0 && intraclassCorrelation <= 1)) {
    return refuse(outOfRange(say`the intraclass correlation`, 0, 1, intraclassCorrelation));
  }
  return ok(squadMean + intraclassCorrelation * (present - squadMean));
}
