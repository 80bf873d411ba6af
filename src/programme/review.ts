import { change } from "../analyses/change/change";
import * as words from "../analyses/change/words";
import { groupBy } from "../analyses/groupBy";
import { type GroupChange, groupChange } from "../engine/change/groupChange";
import { changeVerdicts } from "../engine/change/judgeChange";
import { say } from "../language/say";
import { seriesName } from "../reading/measures";
import type { TestResult } from "../reading/testResult";
import { type Background, memberCalled } from "../store/background";
import type { BatteryTest } from "../store/battery";
import type { DiaryEntry } from "../store/diary";
import { nameKey } from "../store/sameName";
import { type Attendance, attendanceOf } from "./attendance";
import { squadNames } from "./squadNames";

/** What became of an athlete's score in one test over a block. */
export type ReviewedChange = {
  readonly athlete: string;
  readonly role: string | null;
  readonly quality: string | null;
  readonly series: string;
  readonly unit: string | null;
  readonly before: number;
  readonly after: number;
  /** Limits of the true change at 95 %, in the unit; null where the test's noise is not known. */
  readonly low: number | null;
  readonly high: number | null;
  /** Chances that the true change matters, for the better or the worse, in percent. */
  readonly better: number | null;
  readonly worse: number | null;
  /** Positive is better: the change over what noise alone explains 19 times in 20. Beyond 1 is more than noise. */
  readonly overNoise: number | null;
  readonly verdict: string;
  readonly attendance: Attendance | null;
};

/** Beyond noise, for the better. */
export const isBetter = ({ overNoise }: ReviewedChange): boolean => overNoise !== null && overNoise > 1;
/** Beyond noise, for the worse. */
export const isWorse = ({ overNoise }: ReviewedChange): boolean => overNoise !== null && overNoise < -1;

/** What became of a test in the whole squad. */
export type ReviewedGroup = {
  readonly series: string;
  readonly quality: string | null;
  readonly unit: string | null;
  readonly direction: BatteryTest["direction"];
  readonly athletes: number;
  /** Null for fewer than five athletes: then each one is looked at. */
  readonly change: GroupChange | null;
  /** Beyond noise, to the better and to the worse. */
  readonly improved: number;
  readonly declined: number;
};

export type Review = {
  readonly changes: readonly ReviewedChange[];
  readonly groups: readonly ReviewedGroup[];
  /** Whom or what nothing can be said of, and what is missing. */
  readonly missing: readonly string[];
};

export type ReviewedBlock = {
  /** First and last ISO day of the block: baselines lie before it, retests after its first day. */
  readonly begins: string;
  readonly ends: string;
};

/**
 * Each athlete's latest score since the block began against the last one before it, test by test of the battery, judged
 * by the analysis `change` as the coach would have it by itself; beside it how much of the block the athlete was there
 * for. Who has only one of the two days is told, with what is missing; nothing is made up for them.
 *
 * @param results with derived ones among them (`keptSeries`).
 */
export function review(
  results: readonly TestResult[],
  diary: readonly DiaryEntry[],
  background: Background,
  block: ReviewedBlock,
): Review {
  const attendance = attendanceOf(diary, background, { from: block.begins, to: block.ends });
  const nameOf = squadNames(background);
  const named = results.map((result) => ({ ...result, athlete: nameOf(result.athlete) }));
  const bySeries = groupBy(named, ({ test, measure }) => nameKey(seriesName(test, measure)));
  const reviewed = background.battery.map((test) => {
    const own = bySeries.get(nameKey(seriesName(test.test, test.measure))) ?? [];
    return reviewTest(test, own, background, block);
  });
  return {
    changes: reviewed.flatMap(({ changes }) =>
      changes.map((one) => ({ ...one, attendance: attendance.get(nameKey(one.athlete)) ?? null })),
    ),
    groups: reviewed.flatMap(({ group }) => group ?? []),
    missing: [...reviewed.flatMap(({ missing }) => missing), ...whoLacksTests(named, background, block)],
  };
}

