import { groupBy } from "../analyses/groupBy";
import { type Background, memberCalled } from "../store/background";
import type { DiaryEntry } from "../store/diary";
import { isHeld } from "./attendance";
import { squadNames } from "./squadNames";

/** Who has been away by the diary alone: it knows no reasons, and none are guessed. */
export type Away = {
  /** None of the group's last sessions; with the last day they were there. */
  readonly away: readonly { readonly athlete: string; readonly lastThere: string }[];
  /** Back at one of them, after missing as many in a row. */
  readonly returning: readonly { readonly athlete: string; readonly since: string }[];
};

/** So many days with sessions missed in a row are worth a word. Common practice, no source. */
export const daysMissed = 4;

/**
 * A day with a session is one on which at least half of those of the group who are in the diary were there. Who was never
 * there is neither away nor returning.
 */
export function whoIsAway(diary: readonly DiaryEntry[], background: Background): Away {
  const nameOf = squadNames(background);
  const there = diary.filter(({ attended }) => attended === "yes");
  const groupOf = (athlete: string) => memberCalled(background, athlete)?.group ?? "";
  const athletes = [...new Set(diary.map(({ athlete }) => nameOf(athlete)))];
  const sizes = groupBy(athletes, groupOf);
  const daysOf = groupBy(there, ({ athlete }) => nameOf(athlete));
  const heldBy = new Map([...sizes].map(([group, members]) => [group, heldDays(members, daysOf)]));
  const away: Away["away"][number][] = [];
  const returning: Away["returning"][number][] = [];
  for (const athlete of athletes) {
    const own = new Set((daysOf.get(athlete) ?? []).map(({ date }) => date));
    const held = heldBy.get(groupOf(athlete))!;
    const lastThere = [...own].sort().at(-1);
    if (lastThere === undefined || held.length < daysMissed) continue;
    const latest = held.slice(-daysMissed);
    const since = latest.find((day) => own.has(day));
    if (since === undefined) away.push({ athlete, lastThere });
    else {
      const missed = held.slice(0, held.indexOf(since)).slice(-daysMissed);
      const wasThere = [...own].some((day) => day < (missed[0] ?? ""));
      if (missed.length === daysMissed && wasThere && !missed.some((day) => own.has(day))) {
        returning.push({ athlete, since });
      }
    }
  }
  return { away, returning };
}

function heldDays(members: readonly string[], daysOf: ReadonlyMap<string, readonly DiaryEntry[]>): string[] {
  const count = new Map<string, number>();
  for (const athlete of members) {
    for (const day of new Set((daysOf.get(athlete) ?? []).map(({ date }) => date))) {
      count.set(day, (count.get(day) ?? 0) + 1);
    }
  }
  return [...count].flatMap(([day, there]) => (isHeld(there, members.length) ? day : [])).sort();
}
