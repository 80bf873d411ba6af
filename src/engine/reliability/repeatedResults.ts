import { presentValues } from "../presentValues";

/** Athletes (rows) by sessions or trials (columns), one score per cell, missing ones null; equally long rows. */
export type RepeatedResults = readonly (readonly (number | null)[])[];

/** Fewest athletes from whom reliability is estimated at all. */
export const fewestAthletes = 3;

/** The athletes who have every result, in their order. */
export const completeRows = (results: RepeatedResults): number[][] =>
  results.filter((row) => row.every((cell) => cell !== null)).map(presentValues);

/** The athletes who have both of two columns, as [earlier, later]. */
export const completePairs = (
  results: RepeatedResults,
  earlier: number,
  later: number,
): (readonly [number, number])[] =>
  results.flatMap((row) => {
    const [first, second] = completeRows([[row[earlier] ?? null, row[later] ?? null]])[0] ?? [];
    return first === undefined || second === undefined ? [] : [[first, second] as const];
  });

/** The largest size among the values, against which rounding is judged. */
export const largestSize = (rows: readonly (readonly number[])[]): number =>
  rows.reduce((largest, row) => row.reduce((size, value) => Math.max(size, Math.abs(value)), largest), 0);
