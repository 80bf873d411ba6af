import type { FootLine } from "./reportLines";

/** A row of the notes, counted from the first row below the table. */
export type FootRow = FootLine & { readonly row: number };

/**
 * Where the notes we wrote last stand now, counted from the first row below the table: the place at which most of them
 * read as written. They move with the rows a coach inserts. Null where none is left.
 *
 * @param below what stands below the table in its first column.
 */
export function findFoot(below: readonly string[], written: readonly (string | null)[]): number | null {
  let best = { start: 0, matches: 0 };
  for (let start = 0; start < below.length; start++) {
    const matches = written.filter((line, index) => line !== null && below[start + index] === line).length;
    if (matches > best.matches) best = { start, matches };
  }
  return best.matches === 0 ? null : best.start;
}

/** The rows that still read as we wrote them, counted from the first row below the table. */
export const ownFootRows = (
  below: readonly string[],
  written: readonly (string | null)[],
  start: number | null,
): ReadonlySet<number> =>
  new Set(
    start === null
      ? []
      : written.flatMap((line, index) => (line !== null && below[start + index] === line ? [start + index] : [])),
  );

/** Lays the lines into rows from `start` on, passing over those that hold something of the coach's. */
export function layFoot(lines: readonly FootLine[], start: number, isTaken: (row: number) => boolean): FootRow[] {
  let row = start;
  return lines.map((line) => {
    while (isTaken(row)) row++;
    return { ...line, row: row++ };
  });
}

/** What to remember of laid notes: their texts from the first row on, null for a row between that is not ours. */
export function rememberedFoot(rows: readonly FootRow[]): (string | null)[] {
  const first = rows[0]?.row ?? 0;
  const texts = new Map(rows.map(({ row, text }) => [row - first, text]));
  return Array.from({ length: (rows.at(-1)?.row ?? -1) - first + 1 }, (_, index) => texts.get(index) ?? null);
}
