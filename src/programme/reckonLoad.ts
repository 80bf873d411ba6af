import { percentOfMaximum } from "../engine/strength/percentOfMaximum";
import { type Plates, roundToPlates } from "../engine/strength/roundToPlates";
import { isSameWording } from "../store/sameName";

/** The bar and the plates at hand, kg. */
export type BarAndPlates = { readonly bar: number; readonly plates: readonly Plates[] };

/** The estimated maximum, kg, of a test; undefined where it is not known. */
export const maximumOf = (maxima: ReadonlyMap<string, number>, test: string): number | undefined =>
  [...maxima].find(([one]) => isSameWording(one, test))?.[1];

export type ReckonedLoad = {
  /** Bar and plates together, kg; null where the bar alone is too heavy. */
  readonly load: number | null;
  /** Share of the estimated maximum, percent. */
  readonly percent: number;
};

/**
 * The load for a set: the share of the estimated maximum with which `repetitions + reserve` are possible by the handbook
 * table, rounded down to what the plates can make. Null where the table does not reach so far.
 *
 * @param maximum estimated maximum of this exercise, kg.
 */
export function reckonLoad(
  maximum: number,
  { repetitions, reserve }: { readonly repetitions: number; readonly reserve: number },
  { bar, plates }: BarAndPlates,
): ReckonedLoad | null {
  const share = percentOfMaximum(repetitions + reserve);
  if (!share.ok) return null;
  const { percent } = share.value;
  const loaded = roundToPlates((maximum * percent) / 100, { bar, plates, rule: "down" });
  return { load: loaded.ok ? loaded.value.load : null, percent };
}
