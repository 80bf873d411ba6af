import { readKept, resultsTable, type StandingResult } from "../store/keptResults";
import type { StoreRemark } from "../store/storeTable";
import { trapHost } from "./hostRefusal";
import { findStoreTables, readTables, unknownMemory } from "./storeTables";

export type KeptReading = {
  readonly results: readonly StandingResult[];
  readonly remarks: readonly StoreRemark[];
};

/**
 * The results kept in the workbook; null where there is no table of them. Two round trips, and one more for each
 * further `rowsAtOnce` rows.
 */
export const readKeptResults = (): Promise<KeptReading | null> =>
  trapHost(() =>
    Excel.run(async (context): Promise<KeptReading | null> => {
      const workbook = await findStoreTables(context);
      const table = workbook.find(resultsTable);
      if (!table) return null;
      const [standing] = await readTables(context, [table]);
      const { results, remarks } = readKept(standing!.cells);
      return { results, remarks: workbook.remembered === null ? [unknownMemory(standing!), ...remarks] : remarks };
    }),
  );
