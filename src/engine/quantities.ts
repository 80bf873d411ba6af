import { isMeasurement } from "./presentValues";
import { negative, notFinite, notPositive, outOfRange } from "./refusals";
import type { Refusal } from "./result";

/** Reasons why named quantities cannot be used; empty when all of them can. NaN and Infinity are refused like any other slip. */

/** Every quantity must be a number above zero. */
export const positiveRefusals = (quantities: Readonly<Record<string, number>>): Refusal[] =>
  Object.entries(quantities).flatMap(([what, value]) => {
    if (!isMeasurement(value)) return [notFinite(what)];
    return value > 0 ? [] : [notPositive(what, value)];
  });

/** Every quantity must be zero or above. */
export const negativeRefusals = (quantities: Readonly<Record<string, number>>): Refusal[] =>
  Object.entries(quantities).flatMap(([what, value]) => {
    if (!isMeasurement(value)) return [notFinite(what)];
    return value >= 0 ? [] : [negative(what, value)];
  });

/** The quantity must lie from `low` to `high`, both included. */
export function rangeRefusals(what: string, low: number, high: number, value: number): Refusal[] {
  if (!isMeasurement(value)) return [notFinite(what)];
  return value >= low && value <= high ? [] : [outOfRange(what, low, high, value)];
}
