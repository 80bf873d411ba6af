import { groupBy } from "../analyses/groupBy";
import { inSentence, say } from "../language/say";
import type { Priority } from "../store/priorityTable";
import { isSameWording, nameKey } from "../store/sameName";
import { attendanceWords } from "./attendance";
import { isBetter, type Review, type ReviewedChange } from "./review";

/** What becomes of a priority in the next cycle. */
export type NextPriority = {
  readonly athlete: string;
  readonly quality: string;
  /** "done": improved beyond noise and no longer among the first. "set aside": no longer among them for another reason. */
  readonly fate: "carried over" | "new" | "done" | "set aside";
  /** Ranks in the last cycle and in the next; null where it had or has none. */
  readonly rankBefore: number | null;
  readonly rankNext: number | null;
  /** What has changed in the tests of the quality, and why the priority stands as it does. */
  readonly why: string;
};

type Worked = Pick<Priority, "athlete" | "rank" | "quality">;

/**
 * The last cycle's priorities against those made from the retest, athlete by athlete: the next ones in their order, then
 * what falls away. An athlete without new priorities (not tested again, or gone) is left out: nothing has been decided.
 *
 * @param last what was worked on, with the coach's own decisions in it.
 * @param next as made from the retest (`priorities`).
 */
export function nextCycle(last: readonly Worked[], next: readonly Priority[], { changes }: Review): NextPriority[] {
  const lastOf = groupBy(last, ({ athlete }) => nameKey(athlete));
  const changesOf = groupBy(changes, ({ athlete }) => nameKey(athlete));
  return [...groupBy(next, ({ athlete }) => nameKey(athlete))].flatMap(([key, fresh]) => {
    const worked = lastOf.get(key) ?? [];
    const told = changesOf.get(key) ?? [];
    const rankOf = (rows: readonly Worked[], quality: string) =>
      rows.find((row) => isSameWording(row.quality, quality))?.rank ?? null;
    const { athlete } = fresh[0]!;
    const coming = fresh.map(({ quality, rank, why }): NextPriority => {
      const rankBefore = rankOf(worked, quality);
      return {
        ...{ athlete, quality, rankBefore, rankNext: rank },
        fate: rankBefore === null ? "new" : "carried over",
        why: `${rankBefore === null ? "" : `${changeWords(told, quality)} `}${why}`,
      };
    });
    const going = worked
      .filter(({ quality }) => rankOf(fresh, quality) === null)
      .map(({ quality, rank }): NextPriority => {
        const hasImproved = ofQuality(told, quality).some(isBetter);
        return {
          ...{ athlete, quality, rankBefore: rank, rankNext: null },
          fate: hasImproved ? "done" : "set aside",
          why: `${changeWords(told, quality)} ${hasImproved ? say`Others come first now.` : say`Others come first now; it has not been shown to have improved.`}`,
        };
      });
    return [...coming, ...going];
  });
}

const ofQuality = (changes: readonly ReviewedChange[], quality: string): ReviewedChange[] =>
  changes.filter((one) => one.quality !== null && isSameWording(one.quality, quality));

/** What became of the tests of a quality, and how much of the block the athlete was there for. */
function changeWords(changes: readonly ReviewedChange[], quality: string): string {
  const own = ofQuality(changes, quality);
  if (own.length === 0) return say`Not tested again.`;
  const there = own[0]!.attendance ? say` There for ${attendanceWords(own[0]!.attendance)}.` : "";
  return `${own.map(({ series, verdict }) => `${series}: ${inSentence(verdict)}`).join("; ")}.${there}`;
}
