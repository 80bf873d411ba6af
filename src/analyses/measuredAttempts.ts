import { implausibleValue } from "../engine/flags/implausibleValue";
import { type PlausibleRange, plausibleRanges } from "../engine/flags/plausibleRanges";
import { inSentence, say } from "../language/say";
import { type MeasureKey, measureKeys, measureOf } from "../reading/measures";
import type { TestResult } from "../reading/testResult";
import { convert, unitOf } from "../reading/units";
import type { Side } from "../reading/vocabulary";
import type { CellRemark } from "./analysis";
import { groupBy } from "./groupBy";

/** The numbers of one attempt that belong together: load and repetitions of a set, the splits of one sprint. */
export type MeasuredAttempt = {
  readonly athlete: string;
  readonly test: string;
  readonly side: Side | null;
  /** Day of the test, ISO; null where nothing says it. */
  readonly date: string | null;
  readonly group: string | null;
  readonly attempt: number;
  /** Each in the unit of its measure (`reading/measures.ts`): kg, ms, cm, s. */
  readonly values: Readonly<Partial<Record<MeasureKey, number>>>;
  readonly cells: Readonly<Partial<Record<MeasureKey, string>>>;
};

/**
 * Results with a measure as attempts, one for each athlete, test, side, day and number of attempt; results without a
 * measure are none of its business. Left out and told: a unit of another quantity, a jump or a body that nobody has or
 * that fits in another unit (0.52 where milliseconds are meant), and a second value of one measure for the same attempt.
 */
export function measuredAttempts(results: readonly TestResult[]): {
  readonly attempts: readonly MeasuredAttempt[];
  readonly leftOut: readonly CellRemark[];
} {
  const leftOut: CellRemark[] = [];
  const attempts = [...groupBy(results.filter(isMeasured), keyOf).values()].flatMap((own): MeasuredAttempt[] => {
    const values: Partial<Record<MeasureKey, number>> = {};
    const cells: Partial<Record<MeasureKey, string>> = {};
    for (const result of [...own].sort(byPlace)) {
      const read = inUnitOfMeasure(result);
      if (typeof read === "string") leftOut.push({ cell: result.cell, why: read });
      else if (result.measure in values) leftOut.push({ cell: result.cell, why: secondValue(result) });
      else {
        values[result.measure] = read;
        cells[result.measure] = result.cell;
      }
    }
    const { athlete, test, side, date, group, attempt } = own[0]!;
    return Object.keys(values).length > 0 ? [{ athlete, test, side, date, group, attempt, values, cells }] : [];
  });
  return { attempts, leftOut };
}

/** The cell that stands for an attempt: that of its first measure, in the order of the measures. */
export const firstCell = ({ cells }: MeasuredAttempt): string =>
  measureKeys.flatMap((measure) => cells[measure] ?? [])[0] ?? "";

/** Those of the latest day among attempts (or results); days that are not known come before all that are. */
export function ofLatestDay<Dated extends { readonly date: string | null }>(attempts: readonly Dated[]): Dated[] {
  const latest = attempts
    .map(({ date }) => date ?? "")
    .sort()
    .at(-1);
  return attempts.filter(({ date }) => (date ?? "") === latest);
}

type Measured = TestResult & { readonly measure: MeasureKey };

const isMeasured = (result: TestResult): result is Measured => result.measure !== null;

const keyOf = ({ athlete, test, side, date, attempt }: TestResult): string =>
  [athlete, test, side, date, attempt].join("|");

/** Sheet order, so that which of two values counts does not hang on the order in which they were read. */
const byPlace = (a: TestResult, b: TestResult): number =>
  a.cell.localeCompare(b.cell, "en", { numeric: true }) || a.value - b.value;

/** The value in the unit of its measure, or why there is none. */
function inUnitOfMeasure({ measure, value, unit }: Measured): number | string {
  const { label, unit: wanted } = measureOf(measure);
  const converted = wanted === null ? value : inUnit(value, unit, wanted);
  if (converted === null) return say`${label} is wanted in ${wanted}; “${unit}” is another kind of unit.`;
  return unlikely(measure, converted) ?? converted;
}

/** A value in another unit; where none was said, it is taken for the one that is wanted. Null where they do not convert. */
export function inUnit(value: number, unit: string | null, wanted: string): number | null {
  if (unit === null || unit === wanted) return value;
  const [from, to] = [unitOf(unit), unitOf(wanted)];
  return from && to ? convert(value, from, to) : null;
}

/** Where one slip would lead a whole list: the plausible range, and the factor from the measure's unit to the range's. */
const ranges: Partial<Record<MeasureKey, { readonly of: PlausibleRange; readonly factor: number }>> = {
  flightTime: { of: plausibleRanges.flightTime, factor: 0.001 },
  contactTime: { of: plausibleRanges.contactTime, factor: 0.001 },
  jumpHeight: { of: plausibleRanges.jumpHeight, factor: 1 },
  bodyMass: { of: plausibleRanges.bodyMass, factor: 1 },
  stature: { of: plausibleRanges.stature, factor: 0.01 },
};

/** Why a value is no likely one, with the unit in which it would be, if any; null where it may be as it stands. */
function unlikely(measure: MeasureKey, value: number): string | null {
  const range = ranges[measure];
  if (!range) return null;
  const { label, unit } = measureOf(measure);
  if (unit === "ms" && implausibleValue(value, range.of) === null) {
    return say`${value} ms is no likely ${inSentence(label)}; in s it would be. Say which unit it is.`;
  }
  return implausibleValue(value * range.factor, range.of)?.reason ?? null;
}

const secondValue = ({ measure, athlete, attempt }: Measured): string =>
  say`A second ${inSentence(measureOf(measure).label)} for ${athlete}'s attempt ${attempt}: give each attempt its own number.`;
