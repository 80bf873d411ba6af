/** A row of a table that we plan and the coach edits. */
export type EditableRow = {
  /** Says which row it is, the same at every planning. */
  readonly key: string;
  /** The cells as they stand, or are to stand. */
  readonly cells: readonly (number | string | null)[];
  /** What we wrote into the row when we last planned it, as `written` gives it; null for a row of the coach's own. */
  readonly asPlanned: string | null;
};

export const written = (cells: EditableRow["cells"]): string => JSON.stringify(cells);

export type Merged = {
  readonly rows: readonly EditableRow[];
  /** Rows that stay as the coach has them. */
  readonly coachs: number;
};

/**
 * Puts a new plan in place of an old one without touching what the coach has changed: a row that no longer reads as we
 * wrote it stays as it is; a row of the coach's own stays; a row of ours is renewed, or goes if the new plan has none
 * with its key. A row the coach deleted comes back: to leave an exercise out, set its sets to 0.
 */
export function keepCoachsRows(standing: readonly EditableRow[], fresh: readonly EditableRow[]): Merged {
  const freshByKey = new Map(fresh.map((row) => [row.key, row]));
  const kept: EditableRow[] = [];
  const known = new Set<string>();
  let coachs = 0;
  for (const row of standing) {
    const isCoachs = row.asPlanned === null || row.asPlanned !== written(row.cells);
    const renewed = freshByKey.get(row.key);
    if (isCoachs) {
      kept.push(row);
      coachs++;
    } else if (renewed && !known.has(row.key)) kept.push(renewed);
    known.add(row.key);
  }
  return { rows: [...kept, ...fresh.filter(({ key }) => !known.has(key))], coachs };
}
