import { say } from "../../language/say";
import { negativeRefusals, rangeRefusals } from "../quantities";
import { ok, type Refusal, type Result, refuse } from "../result";
import type { DailyValues } from "./dailyValues";

/** A diary entry: a serial day number and the load, `null` when the session took place but was not rated. */
export type DiaryEntry = { readonly day: number; readonly load: number | null };

const longestDiary = 3660;

/**
 * Load of each day from `firstDay` to `lastDay`: the sum of its sessions. A day with an unrated session has no total (`null`).
 * A day without any entry was not reported (`null`), unless `unreported` is "rest": then it counts as a rest day, 0.
 * Entries outside the span are left out. Refuses days that are not whole numbers, a span that is empty or over ten years, and
 * negative loads.
 *
 * Source: Foster et al. 2001, J Strength Cond Res 15:109-115 (abstract read) for adding up sessions.
 */
export function dayTotals(
  entries: readonly DiaryEntry[],
  {
    firstDay,
    lastDay,
    unreported = "missing",
  }: { readonly firstDay: number; readonly lastDay: number; readonly unreported?: "missing" | "rest" },
): Result<DailyValues> {
  const refusals: Refusal[] = [
    ...[firstDay, lastDay, ...entries.map(({ day }) => day)].flatMap(wholeDayRefusals),
    ...rangeRefusals(say`days of the diary`, 1, longestDiary, lastDay - firstDay + 1),
    ...entries.flatMap(({ load }) => (load === null ? [] : negativeRefusals({ "session load": load }))),
  ];
  if (refusals.length > 0) return refuse(...refusals);

  const totals = Array.from({ length: lastDay - firstDay + 1 }, (): number | null =>
    unreported === "rest" ? 0 : null,
  );
  const reported = new Set<number>();
  for (const { day, load } of entries) {
    const index = day - firstDay;
    if (index < 0 || index >= totals.length) continue;
    const before = reported.has(day) ? totals[index]! : 0;
    totals[index] = before === null || load === null ? null : before + load;
    reported.add(day);
  }
  return ok(totals);
}

const wholeDayRefusals = (day: number): Refusal[] =>
  Number.isInteger(day)
    ? []
    : [
        {
          code: "notADay",
          message: say`A day must be a whole serial number; ${day} is not.`,
          facts: { day: String(day) },
        },
      ];
