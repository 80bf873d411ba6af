import { trapHost } from "./hostRefusal";

/** Shows the coach a place in the workbook: activates its sheet and selects the cells. */
export const goTo = (sheet: string, address: string): Promise<void> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const worksheet = context.workbook.worksheets.getItem(sheet);
      worksheet.activate();
      worksheet.getRange(address).select();
      await context.sync();
    }),
  );
