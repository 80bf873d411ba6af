import { say } from "../language/say";
import { count, name, text } from "./columnKinds";
import { fingerprint } from "./fingerprint";
import { isWording, nameKey } from "./sameName";
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
  sheet: say`Priorities`,
  title: say`Priorities`,
  use: say`What to work on first, by the rule. Overrule under “Coach's choice” (another quality, or none) and say why: both stay when priorities are made anew.`,
  columns: {
    athlete: { ...name, heading: say`Athlete`, meaning: say`Name as in the squad.`, width: 24 },
    rank: { ...count(1, 20), heading: say`Rank`, meaning: say`1 is the most urgent.`, width: 9 },
    quality: { ...name, heading: say`Quality`, meaning: say`The physical quality to work on, by the rule.`, width: 20 },
    why: { ...text, heading: say`Why`, meaning: say`The reason, with the numbers behind it.`, width: 60 },
    choice: {
      ...text,
      heading: say`Coach's choice`,
      meaning: say`Another quality to work on instead, or none. Yours: it is never overwritten.`,
      width: 20,
    },
    reason: { ...text, heading: say`Coach's reason`, meaning: say`Why you decide otherwise. Yours.`, width: 36 },
    asProposed: {
      ...text,
      heading: say`As proposed`,
      meaning: say`The mark by which a row is known as proposed. Clear it to make the row your own.`,
      width: 14,
    },
  },
  once: ({ athlete, rank }) => ({ key: priorityKey({ athlete, rank }), called: say`Rank ${rank} of “${athlete}”` }),
};

/** What the coach decides about one of an athlete's priorities, in place of what the table proposes. */
export type Overruling =
  | { readonly kind: "earlier" | "later" | "aside" | "asProposed" }
  | { readonly kind: "instead"; readonly quality: string };

/** The coach's columns of one row. */
export type Decision = Pick<PriorityRow, "athlete" | "rank" | "choice" | "reason">;

/** Word under the coach's choice by which a priority is set aside. */
export const setAside = say`none`;

export const isSetAside = ({ choice }: Pick<PriorityRow, "choice">): boolean =>
  choice !== null && isWording(choice, setAside);

/**
 * The decisions by which an overruling of the priority at a rank stands in the table. One moved past another changes both
 * rows. A row that comes out as it was proposed is the coach's no more, so that the next proposal holds for it.
 *
 * @param own the rows of one athlete.
 */
export function overruled(
  own: readonly PriorityRow[],
  rank: number,
  overruling: Overruling,
  reason: string | null,
): Decision[] {
  const rows = [...own].sort((a, b) => a.rank - b.rank);
  const at = rows.findIndex((row) => row.rank === rank);
  const row = rows[at];
  if (!row) return [];
  if (overruling.kind === "asProposed") return [decision(row, row.quality, null)];
  if (overruling.kind === "aside") return [decision(row, setAside, reason)];
  if (overruling.kind === "instead") return [decision(row, overruling.quality, reason)];
  const other = rows[overruling.kind === "earlier" ? at - 1 : at + 1];
  return other ? [decision(other, workedOn(row), reason), decision(row, workedOn(other), reason)] : [];
}

const workedOn = ({ quality, choice }: PriorityRow): string => choice ?? quality;

const decision = ({ athlete, rank, quality }: PriorityRow, chosen: string, reason: string | null): Decision =>
  nameKey(chosen) === nameKey(quality)
    ? { athlete, rank, choice: null, reason: null }
    : { athlete, rank, choice: chosen, reason };

export function readPriorities(cells: TableCells): {
  priorities: readonly PriorityRow[];
  remarks: readonly StoreRemark[];
} {
  const { rows, remarks } = readStoreTable(prioritiesTable, cells);
  return { priorities: rows.map(({ row }) => row), remarks };
}

/** The reason of a priority that the coach has chosen begins so. */
export const coachsChoice = say`The coach's choice`;

/** What is to be worked on in the end: as proposed, unless the coach has decided otherwise. */
export function decided(
  rows: readonly PriorityRow[],
): { athlete: string; rank: number; quality: string; why: string }[] {
  return rows.flatMap((row) => {
    const { athlete, rank, quality, why, choice, reason } = row;
    if (choice === null) return [{ athlete, rank, quality, why: why ?? "" }];
    if (isSetAside(row)) return [];
    return [{ athlete, rank, quality: choice, why: `${coachsChoice}${reason === null ? "." : `: ${reason}`}` }];
  });
}
