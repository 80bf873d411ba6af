import { measureOf, seriesName } from "../reading/measures";
import type { Reading } from "../reading/readResults";
import type { TestResult } from "../reading/testResult";
import { type Background, testCalled } from "../store/background";
import type { AnyAnalysis } from "./analysis";
import { withBodies } from "./bodies";
import { derivedResults } from "./derivedResults";
import { groupBy } from "./groupBy";
import { areRepeats } from "./series";

/** What an analysis is handed of a reading, and which tests a coach can pick for it. */
export type Series = {
  readonly results: readonly TestResult[];
  /** Their names. */
  readonly tests: readonly string[];
};

/**
 * The series of a reading that an analysis can answer for: the one place that decides it, for pane, batch and `describe`.
 *
 * - An analysis that takes them is handed what formulas make of the results, too. Of all tests at once it gets those
 *   that the battery lists, so that nobody is told of numbers they never asked for.
 * - One test at a time is a series of like results: loads and repetitions of sets, body mass and stature are none.
 * - An analysis of sides is offered what has sides.
 */
export function seriesOf(
  analysis: Pick<AnyAnalysis, "tests" | "takes" | "sides">,
  reading: Pick<Reading, "results" | "bodies">,
  background: Background,
): Series {
  const measured = reading.results;
  const derived = analysis.takes === "measured" ? [] : derivedResults(measured, withBodies(background, reading));
  if (analysis.tests === "all") {
    return named([...measured, ...derived.filter((result) => isInBattery(result, background))]);
  }
  // The numbers of one test side by side, in the order in which the tests stand on the sheet.
  const all = [...groupBy([...measured, ...derived], ({ test }) => test).values()].flat();
  const isRepeat = areRepeats(all);
  const sided = new Set(all.filter(({ side }) => side !== null).map(nameOf));
  return named(all.filter((result) => isRepeat(result) && (analysis.sides !== "both" || sided.has(nameOf(result)))));
}

/** Whether a formula made it: then no cell holds it. */
export const isDerived = ({ measure }: Pick<TestResult, "measure">): boolean =>
  measure !== null && measureOf(measure).derived === true;

export const nameOf = ({ test, measure }: Pick<TestResult, "test" | "measure">): string => seriesName(test, measure);

const named = (results: readonly TestResult[]): Series => ({ results, tests: [...new Set(results.map(nameOf))] });

const isInBattery = ({ test, measure }: TestResult, background: Background): boolean =>
  testCalled(background, test, measure) !== null;
