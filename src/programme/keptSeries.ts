import { derivedResults } from "../analyses/derivedResults";
import { groupBy } from "../analyses/groupBy";
import { ofLatestDays } from "../analyses/sessions";
import type { TestResult } from "../reading/testResult";
import { type Background, memberCalled } from "../store/background";
import { fromKept, type StandingResult } from "../store/keptResults";

/** Kept results with those that follow from them, such as estimated maxima: all that a battery may name. */
export function keptSeries(kept: readonly StandingResult[], background: Background): TestResult[] {
  const results = fromKept(kept, background);
  return [...results, ...derivedResults(results, background)];
}

/** Each athlete's estimated maxima, kg, by test: the best of their latest day. */
export function estimatedMaxima(
  results: readonly TestResult[],
  background: Background,
): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const maxima = new Map<string, Map<string, number>>();
  const estimated = results.filter(({ measure }) => measure === "estimatedMaximum");
  for (const own of groupBy(estimated, ({ test }) => test).values()) {
    for (const { athlete, test, value } of ofLatestDays(own)) {
      const name = memberCalled(background, athlete)?.athlete ?? athlete;
      const ofAthlete = maxima.get(name) ?? new Map<string, number>();
      ofAthlete.set(test, Math.max(ofAthlete.get(test) ?? 0, value));
      maxima.set(name, ofAthlete);
    }
  }
  return maxima;
}
