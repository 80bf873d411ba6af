/** A row of a table that we plan and the coach edits, as it stands. */
export type EditableRow = {
  /** Offset from the table's first row of data. */
  readonly offset: number;
  /** Says which row it is, the same at every planning; null where it cannot be read. */
  readonly key: string | null;
  /**
   * "ours": it reads as we wrote it. "free": nothing of ours stands in it. "coachs": changed by the coach, or a row of
   * their own. "over": of an earlier time, as a record of it: it stays, and says nothing of what comes.
   */
  readonly state: "ours" | "free" | "coachs" | "over";
  /** Whether the coach has written into columns of their own beside it: nothing else may then move in. */
  readonly hasOwnCells: boolean;
};

export type Merged<Fresh> = {
  /** What is written where: a row renewed, or one given up and filled again. */
  readonly written: readonly { readonly offset: number; readonly row: Fresh }[];
  /** Offsets of rows given up that nothing fills. */
  readonly emptied: readonly number[];
  /** What comes below the last row. */
  readonly appended: readonly Fresh[];
  /** Rows that stay as the coach has them. */
  readonly coachs: number;
};

/**
 * Puts a new plan in place of an old one without touching what the coach has changed: a row that no longer reads as we
 * wrote it stays as it is; a row of the coach's own stays; a row of ours is renewed where it stands, or given up if the
 * new plan has none with its key. No row is removed. A row the coach deleted comes back.
 */
export function keepCoachsRows<Fresh>(
  standing: readonly EditableRow[],
  fresh: readonly Fresh[],
  keyOf: (row: Fresh) => string,
): Merged<Fresh> {
  const freshByKey = new Map(fresh.map((row) => [keyOf(row), row]));
  const coachs = standing.filter(({ state }) => state === "coachs");
  const known = new Set(coachs.flatMap(({ key }) => key ?? []));
  const written: { offset: number; row: Fresh }[] = [];
  const given: EditableRow[] = [];
  const free: EditableRow[] = [];
  for (const row of standing) {
    if (row.state === "coachs" || row.state === "over") continue;
    const renewed = row.key === null || known.has(row.key) ? undefined : freshByKey.get(row.key);
    if (row.state === "ours" && renewed !== undefined) {
      written.push({ offset: row.offset, row: renewed });
      known.add(row.key!);
    } else if (row.hasOwnCells) given.push(row);
    else free.push(row);
  }
  const more = fresh.filter((row) => !known.has(keyOf(row)));
  free.slice(0, more.length).forEach(({ offset }, index) => {
    written.push({ offset, row: more[index]! });
  });
  return {
    written,
    emptied: [...given, ...free.slice(more.length)].filter(({ state }) => state === "ours").map(({ offset }) => offset),
    appended: more.slice(free.length),
    coachs: coachs.length,
  };
}
