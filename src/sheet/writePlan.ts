import { asPlanned, isAsPlanned, isOver, type PlannedRow, type PlanRow, planKey, planTable } from "../store/planTable";
import { type PlannedTable, type Renewed, renewPlanned } from "./renewPlanned";

const planned: PlannedTable<PlanRow> = { table: planTable, keyOf: planKey, isOurs: isAsPlanned, coachs: [] };

/**
 * Writes the plan of a block, or puts it in place of the one that stands, as `renewPlanned` says. Weeks of an earlier
 * block that were over both today and when the new one begins stay as a record of it.
 *
 * @param today ISO day; without it nothing counts as over.
 */
export function writePlan(fresh: readonly PlannedRow[], { today }: { readonly today?: string } = {}): Promise<Renewed> {
  const days = [...fresh.map(({ begins }) => begins), ...(today === undefined ? [] : [today])].sort();
  return renewPlanned(
    { ...planned, isOver: (row) => today !== undefined && isOver(row, days[0]!) },
    fresh.map(asPlanned),
  );
}
