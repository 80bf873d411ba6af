import type { StoreTableId } from "../store/storeTable";
import { trapHost } from "./hostRefusal";
import { findStoreTables } from "./storeTables";

/** Shows one of the workbook's own tables, wherever the coach has moved it; nothing where it is gone. Two round trips. */
export const goToTable = (table: { readonly id: StoreTableId; readonly name: string }): Promise<void> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const standing = (await findStoreTables(context)).find(table);
      if (!standing) return;
      standing.worksheet.activate();
      standing.getRange().getCell(0, 0).select();
      await context.sync();
    }),
  );
