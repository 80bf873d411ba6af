import type { StoreTable } from "../store/storeTable";
import { createStoreTables, fillStoreTable, rememberStoreTables, removeSheets } from "./createStoreTable";
import type { Restoration } from "./deed";
import { type StoreSheet, storeSheet } from "./storeSheet";
import type { TablesOfWorkbook } from "./storeTables";

/** Makes a table of ours with these rows on a sheet of its own, as `makeStoreTables` does. */
export async function makeStoreTable<Row>(
  context: Excel.RequestContext,
  workbook: TablesOfWorkbook,
  table: StoreTable<Row>,
  rows: readonly Row[],
  shown: { readonly isShown: boolean },
): Promise<{ readonly sheet: string; readonly steps: readonly Restoration[] }> {
  const { sheets, steps } = await makeStoreTables(context, workbook, [storeSheet(table, rows)], shown);
  return { sheet: sheets[0]!, steps };
}

/**
 * Makes tables of ours, each on a sheet of its own. Two round trips; where one fails, the sheets are removed again.
 *
 * @param isShown whether the first of the sheets is gone to.
 */
export async function makeStoreTables(
  context: Excel.RequestContext,
  workbook: TablesOfWorkbook,
  stores: readonly StoreSheet[],
  { isShown }: { readonly isShown: boolean },
): Promise<{ readonly sheets: readonly string[]; readonly steps: readonly Restoration[] }> {
  const created = createStoreTables(context, stores, workbook);
  const sheets = created.map(({ sheetName }) => sheetName);
  try {
    await context.sync();
    for (const one of created) fillStoreTable(one);
    const steps = rememberStoreTables(context, created, workbook);
    if (isShown) created[0]!.sheet.activate();
    await context.sync();
    return { sheets, steps };
  } catch (error) {
    await removeSheets(context, sheets);
    throw error;
  }
}
