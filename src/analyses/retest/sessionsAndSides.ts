import { noiseLimit } from "../../engine/asymmetry/noiseLimit";
import { percentDifference } from "../../engine/asymmetry/percentDifference";
import { directionFlip } from "../../engine/flags/directionFlip";
import { overdueRetest } from "../../engine/flags/overdueRetest";
import { sideMissing } from "../../engine/flags/sideMissing";
import { squadOutliers } from "../../engine/flags/squadOutliers";
import { trialSpread } from "../../engine/flags/trialSpread";
import { mean } from "../../engine/moments";
import type { Noise } from "../../engine/reliability/pooledNoise";
import { dayNumber } from "../../reading/days";
import { seriesName } from "../../reading/measures";
import type { TestResult } from "../../reading/testResult";
import { groupBy } from "../groupBy";
import { noiseOfTrials, trialSets } from "../scoreNoise";
import { sideName } from "../series";
import { daysOf } from "../sessions";
import type { TestFacts } from "../testFacts";
import { trialScore } from "../trialScore";
import type { Finding } from "./finding";
import * as words from "./words";

const confidence = 0.95;

/** Noise from fewer degrees of freedom is too rough to hold anybody's trials against: common practice, no source. */
const fewestDegreesOfFreedom = 10;

/** The trials' noise of a series from all its sets; null where it is not known well enough. */
export function noiseOfSeries(results: readonly TestResult[]): Noise | null {
  const noise = noiseOfTrials(results);
  return noise !== null && noise.degreesOfFreedom >= fewestDegreesOfFreedom ? noise : null;
}

/**
 * Sets of trials that lie further apart than `times` what the noise of the series' other sets explains. The others' noise,
 * since one wild trial among few would hide behind the noise it makes itself.
 */
export function wideSets(results: readonly TestResult[], noise: Noise, times: number): Finding[] {
  const sets = trialSets(results).map((set) => [...set].sort((a, b) => a.attempt - b.attempt));
  const judge = (set: readonly TestResult[], { logStandardDeviation }: Noise) =>
    trialSpread(
      set.map(({ value }) => value),
      times * logStandardDeviation * mean(set.map(({ value }) => value)),
    );
  // Only a set that is wide for all of them together, or nearly so, needs the others' noise.
  const half: Noise = { ...noise, logStandardDeviation: noise.logStandardDeviation / 2 };
  return sets.flatMap((set): Finding[] => {
    if (judge(set, half) === null) return [];
    const others = noiseOfSeries(sets.filter((other) => other !== set).flat());
    const flag = others === null ? null : judge(set, others);
    if (flag === null) return [];
    const odd = flag.facts.oddTrial === undefined ? undefined : set[Number(flag.facts.oddTrial) - 1];
    return [
      {
        kind: "spread",
        ...named(set[0]!),
        why: words.spread(flag, odd, set[0]!),
        cells: (odd ? [odd] : set).map(({ cell }) => cell),
      },
    ];
  });
}

/** Athletes whose score of a side lies far from the squad's; each on their latest day. */
export function outliers(latest: readonly TestResult[], facts: TestFacts): Finding[] {
  return [...groupBy(latest, ({ side }) => side).values()].flatMap((ofSide) => {
    const byAthlete = [...groupBy(ofSide, ({ athlete }) => athlete).values()];
    const scores = byAthlete.map((own) => scoreOf(own, facts));
    return squadOutliers(scores).flatMap((flag, index): Finding[] => {
      const own = byAthlete[index]!;
      if (flag === null) return [];
      const cells = own.filter(({ value }) => value === scores[index]).map(({ cell }) => cell);
      const all = own.map(({ cell }) => cell);
      return [
        {
          kind: "outlier",
          ...named(own[0]!),
          why: words.outlier(flag, own[0]!),
          cells: cells.length > 0 ? cells.slice(0, 1) : all,
        },
      ];
    });
  });
}

