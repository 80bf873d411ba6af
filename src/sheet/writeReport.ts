import type { Report } from "../analyses/report";
import {
  noWrittenReports,
  parseWrittenReports,
  type WrittenReport,
  type WrittenReports,
  writtenReportsSetting,
} from "../store/writtenReports";
import { createTable, fillTable, removeSheet } from "./createTable";
import { trapHost } from "./hostRefusal";
import type { Conflict } from "./planUpdate";
import { readStanding, renewTable } from "./renewTable";
import { reportLines } from "./reportLines";

export type Outcome =
  | { readonly kind: "written"; readonly sheet: string; readonly address: string; readonly updated: boolean }
  | (Conflict & { readonly sheet: string })
  /** What we keep in the workbook was written by a newer version of the add-in, or is damaged. */
  | { readonly kind: "unknownState" };

/**
 * Writes a report as a table of its own on its own sheet, or, where one with the same key stands already, renews that
 * table in place. Three round trips whatever the size. Touches no cell that it did not write before; where it would
 * have to, it writes nothing and says what is in the way.
 *
 * @param key says which result this is: the analysis and the place it was read from.
 * @param fresh writes a new sheet even where a table with this key stands; the standing one is then the coach's.
 */
export const writeReport = (report: Report, key: string, fresh = false): Promise<Outcome> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Outcome> => {
      const { settings, tables, worksheets } = context.workbook;
      const setting = settings.getItemOrNullObject(writtenReportsSetting);
      setting.load("value");
      worksheets.load("items/name");
      tables.load("items/name,items/id");
      await context.sync();

      const stored = setting.isNullObject ? noWrittenReports : parseWrittenReports(setting.value);
      if (stored === null) return { kind: "unknownState" };
      const lines = reportLines(report);
      const remember = (written: WrittenReport) => {
        const next: WrittenReports = { ...stored, reports: { ...stored.reports, [key]: written } };
        settings.add(writtenReportsSetting, next);
      };

      const last = fresh ? undefined : stored.reports[key];
      const standing = last && tables.items.find((table) => table.id === last.tableId);
      if (last && standing) {
        const place = await readStanding(context, standing, last);
        const renewed = renewTable(report, lines, place, last);
        if (renewed.kind === "conflict") return { ...renewed, sheet: place.sheet.name };
        remember(renewed.written);
        place.sheet.activate();
        await context.sync();
        return { kind: "written", sheet: place.sheet.name, address: renewed.address, updated: true };
      }

      const taken = {
        sheets: worksheets.items.map((sheet) => sheet.name),
        tables: tables.items.map((table) => table.name),
      };
      const created = await createTable(context, report, lines.length, taken);
      try {
        remember(fillTable(report, lines, created));
        created.sheet.activate();
        await context.sync();
      } catch (error) {
        await removeSheet(context, created.sheet.name);
        throw error;
      }
      return { kind: "written", sheet: created.sheet.name, address: created.address, updated: false };
    }),
  );
