import { say } from "../language/say";
import type { TestResult } from "../reading/testResult";
import type { Used } from "./analysis";
import { groupBy } from "./groupBy";

/** The days of the results, each once, the earliest first. */
export const daysOf = (results: readonly TestResult[]): string[] =>
  [...new Set(results.flatMap(({ date }) => (date === null ? [] : [date])))].sort();

/** Each athlete's results of their own latest day. Where an athlete has none with a day, all their results. */
export function ofLatestDays(results: readonly TestResult[]): TestResult[] {
  return [...groupBy(results, ({ athlete }) => athlete).values()].flatMap((own) => {
    const latest = daysOf(own).at(-1) ?? null;
    return own.filter(({ date }) => date === latest);
  });
}

/** What an answer from the latest days alone says it used; undefined where there was one day, so that all was used. */
export const usedOfLatestDays = (results: readonly TestResult[]): Used | undefined => {
  if (daysOf(results).length < 2) return undefined;
  const latest = ofLatestDays(results);
  return { ...countOf(latest), what: say`of ${results.length} results, those of each athlete's latest day` };
};

/** Of how many athletes how many results there are. */
export const countOf = (results: readonly TestResult[]): Pick<Used, "athletes" | "count"> => ({
  athletes: new Set(results.map(({ athlete }) => athlete)).size,
  count: results.length,
});

/** A sentence for an answer from the latest days alone, where there were earlier ones; else null. */
export const latestDaysNote = (results: readonly TestResult[]): string | null =>
  daysOf(results).length > 1 ? say`Of several days, each athlete's latest was used.` : null;
