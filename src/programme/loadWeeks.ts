import { groupBy } from "../analyses/groupBy";
import { actionCounts } from "../engine/load/actionCounts";
import { dayTotals } from "../engine/load/dayTotals";
import { sessionLoad } from "../engine/load/sessionLoad";
import { weekSummary } from "../engine/load/weekSummary";
import { weekToWeekChange } from "../engine/load/weekToWeekChange";
import { valueOr } from "../engine/result";
import { dayNumber, isoDay, mondayOf } from "../reading/days";
import type { DiaryEntry } from "../store/diary";

export const exposures = ["throws", "jumps", "sprints", "deliveries"] as const;
export type Exposure = (typeof exposures)[number];

/** A week of one athlete. Loads are rating x minutes, in arbitrary units. */
export type LoadWeek = {
  readonly athlete: string;
  /** ISO day of its Monday. */
  readonly monday: string;
  readonly sessions: number;
  readonly attended: number;
  /** Sessions attended without rating or minutes. */
  readonly unrated: number;
  readonly total: number | null;
  readonly monotony: number | null;
  readonly strain: number | null;
  /** Percent of the week before; null where that is not known or nothing. */
  readonly change: number | null;
  readonly counts: Readonly<Record<Exposure, number | null>>;
};

/**
 * The weeks (Monday to Sunday) of every athlete in the diary, from their first entry to their last, in order of athletes
 * and time. A day without an entry is a rest day; a day with an unrated session has no load, and its week no monotony.
 * A week without any entry is not reported: its total is null, not 0.
 */
export function loadWeeks(diary: readonly DiaryEntry[]): LoadWeek[] {
  return [...groupBy(diary, ({ athlete }) => athlete)].flatMap(([athlete, entries]) => weeksOf(athlete, entries));
}

function weeksOf(athlete: string, entries: readonly DiaryEntry[]): LoadWeek[] {
  const byMonday = groupBy(entries, ({ date }) => dayNumber(mondayOf(date)));
  const mondays = [...byMonday.keys()];
  const [first, last] = [Math.min(...mondays), Math.max(...mondays)];
  const weeks: LoadWeek[] = [];
  for (let monday = first; monday <= last; monday += 7) {
    weeks.push(weekOf(athlete, monday, byMonday.get(monday) ?? [], weeks.at(-1)?.total ?? null));
  }
  return weeks;
}

function weekOf(athlete: string, monday: number, own: readonly DiaryEntry[], before: number | null): LoadWeek {
  const there = own.filter(({ attended }) => attended === "yes");
  const loads = there.map((entry) => ({ day: dayNumber(entry.date), load: loadOf(entry) }));
  const span = { firstDay: monday, lastDay: monday + 6, unreported: "rest" } as const;
  const days = valueOr(dayTotals(loads, span), []);
  const summary = own.length === 0 ? null : valueOr(weekSummary(days), null);
  const total = summary?.total ?? null;
  return {
    athlete,
    monday: isoDay(monday),
    sessions: own.length,
    attended: there.length,
    unrated: loads.filter(({ load }) => load === null).length,
    total,
    monotony: summary?.monotony ?? null,
    strain: summary?.strain ?? null,
    change: total === null || before === null ? null : valueOr(weekToWeekChange(before, total), null),
    counts: Object.fromEntries(exposures.map((kind) => [kind, countOf(there, kind)])) as Record<
      Exposure,
      number | null
    >,
  };
}

const loadOf = ({ rating, minutes }: DiaryEntry): number | null =>
  rating === null || minutes === null ? null : valueOr(sessionLoad(rating, minutes), null);

/** Null where nobody counted. */
function countOf(entries: readonly DiaryEntry[], kind: Exposure): number | null {
  const counted = entries.map((entry) => entry[kind]);
  return counted.every((count) => count === null) ? null : (valueOr(actionCounts(counted), null)?.total ?? null);
}
