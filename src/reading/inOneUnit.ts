import { say } from "../language/say";
import { measureOf, seriesName } from "./measures";
import type { Remark } from "./readResults";
import type { TestResult } from "./testResult";
import { timeUnit } from "./timeUnit";
import { convert, unitOf } from "./units";

/**
 * All results of a series in one unit: that of the measure, else the one most of them are in. A result without a unit
 * takes it where there is no doubt; one in a unit of another kind, or without one where there are several, is left out
 * and told.
 */
export function inOneUnit(results: readonly TestResult[], remarks: Remark[]): TestResult[] {
  const units = unitsOfSeries(results);
  return results.flatMap((result) => {
    const { unit, value } = result;
    const series = units.get(seriesOf(result))!;
    const own = unit ?? series.implied;
    if (own === series.wanted || series.wanted === null) return [{ ...result, unit: own }];
    const leaveOut = (why: string) => {
      remarks.push({ cell: result.cell, code: "unit", leftOut: true, why });
      return [];
    };
    if (own === null) {
      return series.isMixed
        ? leaveOut(say`No unit is given, and this test has results in ${series.given.join(" and ")}.`)
        : [result];
    }
    const converted = convert(value, unitOf(own)!, unitOf(series.wanted)!);
    if (converted === null) return leaveOut(say`${value} ${own} cannot be given in ${series.wanted}, as this test is.`);
    return [{ ...result, value: Number(converted.toPrecision(12)), unit: series.wanted }];
  });
}

type UnitsOfSeries = {
  /** Unit in which the series is given on; null where nothing says one. */
  readonly wanted: string | null;
  /** Unit of those without one; null where it is in doubt. */
  readonly implied: string | null;
  readonly isMixed: boolean;
  readonly given: readonly string[];
};

const seriesOf = ({ test, measure }: TestResult): string => seriesName(test, measure);

function unitsOfSeries(results: readonly TestResult[]): Map<string, UnitsOfSeries> {
  const bySeries = new Map<string, TestResult[]>();
  for (const result of results) {
    const own = bySeries.get(seriesOf(result));
    if (own) own.push(result);
    else bySeries.set(seriesOf(result), [result]);
  }
  return new Map([...bySeries].map(([name, own]) => [name, unitsAmong(own)]));
}

function unitsAmong(results: readonly TestResult[]): UnitsOfSeries {
  const counts = new Map<string, number>();
  for (const { unit } of results) if (unit !== null) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  const given = [...counts].sort((a, b) => b[1] - a[1]).map(([unit]) => unit);
  const { measure } = results[0]!;
  const ofMeasure = measure === null ? null : measureOf(measure).unit;
  const implied = given.length === 0 ? impliedBy(ofMeasure, results) : given.length === 1 ? given[0]! : null;
  return { wanted: ofMeasure ?? given[0] ?? null, implied, isMixed: given.length > 1, given };
}

/** Counts have one unit; times tell theirs by their size. */
function impliedBy(unit: string | null, results: readonly TestResult[]): string | null {
  const quantity = unitOf(unit ?? "")?.quantity;
  if (quantity === "count") return unit;
  if (quantity !== "time") return null;
  const values = results.map(({ value }) => value).sort((a, b) => a - b);
  return timeUnit(values[Math.floor(values.length / 2)]!)?.symbol ?? null;
}
