import type { Flag } from "../../engine/flags/flag";
import { implausibleValue } from "../../engine/flags/implausibleValue";
import { type PlausibleRange, plausibleRanges, type Unit } from "../../engine/flags/plausibleRanges";
import { median } from "../../engine/moments";
import { type MeasureKey, seriesName } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import { convert, unitOf } from "../../reading/units";
import { type Background, testCalled } from "../../store/background";
import { groupBy } from "../groupBy";
import { sideName } from "../series";
import type { Finding } from "./finding";
import * as words from "./words";

/** Results outside what their test plausibly gives, by the battery's range, else by what is known of the measure. */
export function implausibleResults(results: readonly TestResult[], background: Background): Finding[] {
  const own = groupBy(results, ({ athlete, test, measure }) => [athlete, test, measure].join("|"));
  return results.flatMap((result): Finding[] => {
    const range = rangeOf(result, background);
    if (range === null) return [];
    const value = inUnitOf(range, result);
    if (value === null) return [];
    const usual = usualOf(result, own.get([result.athlete, result.test, result.measure].join("|"))!, range);
    const flag = implausibleValue(value, range, { usual });
    if (flag === null) return [];
    return [
      {
        kind: flag.code === "unitSlip" ? "unitSlip" : "implausible",
        athlete: result.athlete,
        test: sideName(seriesName(result.test, result.measure), result.side),
        why: words.implausible(result, flag, asMeasured(range, result, flag)),
        cells: [result.cell],
      },
    ];
  });
}

/** Whether anything says what a test plausibly gives. */
export const hasRange = (result: TestResult, background: Background): boolean => rangeOf(result, background) !== null;

const rangeByMeasure: Readonly<Partial<Record<MeasureKey, PlausibleRange>>> = {
  load: plausibleRanges.load,
  repetitions: plausibleRanges.repetitions,
  flightTime: plausibleRanges.flightTime,
  contactTime: plausibleRanges.contactTime,
  jumpHeight: plausibleRanges.jumpHeight,
  time5: plausibleRanges.sprint5,
  time10: plausibleRanges.sprint10,
  time20: plausibleRanges.sprint20,
  time30: plausibleRanges.sprint30,
  time40: plausibleRanges.sprint40,
  bodyMass: plausibleRanges.bodyMass,
  stature: plausibleRanges.stature,
};

/** Units of the reading for those of the ranges; a range in another unit is no question here. */
const symbols: Readonly<Partial<Record<Unit, string>>> = { cm: "cm", m: "m", s: "s", kg: "kg", repetitions: "reps" };

function rangeOf({ test, measure }: TestResult, background: Background): PlausibleRange | null {
  const setUp = testCalled(background, test, measure);
  if (setUp && (setUp.lowest !== null || setUp.highest !== null)) {
    const unit = unitOf(setUp.unit ?? "");
    const wanted = (Object.keys(symbols) as Unit[]).find((one) => {
      const other = unitOf(symbols[one]!)!;
      return unit !== null && (unit.symbol === other.symbol || (unit.quantity === other.quantity && one !== "cm"));
    });
    if (unit !== null && wanted !== undefined) {
      const inRange = (value: number) => convert(value, unit, unitOf(symbols[wanted]!)!) ?? value;
      return {
        what: test,
        unit: wanted,
        low: setUp.lowest === null ? 0 : inRange(setUp.lowest),
        high: setUp.highest === null ? Number.MAX_VALUE : inRange(setUp.highest),
      };
    }
  }
  return measure === null ? null : (rangeByMeasure[measure] ?? null);
}

/** The value in the unit of the range; null where the result has no unit, or one of another kind. */
function inUnitOf(range: PlausibleRange, { value, unit }: Pick<TestResult, "value" | "unit">): number | null {
  const [from, to] = [unitOf(unit ?? ""), unitOf(symbols[range.unit] ?? "")];
  return from && to ? convert(value, from, to) : null;
}

/** The bounds, and what a slip of the unit would make of the value, in the unit of the result. */
function asMeasured({ unit, low, high }: PlausibleRange, result: TestResult, { facts }: Flag): words.Bounds {
  const [from, to] = [unitOf(symbols[unit] ?? ""), unitOf(result.unit ?? "")];
  const shown = (value: number) => (from && to ? (convert(value, from, to) ?? value) : value);
  return {
    low: shown(low),
    high: high === Number.MAX_VALUE ? null : shown(high),
    corrected: typeof facts.corrected === "number" ? shown(facts.corrected) : null,
  };
}

/** The middle of the athlete's other results of the test, where there are two or more; loads differ on purpose. */
function usualOf(result: TestResult, own: readonly TestResult[], range: PlausibleRange): number | null {
  if (result.measure === "load" || result.measure === "repetitions") return null;
  const others = own.flatMap((other) => (other === result ? [] : (inUnitOf(range, other) ?? [])));
  const middle = others.length < 2 ? null : median(others);
  return middle !== null && middle > 0 ? middle : null;
}
