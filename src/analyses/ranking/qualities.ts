import { zScores } from "../../engine/standing/zScores";
import type { Direction } from "../../engine/trials/reduction";
import { inSentence, say } from "../../language/say";
import { seriesName } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import type { Background } from "../../store/background";
import { wordingKey } from "../../store/sameName";
import { athleteScores } from "../athleteScores";
import { groupBy } from "../groupBy";
import { areRepeats } from "../series";
import { factsOf, type TestFacts } from "../testFacts";
import type { RankingSettings } from "./ranking";

/** A test as the ranking uses it: one score per athlete, `null` where there is none. */
export type RankedTest = {
  readonly test: string;
  readonly quality: string;
  readonly direction: Direction;
  /** In the order of the athletes. */
  readonly scores: readonly (number | null)[];
};

export type RankedQuality = { readonly quality: string; readonly tests: readonly RankedTest[] };

export type Qualities = {
  readonly qualities: readonly RankedQuality[];
  /** Tests that could not be used, each with the reason. */
  readonly unused: readonly { readonly test: string; readonly why: string }[];
};

/**
 * The qualities of the results. Where the battery names a quality for at least one of the tests, those without one are
 * left out; where it names none, each test is a quality of its own, with all its measures.
 */
export function qualitiesOf(
  results: readonly TestResult[],
  athletes: readonly string[],
  settings: RankingSettings,
  background: Background,
): Qualities {
  const isRepeat = areRepeats(results);
  const series = [...groupBy(results, ({ test, measure }) => seriesName(test, measure))]
    .map(([test, own]) => ({ test, own, facts: factsOf(own[0]!, settings, background) }))
    .sort(inOrderOf(background));
  const isSetUp = series.some(({ facts }) => facts.quality !== null);
  const unused: { test: string; why: string }[] = [];
  const ranked = series.flatMap(({ test, own, facts }): RankedTest[] => {
    const leaveOut = (why: string) => {
      unused.push({ test, why });
      return [];
    };
    if (!isRepeat(own[0]!)) return leaveOut(say`it needs a formula before athletes can be compared`);
    if (isSetUp && facts.quality === null) return leaveOut(say`the battery names no quality for it`);
    const byAthlete = new Map(athleteScores(own, facts, settings).map(({ athlete, score }) => [athlete, score]));
    const scores = athletes.map((athlete) => byAthlete.get(athlete) ?? null);
    const comparable = zScores(scores, facts);
    if (!comparable.ok) return leaveOut(asReason(comparable.reasons[0]!.message));
    return [{ test, quality: (facts.quality ?? own[0]!.test) || say`All results`, direction: facts.direction, scores }];
  });
  const byQuality = groupBy(ranked, ({ quality }) => wordingKey(quality));
  return {
    qualities: [...byQuality.values()].map((tests) => ({ quality: tests[0]!.quality.trim(), tests })),
    unused,
  };
}

type Series = { readonly test: string; readonly facts: TestFacts };

/** In the order of the battery, then by name: the order of the columns must not hang on that of the results. */
const inOrderOf = ({ battery }: Background) => {
  const placeOf = ({ facts }: Series) => (facts.setUp === null ? battery.length : battery.indexOf(facts.setUp));
  return (a: Series, b: Series): number => placeOf(a) - placeOf(b) || a.test.localeCompare(b.test, "en");
};

/** What an athlete was not tested on: whole qualities by their name, else the tests that lack. */
export function missingOf({ qualities }: Qualities, athlete: number): string[] {
  return qualities.flatMap(({ quality, tests }) => {
    const lacking = tests.filter(({ scores }) => valueAt(scores, athlete) === null);
    return lacking.length === tests.length ? [quality] : lacking.map(({ test }) => test);
  });
}

/** A sentence as it stands behind a colon. */
const asReason = (sentence: string): string => inSentence(sentence).replace(/\.$/, "");

const valueAt = (scores: readonly (number | null)[], index: number): number | null => scores[index] ?? null;