/** Athletes with one side alone, where the others have two. */
export function missingSides(latest: readonly TestResult[], facts: TestFacts): Finding[] {
  const sided = latest.filter(({ side }) => side !== null);
  if (new Set(sided.map(({ side }) => side)).size < 2) return [];
  return [...groupBy(sided, ({ athlete }) => athlete).values()].flatMap((own): Finding[] => {
    const flag = sideMissing(...sidesOf(own, facts));
    if (flag === null) return [];
    const { athlete, test } = named({ ...own[0]!, side: flag.facts.side === "left" ? "left" : "right" });
    return [{ kind: "sideMissing", athlete, test, why: words.sideMissing(flag), cells: own.map(({ cell }) => cell) }];
  });
}

/** Athletes whose larger side changed from one day to the next, beyond the noise both times: left and right swapped? */
export function swappedSides(results: readonly TestResult[], facts: TestFacts, noise: Noise): Finding[] {
  const sided = results.filter(({ side, date }) => side !== null && date !== null);
  return [...groupBy(sided, ({ athlete }) => athlete).values()].flatMap((own) => {
    const sessions = daysOf(own).map((day) => differenceOn(own, day, facts, noise));
    return sessions.slice(1).flatMap((now, index): Finding[] => {
      const before = sessions[index]!;
      if (now.difference === null || before.difference === null) return [];
      const flag = directionFlip(before.difference, now.difference, { noise: Math.max(before.noise, now.noise) });
      if (flag?.facts.beyondNoise !== "yes") return [];
      const { athlete, test } = named({ ...own[0]!, side: null });
      const why = words.sidesSwapped(before, now);
      return [{ kind: "sidesSwapped", athlete, test, why, cells: now.cells }];
    });
  });
}

export type SideDifference = {
  readonly day: string;
  /** Percent of the larger side, plus for the right. */
  readonly difference: number | null;
  readonly noise: number;
  readonly cells: readonly string[];
};

function differenceOn(own: readonly TestResult[], day: string, facts: TestFacts, noise: Noise): SideDifference {
  const session = own.filter(({ date }) => date === day);
  const [left, right] = sidesOf(session, facts);
  const count = (wanted: string) => session.filter(({ side }) => side === wanted).length;
  const limit = noiseLimit({
    noise,
    leftCount: count("left"),
    rightCount: count("right"),
    reduction: facts.reduction,
    confidence,
  });
  const isKnown = left !== null && right !== null && left > 0 && right > 0 && limit.ok;
  return {
    day,
    difference: isKnown ? percentDifference(left, right) : null,
    noise: limit.ok ? limit.value.percent : 0,
    cells: session.map(({ cell }) => cell),
  };
}

/** A retest that is due, or a last result that is dated ahead of today. */
export function due(results: readonly TestResult[], today: string, weeks: number): Finding[] {
  return [...groupBy(results, ({ athlete }) => athlete).values()].flatMap((own): Finding[] => {
    const last = daysOf(own).at(-1);
    if (last === undefined) return [];
    const flag = overdueRetest(dayNumber(last), dayNumber(today), 7 * weeks);
    if (flag === null) return [];
    const isAhead = flag.code === "resultInFuture";
    const cells = own.filter(({ date }) => date === last).map(({ cell }) => cell);
    return [
      {
        kind: isAhead ? "inFuture" : "overdue",
        ...named({ ...own[0]!, side: null }),
        why: isAhead ? words.inFuture(last) : words.overdue(last, weeks),
        cells: isAhead ? cells : [],
      },
    ];
  });
}

const named = ({ athlete, test, measure, side }: TestResult): Pick<Finding, "athlete" | "test"> => ({
  athlete,
  test: sideName(seriesName(test, measure), side),
});

const scoreOf = (trials: readonly TestResult[], facts: TestFacts): number | null =>
  trialScore(
    trials.map(({ value }) => value),
    facts,
  );

const sidesOf = (session: readonly TestResult[], facts: TestFacts): [number | null, number | null] => [
  scoreOf(
    session.filter(({ side }) => side === "left"),
    facts,
  ),
  scoreOf(
    session.filter(({ side }) => side === "right"),
    facts,
  ),
];
