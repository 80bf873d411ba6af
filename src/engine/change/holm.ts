import { say } from "../../language/say";
import { outOfRange } from "../refusals";
import { ok, type Result, refuse } from "../result";

/**
 * p values adjusted for their number by Holm's step-down: the i-th smallest times (m - i + 1), never below the one before,
 * at most 1. In the order given. Refuses a value outside 0 to 1.
 * Source: Holm 1979, Scand J Stat 6:65-70 (from memory); same as R p.adjust(method = "holm").
 */
export function holm(pValues: readonly number[]): Result<number[]> {
  const bad = pValues.find((p) => !(p >= 0 && p <= 1));
  if (bad !== undefined) return refuse(outOfRange(say`every p value`, 0, 1, bad));
  const order = pValues.map((_, index) => index).sort((a, b) => pValues[a]! - pValues[b]!);
  const adjusted = new Array<number>(pValues.length);
  let largest = 0;
  order.forEach((index, position) => {
    largest = Math.max(largest, Math.min(1, pValues[index]! * (pValues.length - position)));
    adjusted[index] = largest;
  });
  return ok(adjusted);
}
