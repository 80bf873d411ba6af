import { say } from "../../language/say";
import { rounded } from "../caution";
import type { Flag } from "./flag";
import type { PlausibleRange } from "./plausibleRanges";
import { type UnitSlip, unitSlips } from "./unitSlips";

/** How close to the athlete's or squad's usual value a corrected one must come: common practice, no source. */
const likeUsual = 0.15;

/**
 * Flags a value outside the plausible range of its test, and one that only fits the athlete's (or squad's) usual value in
 * another unit, as 165 in a column of kg where 75 is usual. Says which slip of the unit would explain it.
 * `usual` is positive or unknown (`null`); a missing value (`null`) is never flagged.
 *
 * Ranges and closeness: common practice, no source.
 */
export function implausibleValue(
  value: number | null,
  range: PlausibleRange,
  { usual = null }: { readonly usual?: number | null } = {},
): Flag | null {
  if (value === null) return null;
  const { what, unit, low, high } = range;
  const outside = !(value >= low && value <= high);
  const slips = unitSlips[unit].filter(({ factor }) => explains(value * factor, range, usual));
  const slip = outside || usual !== null ? slips[0] : undefined;
  if (slip) return unitSlip(value, range, slip);
  if (!outside) return null;
  return {
    code: "implausibleValue",
    reason: say`${value} ${unit} is outside the ${low} to ${high} ${unit} that a ${what} plausibly takes.`,
    facts: { value, what, unit, low, high },
  };
}

const explains = (corrected: number, { low, high }: PlausibleRange, usual: number | null): boolean =>
  corrected >= low && corrected <= high && (usual === null || Math.abs(corrected / usual - 1) <= likeUsual);

function unitSlip(value: number, { what, unit }: PlausibleRange, { name, words, factor }: UnitSlip): Flag {
  const corrected = value * factor;
  return {
    code: "unitSlip",
    reason: say`${value} is no likely ${what} in ${unit}; typed ${words} it would be ${rounded(corrected)} ${unit}.`,
    facts: { value, what, unit, slip: name, corrected },
  };
}
