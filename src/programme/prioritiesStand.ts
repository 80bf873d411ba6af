import { type Priority, type PriorityRow, priorityKey } from "../store/priorityTable";

/**
 * Whether the priorities in the workbook are those that follow from the latest results: more than half of the first
 * priorities read as they would be proposed now. The coach's own decisions beside them change nothing in that.
 */
export function prioritiesStand(rows: readonly PriorityRow[], fresh: readonly Priority[]): boolean {
  const standing = new Map(rows.map((row) => [priorityKey(row), row]));
  const firsts = fresh.filter(({ rank }) => rank === 1);
  const same = firsts.filter((one) => {
    const row = standing.get(priorityKey(one));
    return row?.quality === one.quality && row.why === one.why;
  });
  return 2 * same.length > firsts.length;
}
