import { overdueRetest } from "../engine/flags/overdueRetest";
import { dayNumber } from "../reading/days";
import { seriesName } from "../reading/measures";
import type { BatteryTest } from "../store/battery";
import type { DiaryEntry } from "../store/diary";
import type { KeptResult } from "../store/keptResults";
import { nameKey } from "../store/sameName";
import type { SquadMember } from "../store/squad";

/** Where in the cycle the squad is. */
export type Stage = "setUp" | "test" | "understand" | "plan" | "deliver" | "retest" | "review" | "planNext";

export type CycleState = {
  readonly stage: Stage;
  /** Tests whose retest is due, with the number of athletes concerned. */
  readonly overdue: readonly { readonly series: string; readonly athletes: number; readonly never: boolean }[];
  /** Days of the block since the last diary entry, or since it began; null where no block is under way. */
  readonly daysWithoutDiary: number | null;
  /** Days until the planned block begins; null once it has, and without a plan. */
  readonly daysToBlock: number | null;
  /** Days until the planned block ends, today included, 0 or less once it has; null without a plan. */
  readonly daysOfBlockLeft: number | null;
};

export type WorkbookFacts = {
  readonly squad: readonly SquadMember[];
  readonly battery: readonly BatteryTest[];
  readonly kept: readonly KeptResult[];
  readonly diary: readonly DiaryEntry[];
  readonly hasPriorities: boolean;
  /** Whether the priorities are those that follow from the latest results; counts only once a block has been tested. */
  readonly arePrioritiesNew: boolean;
  /** First and last ISO day of the block that counts now; null without a plan. */
  readonly block: { readonly begins: string; readonly ends: string } | null;
};

/** @param today ISO day. */
export function cycleState(facts: WorkbookFacts, today: string): CycleState {
  const now = dayNumber(today);
  const { block, diary } = facts;
  const begins = block && dayNumber(block.begins);
  const daysOfBlockLeft = block && dayNumber(block.ends) + 1 - now;
  const isUnderWay = begins !== null && begins <= now && daysOfBlockLeft! > 0;
  return {
    stage: stageOf(facts, daysOfBlockLeft),
    overdue: overdueTests(facts, now),
    daysWithoutDiary: isUnderWay ? now - lastDayKept(diary, begins) : null,
    daysToBlock: begins !== null && begins > now ? begins - now : null,
    daysOfBlockLeft,
  };
}

/** Day number of the last entry since the block began; without one, the day before it. */
const lastDayKept = (diary: readonly DiaryEntry[], begins: number): number =>
  diary.reduce((last, { date }) => Math.max(last, dayNumber(date)), begins - 1);

/** Results of a block's last week count as its retest. */
const retestDays = 6;

function stageOf(facts: WorkbookFacts, daysOfBlockLeft: number | null): Stage {
  const { squad, battery, kept, hasPriorities, block } = facts;
  if (squad.length === 0 || battery.length === 0) return "setUp";
  if (kept.length === 0) return "test";
  if (block === null || daysOfBlockLeft === null) return hasPriorities ? "plan" : "understand";
  if (daysOfBlockLeft > 0) return "deliver";
  const from = dayNumber(block.ends) - retestDays;
  if (!kept.some(({ date }) => dayNumber(date) >= from)) return "retest";
  return hasPriorities && facts.arePrioritiesNew ? "planNext" : "review";
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
