import { say } from "../language/say";
import { measureOf } from "../reading/measures";
import type { TestResult } from "../reading/testResult";
import { type Side, wordOfSide } from "../reading/vocabulary";

/** What a series is called together with the side it was measured on; both may be unsaid. */
export function sideName(series: string, side: Side | null): string {
  if (series === "") return side === null ? say`All results` : side === "left" ? say`Left side` : say`Right side`;
  return side === null ? series : `${series}, ${wordOfSide(side)}`;
}

/**
 * Whether a result is one of several like ones that may be scored, compared and held against each other. The sets of a
 * strength test are not: each has a load of its own. Nor is what only describes the athlete, such as body mass.
 */
export function areRepeats(results: readonly TestResult[]): (result: TestResult) => boolean {
  const loaded = new Set(results.filter(({ measure }) => measure === "load").map(({ test }) => test));
  return ({ test, measure }) => {
    if (measure === null) return true;
    const { better, derived } = measureOf(measure);
    return better !== null && (derived === true || !loaded.has(test));
  };
}

/** The unit of a row's results where the rows of an answer have different ones; "" where the headings can say it. */
export function unitWhereMixed(results: readonly TestResult[]): (result: TestResult) => string {
  const isMixed = new Set(results.map(({ unit }) => unit)).size > 1;
  return ({ unit }) => (isMixed ? (unit ?? "") : "");
}
