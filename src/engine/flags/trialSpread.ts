import { say } from "../../language/say";
import { rounded } from "../caution";
import { median } from "../moments";
import { presentValues } from "../presentValues";
import type { Flag } from "./flag";

/**
 * 95 % points of the studentized range for 2 to 10 values and a known standard deviation: tables of Harter 1960 (from memory),
 * recomputed with scipy 1.17.1 `studentized_range.ppf(0.95, k, inf)`.
 */
const rangeLimits = [2.772, 3.314, 3.633, 3.858, 4.03, 4.17, 4.286, 4.387, 4.474] as const;

/**
 * Flags trials of one athlete, test and limb that lie further apart than the test's own noise explains: their range exceeds
 * the one that 95 of 100 sets of trials stay within. `typicalError` is the noise of a single trial within a session, in the
 * unit of the trials. Names the trial furthest from the median (of three or more). With more than ten trials the limit for
 * ten is used, which flags a little more. No flag for fewer than two trials or without a positive typical error.
 *
 * Source: studentized range, any text on multiple comparisons. A single odd trial: three typical errors from the median,
 * common practice, no source.
 */
export function trialSpread(trials: readonly (number | null)[], typicalError: number | null): Flag | null {
  const present = presentValues(trials);
  if (present.length < 2 || typicalError === null || !(typicalError > 0)) return null;
  const limit = rangeLimits[Math.min(present.length, 10) - 2]! * typicalError;
  const range = Math.max(...present) - Math.min(...present);
  if (range <= limit) return null;

  const odd = oddTrial(trials, present, typicalError);
  const where = odd === null ? "" : say` Trial ${odd} stands apart from the others.`;
  return {
    code: "trialSpread",
    reason: say`The trials are ${rounded(range)} apart; the test's own noise keeps them within ${rounded(limit)} in 95 of 100 cases.${where}`,
    facts: { range, limit, trials: present.length, ...(odd === null ? {} : { oddTrial: odd }) },
  };
}

/** Number (from 1) of the trial furthest from the median, if that is more than three typical errors. */
function oddTrial(trials: readonly (number | null)[], present: readonly number[], typicalError: number): number | null {
  if (present.length < 3) return null;
  const centre = median(present);
  const distances = trials.map((trial) => (trial === null ? 0 : Math.abs(trial - centre)));
  const furthest = Math.max(...distances);
  return furthest > 3 * typicalError ? distances.indexOf(furthest) + 1 : null;
}
