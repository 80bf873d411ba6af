import { overdueRetest } from "../engine/flags/overdueRetest";
import { dayNumber } from "../reading/days";
import { seriesName } from "../reading/measures";
import type { BatteryTest } from "../store/battery";
import type { DiaryEntry } from "../store/diary";
import type { KeptResult } from "../store/keptResults";
import { nameKey } from "../store/sameName";
import type { SquadMember } from "../store/squad";

/** Where in the cycle the squad is. */
export type Stage = "setUp" | "test" | "understand" | "plan" | "deliver" | "review";

export type CycleState = {
  readonly stage: Stage;
  /** Tests whose retest is due, with the number of athletes concerned. */
  readonly overdue: readonly { readonly series: string; readonly athletes: number; readonly never: boolean }[];
  /** Days since the last diary entry; null where there is no diary or no plan to keep one for. */
  readonly daysWithoutDiary: number | null;
  /** Days until the planned block ends, negative once it has; null without a plan. */
  readonly daysOfBlockLeft: number | null;
};

export type WorkbookFacts = {
  readonly squad: readonly SquadMember[];
  readonly battery: readonly BatteryTest[];
  readonly kept: readonly KeptResult[];
  readonly diary: readonly DiaryEntry[];
  readonly hasPriorities: boolean;
  /** First ISO day of the planned block and its weeks; null without a plan. */
  readonly block: { readonly start: string; readonly weeks: number } | null;
};

/** @param today ISO day. */
export function cycleState(facts: WorkbookFacts, today: string): CycleState {
  const now = dayNumber(today);
  const { block, diary } = facts;
  const daysOfBlockLeft = block ? dayNumber(block.start) + 7 * block.weeks - now : null;
  const lastEntry = Math.max(...diary.map(({ date }) => dayNumber(date)));
  return {
    stage: stageOf(facts, daysOfBlockLeft),
    overdue: overdueTests(facts, now),
    daysWithoutDiary: block && diary.length > 0 ? now - lastEntry : null,
    daysOfBlockLeft,
  };
}

function stageOf({ squad, battery, kept, hasPriorities, block }: WorkbookFacts, daysLeft: number | null): Stage {
  if (squad.length === 0 || battery.length === 0) return "setUp";
  if (kept.length === 0) return "test";
  if (block && daysLeft !== null) {
    if (daysLeft > 0) return "deliver";
    const end = dayNumber(block.start) + 7 * block.weeks;
    return kept.some(({ date }) => dayNumber(date) >= end - 7) ? "review" : "test";
  }
  return hasPriorities ? "plan" : "understand";
}

/** Per test of the battery, how many of the squad have no result or one older than its interval. */
function overdueTests({ squad, battery, kept }: WorkbookFacts, now: number): CycleState["overdue"] {
  const latest = new Map<string, number>();
  for (const { athlete, test, measure, date } of kept) {
    const key = keyOf(athlete, seriesName(test, measure));
    latest.set(key, Math.max(latest.get(key) ?? Number.NEGATIVE_INFINITY, dayNumber(date)));
  }
  return battery.flatMap(({ test, measure, retestAfterWeeks }) => {
    if (retestAfterWeeks === null) return [];
    const series = seriesName(test, measure);
    const flags = squad.flatMap(({ athlete }) => {
      const day = latest.get(keyOf(athlete, series)) ?? null;
      const flag = overdueRetest(day, now, 7 * retestAfterWeeks);
      return flag && flag.code !== "resultInFuture" ? [flag] : [];
    });
    const never = flags.every(({ code }) => code === "neverTested");
    // A test nobody has ever done is not overdue: it was never begun.
    return flags.length === 0 || (never && flags.length === squad.length)
      ? []
      : [{ series, athletes: flags.length, never }];
  });
}

const keyOf = (athlete: string, series: string): string => `${nameKey(athlete)}|${nameKey(series)}`;
