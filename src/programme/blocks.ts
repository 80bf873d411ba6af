import { groupBy } from "../analyses/groupBy";
import { dayNumber, isoDay } from "../reading/days";
import type { Exercise } from "../store/exercises";
import type { PlanRow } from "../store/planTable";
import { nameKey, wordingKey } from "../store/sameName";

/** A block of the plan: its weeks follow each other from 1 on. */
export type PlannedBlock = {
  /** First and last ISO day. */
  readonly begins: string;
  readonly ends: string;
  readonly rows: readonly PlanRow[];
};

/**
 * The blocks that a plan holds, the earliest first: one ends where the weeks are counted anew. Which week a day begins
 * is what most rows say of it, so that a date changed by hand does not tear a block apart.
 */
export function blocksOf(plan: readonly PlanRow[]): PlannedBlock[] {
  const days = [...groupBy(plan, ({ begins }) => begins)].sort(([a], [b]) => a.localeCompare(b));
  const blocks: PlanRow[][] = [];
  let before: { readonly day: number; readonly week: number } | null = null;
  for (const [begins, rows] of days) {
    const here = { day: dayNumber(begins), week: mostCommonWeek(rows) };
    const countsAnew =
      before === null || here.week < before.week || (here.week === before.week && here.day - before.day >= 7);
    if (countsAnew) blocks.push([...rows]);
    else blocks.at(-1)!.push(...rows);
    before = here;
  }
  return blocks.map((rows) => ({ begins: rows[0]!.begins, ends: lastDay(rows.at(-1)!.begins), rows }));
}

const lastDay = (begins: string): string => isoDay(dayNumber(begins) + 6);

function mostCommonWeek(rows: readonly PlanRow[]): number {
  const [first, ...others] = groupBy(rows, ({ week }) => week).values();
  return others.reduce((most, same) => (same.length > most.length ? same : most), first!)[0]!.week;
}

/** The block that is under way, else the next to come, else the last; null without any. */
export function currentBlock(blocks: readonly PlannedBlock[], today: string): PlannedBlock | null {
  return (
    blocks.findLast(({ begins, ends }) => begins <= today && today <= ends) ??
    blocks.find(({ begins }) => begins > today) ??
    blocks.at(-1) ??
    null
  );
}

/** The last block that had begun on a day; null where none had. */
export const lastBegun = (blocks: readonly PlannedBlock[], day: string): PlannedBlock | null =>
  blocks.findLast(({ begins }) => begins <= day) ?? null;

/**
 * What each athlete worked on in a block, by the qualities of the exercises planned: that with the most rows first.
 * Exercises that are not in the library tell nothing.
 */
export function workedOn(
  rows: readonly PlanRow[],
  library: readonly Exercise[],
): { readonly athlete: string; readonly rank: number; readonly quality: string }[] {
  const qualities = new Map(library.map(({ exercise, quality }) => [wordingKey(exercise), quality]));
  return [...groupBy(rows, ({ athlete }) => nameKey(athlete)).values()].flatMap((own) => {
    const known = own.flatMap(({ exercise }) => qualities.get(wordingKey(exercise)) ?? []);
    return [...groupBy(known, (quality) => quality)]
      .sort(([, a], [, b]) => b.length - a.length)
      .map(([quality], index) => ({ athlete: own[0]!.athlete, rank: index + 1, quality }));
  });
}
