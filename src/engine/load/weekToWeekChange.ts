import { say } from "../../language/say";
import { negativeRefusals } from "../quantities";
import { notPositive } from "../refusals";
import { ok, type Result, refuse } from "../result";

/**
 * Change from last week's total to this week's, in percent of last week's. Refuses negative totals and a last week of zero.
 *
 * Source: common practice, no source.
 */
export function weekToWeekChange(lastWeek: number, thisWeek: number): Result<number> {
  const refusals = negativeRefusals({ "last week's total": lastWeek, "this week's total": thisWeek });
  if (lastWeek === 0) refusals.push(notPositive(say`last week's total`, lastWeek));
  return refusals.length > 0 ? refuse(...refusals) : ok((100 * (thisWeek - lastWeek)) / lastWeek);
}
