import { say } from "../../language/say";
import { presentValues } from "../presentValues";
import { missing, notPositive } from "../refusals";
import { ok, type Result, refuse } from "../result";

/**
 * Change in percent of the earlier score, 100 (later - earlier) / earlier. Refuses a missing score and scores that are not
 * above zero, whose scale has no ratios. Source: textbook.
 */
export function percentChange(earlier: number | null, later: number | null): Result<number> {
  const [before] = presentValues([earlier]);
  const [after] = presentValues([later]);
  const reasons = [];
  if (before === undefined) reasons.push(missing(say`the earlier score`));
  else if (before <= 0) reasons.push(notPositive(say`the earlier score`, before));
  if (after === undefined) reasons.push(missing(say`the later score`));
  else if (after <= 0) reasons.push(notPositive(say`the later score`, after));
  if (before === undefined || after === undefined || reasons.length > 0) return refuse(...reasons);
  return ok((100 * (after - before)) / before);
}
