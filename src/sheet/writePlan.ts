import { asPlanned, isAsPlanned, type PlannedRow, type PlanRow, planKey, planTable } from "../store/planTable";
import { type PlannedTable, type Renewed, renewPlanned } from "./renewPlanned";

const planned: PlannedTable<PlanRow> = { table: planTable, keyOf: planKey, isOurs: isAsPlanned, coachs: [] };

/** Writes the plan of a block, or puts it in place of the one that stands, as `renewPlanned` says. */
export const writePlan = (fresh: readonly PlannedRow[]): Promise<Renewed> =>
  renewPlanned(planned, fresh.map(asPlanned));
