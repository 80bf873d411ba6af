import { noWrittenReports, parseWrittenReports, writtenReportsSetting } from "../store/writtenReports";
import { freeName } from "./createTable";
import { trapHost } from "./hostRefusal";

/** Where a report would be written: a new sheet, or the table of an earlier run. */
export type Place = { readonly sheet: string; readonly renews: boolean };

/** @param wished name wished for a new sheet. One round trip. */
export const findPlace = (key: string, wished: string): Promise<Place> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const { settings, tables, worksheets } = context.workbook;
      const setting = settings.getItemOrNullObject(writtenReportsSetting);
      setting.load("value");
      worksheets.load("items/name,items/id");
      tables.load("items/id");
      await context.sync();
      const stored = (setting.isNullObject ? null : parseWrittenReports(setting.value)) ?? noWrittenReports;
      const last = stored.reports[key];
      const sheet = worksheets.items.find((item) => item.id === last?.sheetId);
      const stands = last !== undefined && tables.items.some((table) => table.id === last.tableId);
      if (sheet && stands) return { sheet: sheet.name, renews: true };
      const names = worksheets.items.map((item) => item.name);
      return { sheet: freeName(wished, " ", names), renews: false };
    }),
  );
