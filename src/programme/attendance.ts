import { groupBy } from "../analyses/groupBy";
import { say } from "../language/say";
import { type Background, memberCalled } from "../store/background";
import type { DiaryEntry } from "../store/diary";
import { nameKey } from "../store/sameName";

/** How much of the work an athlete was there for. */
export type Attendance = {
  readonly attended: number;
  /** Sessions that the athlete's group held: those at which at least half of it was. */
  readonly held: number;
};

/** Whether a session was the group's, by how many of it were there; where fewer were, it was their own extra. */
export const isHeld = (there: number, group: number): boolean => there >= 0.5 * group;

/**
 * Attendance of everybody in a diary, from the first day to the last, by `nameKey` of the athlete. A session is held by a
 * group (of the squad) when at least half of those with entries in the diary were there; who is not in the squad counts
 * among the rest.
 *
 * @param from first ISO day that counts.
 * @param to last ISO day that counts.
 */
export function attendanceOf(
  diary: readonly DiaryEntry[],
  background: Background,
  { from, to }: { readonly from: string; readonly to: string },
): ReadonlyMap<string, Attendance> {
  const there = diary.filter(({ date, attended }) => date >= from && date <= to && attended === "yes");
  const groupOf = new Map(
    [...new Set(diary.map(({ athlete }) => athlete))].map((athlete) => [
      athlete,
      memberCalled(background, athlete)?.group ?? "",
    ]),
  );
  const sizes = groupBy([...groupOf.keys()], (athlete) => groupOf.get(athlete)!);
  const held = new Map<string, number>();
  for (const session of groupBy(there, ({ athlete, date, session: name }) =>
    [groupOf.get(athlete), date, nameKey(name ?? "")].join("|"),
  ).values()) {
    const group = groupOf.get(session[0]!.athlete)!;
    const athletes = new Set(session.map(({ athlete }) => athlete)).size;
    if (isHeld(athletes, sizes.get(group)!.length)) held.set(group, (held.get(group) ?? 0) + 1);
  }
  const own = groupBy(there, ({ athlete }) => athlete);
  return new Map(
    [...groupOf].map(([athlete, group]) => [
      nameKey(athlete),
      { attended: own.get(athlete)?.length ?? 0, held: held.get(group) ?? 0 },
    ]),
  );
}

/** "38 of 44 sessions"; more than the group held are said by themselves. */
export const attendanceWords = ({ attended, held }: Attendance): string =>
  attended <= held ? say`${attended} of ${held} sessions` : say`${attended} sessions, of which the group held ${held}`;
