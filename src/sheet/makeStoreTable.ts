import type { StoreTable } from "../store/storeTable";
import { createStoreTables, fillStoreTable, rememberStoreTables, removeSheets } from "./createStoreTable";
import type { Restoration } from "./deed";
import { storeSheet } from "./storeSheet";
import type { TablesOfWorkbook } from "./storeTables";

/**
 * Makes a table of ours with these rows on a sheet of its own. Two round trips; where one fails, the sheet is removed
 * again.
 *
 * @param isShown whether the sheet is gone to.
 */
export async function makeStoreTable<Row>(
  context: Excel.RequestContext,
  workbook: TablesOfWorkbook,
  table: StoreTable<Row>,
  rows: readonly Row[],
  { isShown }: { readonly isShown: boolean },
): Promise<{ readonly sheet: string; readonly steps: readonly Restoration[] }> {
  const [created] = createStoreTables(context, [storeSheet(table, rows)], workbook);
  const { sheetName } = created!;
  try {
    await context.sync();
    fillStoreTable(created!);
    const steps = rememberStoreTables(context, [created!], workbook);
    if (isShown) created!.sheet.activate();
    await context.sync();
    return { sheet: sheetName, steps };
  } catch (error) {
    await removeSheets(context, [sheetName]);
    throw error;
  }
}
