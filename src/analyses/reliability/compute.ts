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
import type { TestResult } from "../../reading/testResult";
import type { Answer } from "../analysis";
import { groupBy } from "../groupBy";
import type { ReliabilityRow, ReliabilitySettings } from "./reliability";
import { repeatsOf } from "./repeatsOf";
import * as words from "./words";

const confidence = 0.95;

/** One row for each test and side: its typical error, the same in percent, and what follows for a retest. */
export function compute(results: readonly TestResult[], settings: ReliabilitySettings): Result<Answer<ReliabilityRow>> {
  const tests = groupBy(results, ({ test, side }) => words.testName(test, side));
  if (tests.size === 0) return refuse(tooFew("results", 1, 0));
  const rows = [...tests].map(([test, own]) => rowOf(test, repeatsOf(own, settings), settings));
  return ok({
    rows,
    summary: words.summary(rows, settings),
    cautions: words.cautions(rows, settings, results),
    method: words.method(settings),
    leftOut: [],
  });
}

function rowOf(test: string, repeats: RepeatedResults, settings: ReliabilitySettings): ReliabilityRow {
  const values = repeats.flat().filter((value) => value !== null);
  const columns = repeats[0]?.length ?? 0;
  const row = {
    test,
    athletes: repeats.filter((own) => own.filter((value) => value !== null).length >= 2).length,
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
    settings.compare === "sessions"
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
    verdict: words.verdict({ error: typicalError.value, worthwhile, change }, settings),
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
