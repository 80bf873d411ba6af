import { presentValues } from "../presentValues";
import { negative } from "../refusals";
import type { Refusal } from "../result";

/**
 * One value per consecutive day, the oldest first. A rest day is 0; a day nobody reported is `null` and never counts as 0.
 */
export type DailyValues = readonly (number | null)[];

/** Reasons why values cannot be loads or counts: one for each that is below zero. */
export const dailyValueRefusals = (days: DailyValues, what: string): Refusal[] =>
  presentValues(days)
    .filter((value) => value < 0)
    .map((value) => negative(what, value));
