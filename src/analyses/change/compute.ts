import { groupChange } from "../../engine/change/groupChange";
import { individualChange } from "../../engine/change/individualChange";
import { changeVerdicts } from "../../engine/change/judgeChange";
import { percentChange } from "../../engine/change/percentChange";
import { standardDeviation } from "../../engine/moments";
import { tooFew } from "../../engine/refusals";
import { mixedModel } from "../../engine/reliability/mixedModel";
import { smallestWorthwhileChange } from "../../engine/reliability/smallestWorthwhileChange";
import { ok, type Result, refuse, valueOr } from "../../engine/result";
import { say } from "../../language/say";
import { dayNumber } from "../../reading/days";
import type { TestResult } from "../../reading/testResult";
import type { Background } from "../../store/background";
import type { Answer } from "../analysis";
import { type AthleteScore, athleteScores } from "../athleteScores";
import { groupBy } from "../groupBy";
import { scoreNoise } from "../scoreNoise";
import { countOf, daysOf } from "../sessions";
import { assumedDirection, factsOf, type TestFacts } from "../testFacts";
import type { ChangeRow, ChangeSettings } from "./change";
import * as words from "./words";

const confidence = 0.95;

/** Sessions this close together show the test's noise: little can have changed. Common practice, no source. */
const fortnight = 14;

export type ChangeNoise = {
  /** "comparedSessions": there is no other pair of close sessions than the very ones that are compared. */
  readonly from: "settings" | "sessions" | "comparedSessions" | "trials";
  /** In the unit of the results; null where the settings say it in percent. */
  readonly typicalError: number | null;
  readonly degreesOfFreedom: number | null;
  /** Standard deviation between athletes, its noise taken out where that is known. */
  readonly spread: number | null;
};

/** Each athlete's change between two sessions, beside the noise of the test and the smallest change that matters. */
export function compute(
  results: readonly TestResult[],
  settings: ChangeSettings,
  background: Background,
): Result<Answer<ChangeRow>> {
  const dated = results.filter(({ date }) => date !== null);
  const days = daysOf(dated);
  if (days.length < 2) return refuse(tooFew(say`days with results`, 2, days.length));
  const facts = factsOf(dated[0]!, settings, background);
  const scoresByDay = days.map((day) =>
    athleteScores(
      dated.filter(({ date }) => date === day),
      facts,
      { sides: settings.sides, day: "latest" },
    ),
  );
  const pairs = pairsOf(scoresByDay, settings);
  if (pairs.length === 0) return refuse(tooFew(say`athletes with scores on two days`, 1, 0));
  const noise = noiseOf(scoresByDay, days, pairs, facts, settings);
  const rows = pairs.map((pair) => rowOf(pair, noise, facts, settings)).sort(largestFirst);
  const group = groupChange(
    pairs.map(({ earlier }) => earlier.score),
    pairs.map(({ later }) => later.score),
    { confidence },
  );
  const assumed = assumedDirection(facts);
  const compared = pairs.flatMap(({ earlier, later }) => [...earlier.results, ...later.results]);
  return ok({
    rows,
    summary: words.summary(rows, group.ok ? group.value.change : null, dated[0]!.unit),
    cautions: [...words.cautions(rows, noise), ...(assumed === null ? [] : [assumed])],
    method: words.method(settings, facts, noise),
    ...(compared.length < results.length
      ? { used: { ...countOf(compared), what: say`of ${results.length} results, those of the days compared` } }
      : {}),
    leftOut: [],
  });
}

type Pair = { readonly earlier: AthleteScore; readonly later: AthleteScore };

/** Each athlete's latest session with a score, and the one before it or the first. */
function pairsOf(scoresByDay: readonly (readonly AthleteScore[])[], { from }: ChangeSettings): Pair[] {
  const scored = scoresByDay.flat().filter(({ score }) => score !== null);
  return [...groupBy(scored, ({ athlete }) => athlete).values()].flatMap((own) => {
    const later = own.at(-1);
    const earlier = from === "first" ? own[0] : own.at(-2);
    return earlier && later && earlier !== later ? [{ earlier, later }] : [];
  });
}

/**
 * By the form; else by sessions a fortnight apart or less: the first that are not those compared, since a real change
 * would pass for noise there; only where there are no others by these; else by the trials of all sessions.
 */
