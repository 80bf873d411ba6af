import { say } from "../../language/say";
import { mean } from "../moments";
import { presentValues } from "../presentValues";
import { ok, type Result, refuse } from "../result";
import { type DailyValues, dailyValueRefusals } from "./dailyValues";

/**
 * Exponentially weighted average of each day: weight x load + (1 - weight) x average of the day before, weight = 2 / (days + 1).
 * A day nobody reported has no average (`null`) and leaves the next one to build on the last that has.
 * It starts with the first reported load (`start` "firstLoad") or with the mean of the first `span` days reported
 * ("meanOfSpan", no average before the last of them); for weeks the two differ, so print which.
 * Refuses negative values; a span that is not a whole number above zero throws.
 *
 * Source: Williams et al. 2017, Br J Sports Med 51:209-210 (from memory).
 */
export function exponentiallyWeightedAverage(
  days: DailyValues,
  { span, start = "firstLoad" }: { readonly span: number; readonly start?: "firstLoad" | "meanOfSpan" },
): Result<DailyValues> {
  if (!Number.isInteger(span) || span < 1) throw new RangeError("A span is a whole number of days above zero.");
  const refusals = dailyValueRefusals(days, say`day total`);
  if (refusals.length > 0) return refuse(...refusals);

  const weight = 2 / (span + 1);
  const startAfter = start === "firstLoad" ? 1 : span;
  const opening = presentValues(days).slice(0, startAfter);
  let reported = 0;
  let average = 0;
  return ok(
    days.map((load) => {
      if (load === null) return null;
      reported += 1;
      if (reported < startAfter) return null;
      average = reported === startAfter ? mean(opening) : weight * load + (1 - weight) * average;
      return average;
    }),
  );
}
