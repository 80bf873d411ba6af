import {
  asProposed,
  isAsProposed,
  type Priority,
  type PriorityRow,
  prioritiesTable,
  priorityKey,
} from "../store/priorityTable";
import { type PlannedTable, type Renewed, renewPlanned } from "./renewPlanned";

const proposed: PlannedTable<PriorityRow> = {
  table: prioritiesTable,
  keyOf: priorityKey,
  isOurs: isAsProposed,
  coachs: ["choice", "reason"],
};

/**
 * Writes priorities, or puts them in place of those that stand, as `renewPlanned` says. The coach's choice and reason
 * stay with athlete and rank.
 */
export const writePriorities = (fresh: readonly Priority[]): Promise<Renewed> =>
  renewPlanned(proposed, fresh.map(asProposed));
