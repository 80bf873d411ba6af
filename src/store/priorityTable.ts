import { count, name, text } from "./columnKinds";
import { fingerprint } from "./fingerprint";
import { nameKey } from "./sameName";
import { readStoreTable, type StoreRemark, type StoreTable, type TableCells } from "./storeTable";

/** One thing to work on, with the reason and the numbers behind it. */
export type Priority = {
  readonly athlete: string;
  /** 1 is the most urgent. */
  readonly rank: number;
  readonly quality: string;
  readonly why: string;
};

/** One priority of an athlete as it stands in the workbook: what was proposed, and what the coach made of it. */
export type PriorityRow = {
  readonly athlete: string;
  /** 1 is the most urgent. */
  readonly rank: number;
  readonly quality: string;
  readonly why: string | null;
  /** Another quality to work on instead, or "none"; null where the coach goes along. */
  readonly choice: string | null;
  readonly reason: string | null;
  /** Fingerprint of what we proposed: a row that reads otherwise is the coach's. Null in rows of their own. */
  readonly asProposed: string | null;
};

export const priorityKey = ({ athlete, rank }: Pick<PriorityRow, "athlete" | "rank">): string =>
  `${nameKey(athlete)}|${rank}`;

/** A proposal that nobody has decided on, with its fingerprint. */
export const asProposed = (priority: Priority): PriorityRow => ({
  ...priority,
  ...{ choice: null, reason: null, asProposed: proposalMark(priority) },
});

/** Whether the proposal reads as we wrote it, whatever the coach has made of it. */
export const isAsProposed = (row: PriorityRow): boolean => row.asProposed === proposalMark(row);

const proposalMark = ({ athlete, rank, quality, why }: Omit<PriorityRow, "choice" | "reason" | "asProposed">): string =>
  fingerprint([athlete, rank, quality, why]);

export const prioritiesTable: StoreTable<PriorityRow> = {
  id: "priorities",
  name: "Tapeline_Priorities",
  sheet: "Priorities",
  title: "Priorities",
  use: "What to work on first, by the rule. Overrule under “Coach's choice” (another quality, or none) and say why: both stay when priorities are made anew.",
  columns: {
    athlete: { ...name, heading: "Athlete", meaning: "Name as in the squad.", width: 24 },
    rank: { ...count(1, 20), heading: "Rank", meaning: "1 is the most urgent.", width: 9 },
    quality: { ...name, heading: "Quality", meaning: "The physical quality to work on, by the rule.", width: 20 },
    why: { ...text, heading: "Why", meaning: "The reason, with the numbers behind it.", width: 60 },
    choice: {
      ...text,
      heading: "Coach's choice",
      meaning: "Another quality to work on instead, or none. Yours: it is never overwritten.",
      width: 20,
    },
    reason: { ...text, heading: "Coach's reason", meaning: "Why you decide otherwise. Yours.", width: 36 },
    asProposed: {
      ...text,
      heading: "As proposed",
      meaning: "The mark by which a row is known as proposed. Clear it to make the row your own.",
      width: 14,
    },
  },
  once: ({ athlete, rank }) => ({ key: priorityKey({ athlete, rank }), called: `Rank ${rank} of “${athlete}”` }),
};

export function readPriorities(cells: TableCells): {
  priorities: readonly PriorityRow[];
  remarks: readonly StoreRemark[];
} {
  const { rows, remarks } = readStoreTable(prioritiesTable, cells);
  return { priorities: rows.map(({ row }) => row), remarks };
}

/** What is to be worked on in the end: as proposed, unless the coach has decided otherwise. */
export function decided(
  rows: readonly PriorityRow[],
): { athlete: string; rank: number; quality: string; why: string }[] {
  return rows.flatMap(({ athlete, rank, quality, why, choice, reason }) => {
    if (choice === null) return [{ athlete, rank, quality, why: why ?? "" }];
    if (nameKey(choice) === "none") return [];
    return [{ athlete, rank, quality: choice, why: `The coach's choice${reason === null ? "." : `: ${reason}`}` }];
  });
}
