import { say } from "../../language/say";
import type { Caution } from "../caution";
import { presentValues } from "../presentValues";
import { tooFew } from "../refusals";
import { ok, type Refusal, type Result, refuse } from "../result";
import { type DailyValues, dailyValueRefusals } from "./dailyValues";

export type ActionCounts = {
  readonly total: number;
  readonly daysReported: number;
  readonly largestDay: number;
  /** The largest sum of four days in a row, all reported; `null` when there are no four such days. */
  readonly largestFourDays: number | null;
  readonly cautions: readonly Caution[];
};

const windowDays = 4;

/**
 * Summary of daily counts of one kind of action (throws, jumps, contacts) over a week or longer: total, the largest day and the
 * largest four days in a row. Counts are never multiplied by a rating, and kinds are kept apart. A day of 0 is a count.
 * Refuses no reported day, negative counts and counts that are not whole.
 *
 * Source: common practice, no source; limits for young players are their federation's to set.
 */
export function actionCounts(days: DailyValues): Result<ActionCounts> {
  const refusals: Refusal[] = dailyValueRefusals(days, say`daily count`);
  const reported = presentValues(days);
  refusals.push(...reported.filter((count) => !Number.isInteger(count)).map(notWhole));
  if (reported.length === 0) refusals.push(tooFew(say`reported days`, 1, 0));
  if (refusals.length > 0) return refuse(...refusals);

  const missing = days.length - reported.length;
  return ok({
    total: sum(reported),
    daysReported: reported.length,
    largestDay: Math.max(...reported),
    largestFourDays: largestOf(days),
    cautions: missing > 0 ? [daysMissing(missing, days.length)] : [],
  });
}

function largestOf(days: DailyValues): number | null {
  const sums = days.flatMap((_, index) => {
    const window = presentValues(days.slice(index, index + windowDays));
    return window.length === windowDays ? [sum(window)] : [];
  });
  return sums.length > 0 ? Math.max(...sums) : null;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const notWhole = (count: number): Refusal => ({
  code: "notWhole",
  message: say`Actions are counted in whole numbers; ${count} is none.`,
  facts: { count },
});

const daysMissing = (missing: number, days: number): Caution => ({
  code: "daysMissing",
  message: say`${missing} of ${days} days were not reported, so the counts are too low by what happened then.`,
  facts: { missing, days },
});
