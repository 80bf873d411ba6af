import { tooFew } from "../../engine/refusals";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { squadRanks } from "../../engine/standing/squadRanks";
import { loadForRepetitions } from "../../engine/strength/loadForRepetitions";
import { relativeStrength } from "../../engine/strength/relativeStrength";
import { type LoadedBar, roundToPlates } from "../../engine/strength/roundToPlates";
import { say } from "../../language/say";
import type { TestResult } from "../../reading/testResult";
import type { Background } from "../../store/background";
import type { Answer } from "../analysis";
import { bodiesOf } from "../bodies";
import { groupBy } from "../groupBy";
import type { MeasuredAttempt } from "../measuredAttempts";
import { platesFrom } from "./plates";
import { type LiftedSet, liftedSets, ofItsLatestDay, setsThatCount } from "./sets";
import type { StrengthRow, StrengthSettings } from "./strength";
import * as words from "./words";

/** One row for each athlete and lift: the maximum the best set of the latest day lets expect, and the load that follows. */
export function compute(
  results: readonly TestResult[],
  settings: StrengthSettings,
  background: Background,
): Result<Answer<StrengthRow>> {
  const { attempts, sets, leftOut } = liftedSets(results, settings.equation);
  if (sets.length === 0) return refuse(tooFew(say`sets with a load and 1 to 15 repetitions`, 1, 0));
  const bodyOf = bodiesOf(results, background);
  const byRow = groupBy(sets, ({ attempt }) => words.rowName(attempt));
  const rows = [...groupBy(attempts, words.liftName).values()].flatMap((lift) =>
    ranked(
      [...groupBy(lift, words.rowName).entries()].map(([row, [attempt]]) => {
        const best = setsThatCount(byRow.get(row) ?? [])[0] ?? null;
        const mass = bodyOf(attempt!.athlete, best?.attempt.date ?? null).mass;
        return rowOf(attempt!, best, mass, settings);
      }),
    ),
  );
  const latest = [...byRow.values()].flatMap(ofItsLatestDay);
  return ok({
    rows,
    summary: words.summary(rows, settings),
    cautions: words.cautions(rows, settings),
    method: words.method(settings),
    used: { athletes: new Set(latest.map(({ attempt }) => attempt.athlete)).size, ...words.setsUsed(latest, sets) },
    leftOut,
  });
}

function rowOf(
  attempt: MeasuredAttempt,
  best: LiftedSet | null,
  mass: number | null,
  settings: StrengthSettings,
): StrengthRow {
  const row = { athlete: attempt.athlete, lift: words.liftName(attempt), rank: null, row: words.rowName(attempt) };
  if (best === null) return { ...row, ...nothing, verdict: words.noSet };
  const { maximum, lowest, highest, repetitions } = best.estimate;
  const bar = loadedBar(maximum, settings);
  const loaded = valueOr(bar, null);
  const relative = mass === null ? null : valueOr(relativeStrength(maximum, mass), null);
  return {
    ...row,
    load: best.load,
    repetitions,
    maximum,
    lowest,
    highest,
    relative,
    workingLoad: loaded?.load ?? null,
    share: loaded && (100 * loaded.load) / maximum,
    plates: loaded ? words.plates(loaded.perSide) : "",
    verdict: words.verdict(best.estimate, relative, bar),
  };
}

const nothing = {
  load: null,
  repetitions: null,
  maximum: null,
  lowest: null,
  highest: null,
  relative: null,
  workingLoad: null,
  share: null,
  plates: "",
} as const;

function loadedBar(maximum: number, settings: StrengthSettings): Result<LoadedBar> {
  const { equation, repetitions, reserve, bar, smallestPlate, rounding: rule } = settings;
  const wanted = loadForRepetitions(maximum, repetitions, { equation, repetitionsInReserve: reserve });
  if (!wanted.ok) return wanted;
  const plates = platesFrom(smallestPlate).map((weight) => ({ weight, pairs: null }));
  return roundToPlates(wanted.value.load, { bar, plates, rule });
}

/** The rows of one lift with their places, the strongest first, those without an answer last. */
function ranked(rows: readonly StrengthRow[]): StrengthRow[] {
  const places = valueOr(
    squadRanks(
      rows.map(({ maximum }) => maximum),
      { direction: "higher" },
    ),
    null,
  );
  return rows
    .map((row, index) => ({ ...row, rank: places?.[index] ?? null }))
    .sort((a, b) => (a.rank ?? Number.POSITIVE_INFINITY) - (b.rank ?? Number.POSITIVE_INFINITY) || 0);
}
