import { say } from "../../language/say";
import { ascending } from "../moments";
import { presentValues } from "../presentValues";
import { outOfRange, tooFew } from "../refusals";
import { ok, type Result, refuse } from "../result";

/**
 * Which of the published quantiles: 5 Hazen, 6 the spreadsheet's PERCENTILE.EXC, 7 its PERCENTILE.INC, 8 the one its authors
 * recommend. 7 is the default since it agrees with the sheet next to it.
 */
export type QuantileType = 5 | 6 | 7 | 8;

/**
 * The value below which a share (0 to 1) of the values lies, interpolated between neighbours; position (n + 1 - a - b) p + a
 * with a = b = 1/2, 0, 1, 1/3 for types 5 to 8, held within the values as R does.
 * Refuses no values and a share outside 0 to 1. Source: Hyndman & Fan 1996, Am Stat 50:361-365 (from memory).
 */
export function quantile(
  values: readonly (number | null)[],
  share: number,
  { type = 7 }: { readonly type?: QuantileType } = {},
): Result<number> {
  const sorted = ascending(presentValues(values));
  const reasons = [];
  if (sorted.length < 1) reasons.push(tooFew(say`values`, 1, 0));
  if (!(share >= 0 && share <= 1)) reasons.push(outOfRange(say`the share`, 0, 1, share));
  if (reasons.length > 0) return refuse(...reasons);

  const offset = { 5: 1 / 2, 6: 0, 7: 1, 8: 1 / 3 }[type];
  const wanted = (sorted.length + 1 - 2 * offset) * share + offset;
  // A position that misses a whole number by rounding alone is that number.
  const nearest = Math.round(wanted);
  const position = Math.abs(wanted - nearest) < 4 * Number.EPSILON * sorted.length ? nearest : wanted;
  const lower = Math.min(Math.max(Math.floor(position), 1), sorted.length);
  const upper = Math.min(Math.max(Math.ceil(position), 1), sorted.length);
  const [low, high] = [sorted[lower - 1]!, sorted[upper - 1]!];
  return ok(low + (position - lower) * (high - low));
}
