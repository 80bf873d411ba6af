import { say } from "../../language/say";
import type { Flag } from "./flag";

/**
 * Flags a test that was never done or whose last result is older than the coach's interval. Days are serial numbers of the sheet
 * (`today` too); `lastDay` is `null` when there is no result. A result dated after today is flagged as such.
 */
export function overdueRetest(lastDay: number | null, today: number, everyDays: number): Flag | null {
  if (lastDay === null) {
    return { code: "neverTested", reason: say`There is no result of this test yet.`, facts: { everyDays } };
  }
  const age = today - lastDay;
  if (age < 0) {
    return {
      code: "resultInFuture",
      reason: say`The last result is dated ${-age} days ahead of today.`,
      facts: { lastDay, today },
    };
  }
  if (!(age > everyDays)) return null;
  return {
    code: "overdueRetest",
    reason: say`The last result is ${age} days old; a retest every ${everyDays} days was planned.`,
    facts: { lastDay, today, age, everyDays },
  };
}
