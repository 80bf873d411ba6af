import { placings } from "./placing";

/**
 * Ranks from 1 for the smallest value; equal values share the mean of their ranks, the form statistics use.
 * Source: textbook; same as R rank(ties.method = "average").
 */
export const averageRanks = (values: readonly number[]): number[] =>
  placings(values).map(({ below, equal }) => below + (equal + 1) / 2);
