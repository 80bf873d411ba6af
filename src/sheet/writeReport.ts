import type { Report } from "../analyses/report";
import { say } from "../language/say";
import { quotedSheet } from "../reading/address";
import {
  noWrittenReports,
  parseWrittenReports,
  type WrittenReport,
  type WrittenReports,
  writtenReportsSetting,
} from "../store/writtenReports";
import { createTable, fillTable } from "./createTable";
import type { Deed, Restoration } from "./deed";
import { trapHost } from "./hostRefusal";
import type { Conflict } from "./planUpdate";
import { readStanding, renewTable } from "./renewTable";
import { headLines } from "./reportLines";
import { writeOrTakeBack } from "./takeBack";

export type Outcome =
  | {
      readonly kind: "written";
      readonly sheet: string;
      readonly address: string;
      readonly updated: boolean;
      readonly deed: Deed;
    }
  | (Conflict & { readonly sheet: string })
  /** What we keep in the workbook was written by a newer version of the add-in, or is damaged. */
  | { readonly kind: "unknownState" };

/**
 * Writes a report as a table of its own on its own sheet, or, where one with the same key stands already, renews that
 * table in place. Three round trips whatever the size. Touches no cell that it did not write before; where it would
 * have to, it writes nothing and says what is in the way. Where the program fails half way, the workbook is as before.
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
      const remember = (written: WrittenReport) => {
        const next: WrittenReports = { ...stored, reports: { ...stored.reports, [key]: written } };
        settings.add(writtenReportsSetting, next);
      };
      const forget: Restoration = {
        kind: "restoreEntries",
        key: writtenReportsSetting,
        record: "reports",
        entries: [{ entry: key, value: stored.reports[key] }],
        existed: !setting.isNullObject,
        base: noWrittenReports,
      };

      const last = fresh ? undefined : stored.reports[key];
      const standing = last && tables.items.find((table) => table.id === last.tableId);
      if (last && standing) {
        const place = await readStanding(context, report, standing, last);
        const { sheet } = place;
        const renewal = renewTable(report, place, last);
        if (renewal.kind === "conflict") return { ...renewal, sheet: sheet.name };
        const deed: Deed = {
          what: say`Renewed ${quotedSheet(sheet.name)}!${renewal.address}`,
          steps: [...renewal.steps, forget],
        };
        const written = await writeOrTakeBack(deed, async () => {
          renewal.write();
          remember(renewal.written);
          const left = loadWritten(sheet, deed);
          sheet.activate();
          await context.sync();
          return left();
        });
        return { kind: "written", sheet: sheet.name, address: renewal.address, updated: true, deed: written };
      }

      const head = headLines(report);
      const taken = {
        sheets: worksheets.items.map((sheet) => sheet.name),
        tables: tables.items.map((table) => table.name),
      };
      const created = await createTable(context, report, head.length, taken);
      const { sheet, address } = created;
      const deed = (written?: Excel.Range): Deed => ({
        what: say`Wrote ${quotedSheet(sheet.name)}!${address}`,
        steps: [
          {
            kind: "removeSheet",
            sheetId: sheet.id,
            ...(written && {
              written: { row: written.rowIndex, column: written.columnIndex, formulas: written.formulas },
            }),
          },
          forget,
        ],
      });
      const used = await writeOrTakeBack(deed(), async () => {
        remember(fillTable(report, head, created));
        const written = sheet.getUsedRange().load("formulas,rowIndex,columnIndex");
        sheet.activate();
        await context.sync();
        return written;
      });
      return { kind: "written", sheet: sheet.name, address, updated: false, deed: deed(used) };
    }),
  );

/** Queues reading what a write has left in the cells of its deed; after the round trip, gives the deed with it. */
function loadWritten(sheet: Excel.Worksheet, deed: Deed): () => Deed {
  const steps = deed.steps.map((step): (() => Restoration) => {
    if (step.kind !== "restoreCells") return () => step;
    const cells = sheet.getRange(step.address).load("formulas");
    return () => ({ ...step, written: cells.formulas });
  });
  return () => ({ ...deed, steps: steps.map((withWritten) => withWritten()) });
}
