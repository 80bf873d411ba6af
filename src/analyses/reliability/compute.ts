import { mean } from "../../engine/moments";
import { tooFew } from "../../engine/refusals";
import { intraclassCorrelation } from "../../engine/reliability/intraclassCorrelation";
import { logarithms } from "../../engine/reliability/logarithms";
import { meanChange } from "../../engine/reliability/meanChange";
import { minimalDetectableChange } from "../../engine/reliability/minimalDetectableChange";
import { mixedModel } from "../../engine/reliability/mixedModel";
import type { RepeatedResults } from "../../engine/reliability/repeatedResults";
import { smallestWorthwhileChange } from "../../engine/reliability/smallestWorthwhileChange";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { say } from "../../language/say";
import { seriesName } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import type { Background } from "../../store/background";
import type { Answer } from "../analysis";
import { groupBy } from "../groupBy";
import { areRepeats, sideName, unitWhereMixed } from "../series";
import { factsOf } from "../testFacts";
import type { ReliabilityChoices, ReliabilityRow, ReliabilitySettings } from "./reliability";
import { repeatsOf } from "./repeatsOf";
import * as words from "./words";

const confidence = 0.95;

/** One row for each test and side: its typical error, the same in percent, and what follows for a retest. */
export function compute(
  results: readonly TestResult[],
  settings: ReliabilitySettings,
  background: Background,
): Result<Answer<ReliabilityRow>> {
  const tests = groupBy(results.filter(areRepeats(results)), ({ test, measure, side }) =>
    sideName(seriesName(test, measure), side),
  );
  if (tests.size === 0) return refuse(tooFew(say`repeated results`, 1, 0));
  const unitOf = unitWhereMixed(results);
  const rows = [...tests].map(([test, own]) => {
    const { direction, reduction } = factsOf(own[0]!, settings, background);
    const choices = { ...settings, direction, reduction };
    const repeats = repeatsOf(own, choices);
    const named = { test, unit: unitOf(own[0]!), athletes: athletesWithRepeats(own, repeats, choices) };
    return rowOf(named, repeats, choices);
  });
  return ok({
    rows,
    summary: words.summary(rows, settings),
    cautions: words.cautions(rows, settings, results),
    method: words.method(settings),
    leftOut: [],
  });
}

/** Each athlete once, however many days they have trials of: between trials every day is a row of its own. */
function athletesWithRepeats(
  own: readonly TestResult[],
  repeats: RepeatedResults,
  { compare }: ReliabilityChoices,
): number {
  if (compare === "sessions") return repeats.filter((row) => row.filter((value) => value !== null).length >= 2).length;
  const sets = [...groupBy(own, ({ athlete, date }) => `${athlete}|${date}`).values()];
  return new Set(sets.filter((set) => set.length >= 2).map(([first]) => first!.athlete)).size;
}

function rowOf(
  named: Pick<ReliabilityRow, "test" | "unit" | "athletes">,
  repeats: RepeatedResults,
  choices: ReliabilityChoices,
): ReliabilityRow {
  const values = repeats.flat().filter((value) => value !== null);
  const columns = repeats[0]?.length ?? 0;
  const row = {
    ...named,
    repeats: columns,
    mean: mean(values),
  };
  const fitted = mixedModel(repeats, { confidence });
  if (!fitted.ok) return { ...row, ...nothing, verdict: words.noAnswer(fitted.reasons) };

  const { typicalError, degreesOfFreedom } = fitted.value;
  const change = valueOr(meanChange(repeats, { earlier: 0, later: columns - 1, confidence }), null)?.change ?? null;
  const correlation =
    valueOr(intraclassCorrelation(repeats, { form: "consistencySingle", confidence }), null)?.correlation ?? null;
  const spread = Math.sqrt(fitted.value.varianceBetween);
  const worthwhile = valueOr(smallestWorthwhileChange({ standardDeviation: spread }), null);
  const detectable =
    choices.compare === "sessions"
      ? valueOr(minimalDetectableChange({ typicalError: typicalError.value, confidence, degreesOfFreedom }), null)
      : null;
  return {
    ...row,
    shift: change?.value ?? null,
    error: typicalError.value,
    errorLow: typicalError.low,
    errorHigh: typicalError.high,
    variation: variationOf(repeats),
    correlation: correlation?.value ?? null,
    correlationLow: correlation?.low ?? null,
    correlationHigh: correlation?.high ?? null,
    worthwhile,
    detectable,
    verdict: words.verdict({ error: typicalError.value, worthwhile, change }, choices),
  };
}

const nothing = {
  shift: null,
  error: null,
  errorLow: null,
  errorHigh: null,
  variation: null,
  correlation: null,
  correlationLow: null,
  correlationHigh: null,
  worthwhile: null,
  detectable: null,
} as const;

/** Typical error in percent, from logarithms, by the same model. */
function variationOf(repeats: RepeatedResults): number | null {
  const logs = logarithms(repeats);
  const fitted = logs.ok ? mixedModel(logs.value, { confidence }) : logs;
  return fitted.ok ? 100 * Math.expm1(fitted.value.typicalError.value) : null;
}
