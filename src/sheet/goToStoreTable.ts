import type { StoreTableId } from "../store/storeTable";
import { trapHost } from "./hostRefusal";
import { findStoreTables } from "./storeTables";

/** Shows the coach one of our tables, wherever it stands and whatever its sheet is called. Nothing where it is gone. */
export const goToStoreTable = (table: { readonly id: StoreTableId; readonly name: string }): Promise<void> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const found = (await findStoreTables(context)).find(table);
      if (!found) return;
      found.worksheet.activate();
      found.getHeaderRowRange().getCell(0, 0).select();
      await context.sync();
    }),
  );
