import { say } from "../language/say";
import { seriesName } from "./measures";
import type { Remark } from "./readResults";
import type { TestResult } from "./testResult";

/** Factors by which a result typed in a neighbouring unit is off: cm for mm or m, s for ms. */
const slipFactors = [10, 100, 1000];

/**
 * A value some 10, 100 or 1000 times smaller or larger than the middle of its test is a slip of unit or comma; to use
 * it would spoil the athlete's score, so it is left out and told. A rule of thumb (common practice, no source): the
 * value must be at least four times off, and at least 6 values are needed. Loads and counts vary that much by themselves.
 */
export function leaveOutUnitSlips(results: readonly TestResult[], remarks: Remark[]): TestResult[] {
  const middles = middleOfEachTest(results);
  return results.filter((result) => {
    const middle = middles.get(seriesName(result.test, result.measure));
    if (middle === undefined) return true;
    const factor = slipFactors.find((candidate) =>
      [candidate, 1 / candidate].some((times) => Math.abs(Math.log2((result.value * times) / middle)) < 0.6),
    );
    if (factor === undefined || Math.abs(Math.log2(result.value / middle)) < 2) return true;
    const symbol = result.unit ? ` ${result.unit}` : "";
    const way = result.value < middle ? "small" : "large";
    const why = say`${result.value}${symbol} is about ${factor} times too ${way} for this test: another unit, or a slip of the comma?`;
    remarks.push({ cell: result.cell, code: "unitSlip", leftOut: true, why });
    return false;
  });
}

function middleOfEachTest(results: readonly TestResult[]): Map<string, number> {
  const values = new Map<string, number[]>();
  for (const { test, measure, unit, value } of results) {
    if (measure === "load" || unit === "reps") continue;
    const series = seriesName(test, measure);
    const group = values.get(series);
    if (group) group.push(value);
    else values.set(series, [value]);
  }
  const middles = new Map<string, number>();
  for (const [test, group] of values) {
    group.sort((a, b) => a - b);
    if (group.length >= 6) middles.set(test, group[Math.floor(group.length / 2)]!);
  }
  return middles;
}