function noiseOf(
  scoresByDay: readonly (readonly AthleteScore[])[],
  days: readonly string[],
  pairs: readonly Pair[],
  facts: TestFacts,
  { error, sides }: ChangeSettings,
): ChangeNoise {
  const earlier = pairs.flatMap((pair) => pair.earlier.score ?? []);
  const observed = earlier.length >= 2 ? standardDeviation(earlier) : null;
  if (error > 0) return { from: "settings", typicalError: null, degreesOfFreedom: null, spread: observed };
  const close = days.flatMap((day, index) =>
    index > 0 && daysBetween(days[index - 1]!, day) <= fortnight
      ? [repeatsOf(scoresByDay[index - 1]!, scoresByDay[index]!, pairs)]
      : [],
  );
  const apart = close.find(({ areCompared }) => !areCompared);
  for (const { repeats, areCompared } of apart ? [apart, ...close] : close) {
    const fitted = mixedModel(repeats, { confidence });
    if (fitted.ok) {
      const { typicalError, degreesOfFreedom, varianceBetween } = fitted.value;
      return {
        from: areCompared ? "comparedSessions" : "sessions",
        typicalError: typicalError.value,
        degreesOfFreedom,
        spread: Math.sqrt(varianceBetween),
      };
    }
  }
  const ofTrials = scoreNoise(scoresByDay.flat(), facts, { sides });
  return {
    from: "trials",
    typicalError: ofTrials?.typicalError ?? null,
    degreesOfFreedom: ofTrials?.degreesOfFreedom ?? null,
    spread: observed,
  };
}

type Repeats = { readonly repeats: (number | null)[][]; readonly areCompared: boolean };

/**
 * The scores of two close sessions, without those of athletes whose very change between these two is asked about, such as
 * one who missed the retest; where these are most of them, with all.
 */
function repeatsOf(first: readonly AthleteScore[], second: readonly AthleteScore[], pairs: readonly Pair[]): Repeats {
  const ofSecond = new Set(second);
  const compared = new Set(pairs.filter(({ later }) => ofSecond.has(later)).map(({ earlier }) => earlier));
  const isCompared = (one: AthleteScore) => compared.has(one);
  const laterOf = new Map(second.map((other) => [other.athlete, other.score]));
  const scoresOf = (athletes: readonly AthleteScore[]) =>
    athletes.flatMap(({ athlete, score }) => {
      const later = laterOf.get(athlete) ?? null;
      return score === null || later === null ? [] : [[score, later]];
    });
  const all = scoresOf(first);
  const others = scoresOf(first.filter((one) => !isCompared(one)));
  const areCompared = others.length < all.length / 2;
  return { repeats: areCompared ? all : others, areCompared };
}

const daysBetween = (first: string, second: string): number => dayNumber(second) - dayNumber(first);

function rowOf({ earlier, later }: Pair, noise: ChangeNoise, facts: TestFacts, settings: ChangeSettings): ChangeRow {
  const before = earlier.score!;
  const after = later.score!;
  const typicalError = settings.error > 0 ? (settings.error / 100) * before : noise.typicalError;
  const worthwhile =
    settings.worthwhile > 0
      ? (settings.worthwhile / 100) * before
      : noise.spread === null
        ? null
        : valueOr(smallestWorthwhileChange({ standardDeviation: noise.spread }), null);
  const judged =
    typicalError === null || worthwhile === null
      ? null
      : valueOr(
          individualChange({
            earlier: before,
            later: after,
            typicalError,
            smallestWorthwhileChange: worthwhile,
            direction: facts.direction,
            confidence,
            ...(noise.degreesOfFreedom === null ? {} : { degreesOfFreedom: noise.degreesOfFreedom }),
          }),
          null,
        );
  const inPercent = valueOr(percentChange(before, after), null);
  const isBeyond = judged !== null && Math.abs(after - before) > judged.minimalDetectableChange;
  return {
    athlete: later.athlete,
    group: later.group ?? "",
    earlier: before,
    later: after,
    change: after - before,
    low: judged?.change.low ?? null,
    high: judged?.change.high ?? null,
    better: judged === null ? null : 100 * judged.chances.better,
    worse: judged === null ? null : 100 * judged.chances.worse,
    verdict: judged === null ? words.noVerdict : words.verdict(changeVerdicts[judged.verdict]),
    days: say`${earlier.date} to ${later.date}`,
    clear: isBeyond ? inPercent : null,
    within: isBeyond ? null : inPercent,
    noise: judged === null || inPercent === null ? null : (100 * judged.minimalDetectableChange) / before,
  };
}

const largestFirst = (a: ChangeRow, b: ChangeRow): number => (b.better ?? -1) - (a.better ?? -1);
