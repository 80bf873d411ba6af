import { say } from "../../language/say";
import { mean } from "../moments";
import { presentValues } from "../presentValues";
import { ok, type Result, refuse } from "../result";
import { type DailyValues, dailyValueRefusals } from "./dailyValues";

/**
 * Mean of the `window` days ending on each day. `null` until the window is full, and while fewer than `reportedDays` of its days
 * were reported (by default all of them); with fewer allowed the mean is over the reported days.
 * Refuses negative values; a window or count that is not a whole number above zero throws.
 *
 * Source: arithmetic.
 */
export function rollingAverage(
  days: DailyValues,
  { window, reportedDays = window }: { readonly window: number; readonly reportedDays?: number },
): Result<DailyValues> {
  if (!Number.isInteger(window) || window < 1) throw new RangeError("A window is a whole number of days above zero.");
  if (!Number.isInteger(reportedDays) || reportedDays < 1) throw new RangeError("At least one day must be reported.");
  const refusals = dailyValueRefusals(days, say`day total`);
  if (refusals.length > 0) return refuse(...refusals);
  return ok(
    days.map((_, index) => {
      if (index + 1 < window) return null;
      const reported = presentValues(days.slice(index + 1 - window, index + 1));
      return reported.length >= reportedDays ? mean(reported) : null;
    }),
  );
}
