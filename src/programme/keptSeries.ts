import type { CellRemark } from "../analyses/analysis";
import { derivedResults } from "../analyses/derivedResults";
import { groupBy } from "../analyses/groupBy";
import { measuredAttempts } from "../analyses/measuredAttempts";
import { ofLatestDays } from "../analyses/sessions";
import type { TestResult } from "../reading/testResult";
import type { Background } from "../store/background";
import { fromKept, type StandingResult } from "../store/keptResults";
import { squadNames } from "./squadNames";

export type KeptSeries = {
  readonly results: readonly TestResult[];
  /** Results that nobody can have, each with its cell: one of them would make every noise of its test too large. */
  readonly leftOut: readonly CellRemark[];
};

/** Kept results with those that follow from them, such as estimated maxima: all that a battery may name. */
export function keptSeries(kept: readonly StandingResult[], background: Background): KeptSeries {
  const all = fromKept(kept, background);
  const { leftOut } = measuredAttempts(all);
  const impossible = new Set(leftOut.map(({ cell }) => cell));
  const results = all.filter(({ cell }) => !impossible.has(cell));
  return { results: [...results, ...derivedResults(results, background)], leftOut };
}

/** Each athlete's estimated maxima, kg, by test: the best of their latest day. */
export function estimatedMaxima(
  results: readonly TestResult[],
  background: Background,
): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const nameOf = squadNames(background);
  const maxima = new Map<string, Map<string, number>>();
  const estimated = results.filter(({ measure }) => measure === "estimatedMaximum");
  for (const own of groupBy(estimated, ({ test }) => test).values()) {
    for (const { athlete, test, value } of ofLatestDays(own)) {
      const name = nameOf(athlete);
      const ofAthlete = maxima.get(name) ?? new Map<string, number>();
      ofAthlete.set(test, Math.max(ofAthlete.get(test) ?? 0, value));
      maxima.set(name, ofAthlete);
    }
  }
  return maxima;
}