type ReviewedTest = {
  readonly changes: readonly Omit<ReviewedChange, "attendance">[];
  readonly group: ReviewedGroup | null;
  readonly missing: readonly string[];
};

function reviewTest(
  test: BatteryTest,
  own: readonly TestResult[],
  background: Background,
  { begins }: ReviewedBlock,
): ReviewedTest {
  const series = seriesName(test.test, test.measure);
  const nothing = (why: string): ReviewedTest => ({ changes: [], group: null, missing: [`${series}: ${why}`] });
  const dated = own.filter(({ date }) => date !== null);
  if (dated.length === 0) return nothing(say`never tested.`);
  if (dated.every(({ date }) => date! < begins)) return nothing(say`not tested again since the block began.`);
  if (dated.every(({ date }) => date! >= begins)) return nothing(say`no result from before the block to compare with.`);
  const answer = change.compute(withLatestSince(dated, begins), change.settings.parse({}), background);
  if (!answer.ok) return nothing(answer.reasons.map(({ message }) => message).join(" "));
  const rows = answer.value.rows.filter(({ days }) => {
    const [earlier, later] = days.match(/\d{4}-\d{2}-\d{2}/g)!;
    return earlier! < begins && later! >= begins;
  });
  if (rows.length === 0) return nothing(say`no athlete has results both before the block and since.`);
  const towards = test.direction === "higher" ? 1 : -1;
  const improving = [changeVerdicts.clearImprovement, changeVerdicts.improvementBeyondNoise].map(words.verdict);
  const declining = [changeVerdicts.clearDecline, changeVerdicts.declineBeyondNoise].map(words.verdict);
  const group = groupChange(
    rows.map(({ earlier }) => earlier),
    rows.map(({ later }) => later),
    { confidence: 0.95 },
  );
  return {
    changes: rows.map(({ athlete, earlier, later, low, high, better, worse, verdict }) => ({
      ...{ athlete, role: memberCalled(background, athlete)?.role ?? null, quality: test.quality, series },
      ...{ unit: test.unit ?? dated[0]!.unit, before: earlier!, after: later!, low, high, better, worse, verdict },
      overNoise:
        low === null || high === null || high === low ? null : (towards * 2 * (later! - earlier!)) / (high - low),
    })),
    group: {
      ...{ series, quality: test.quality, unit: test.unit ?? dated[0]!.unit, direction: test.direction },
      athletes: rows.length,
      change: group.ok ? group.value : null,
      improved: rows.filter(({ verdict }) => improving.includes(verdict)).length,
      declined: rows.filter(({ verdict }) => declining.includes(verdict)).length,
    },
    missing: [],
  };
}

/** Of the days since the block began each athlete's latest alone, so that it is held against the last one before. */
function withLatestSince(dated: readonly TestResult[], begins: string): TestResult[] {
  const latest = new Map<string, string>();
  for (const { athlete, date } of dated) if (date! > (latest.get(athlete) ?? "")) latest.set(athlete, date!);
  return dated.filter(({ athlete, date }) => date! < begins || date === latest.get(athlete));
}

/** Athletes of the squad without any result before the block, or since. */
function whoLacksTests(
  results: readonly TestResult[],
  { squad }: Background,
  { begins }: ReviewedBlock,
): readonly string[] {
  const byAthlete = groupBy(
    results.filter(({ date }) => date !== null),
    ({ athlete }) => nameKey(athlete),
  );
  return squad.flatMap(({ athlete }) => {
    const own = byAthlete.get(nameKey(athlete)) ?? [];
    const before = own.some(({ date }) => date! < begins);
    const since = own.some(({ date }) => date! >= begins);
    if (before && since) return [];
    if (!before && !since) return [say`${athlete}: never tested.`];
    return [
      before
        ? say`${athlete}: not tested again since the block began, so no change can be told.`
        : say`${athlete}: no tests from before the block, so there is nothing to compare with.`,
    ];
  });
}
