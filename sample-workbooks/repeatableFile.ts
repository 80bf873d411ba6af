import type { Workbook } from "exceljs";
import { unzipSync, zipSync } from "fflate";

/** Any fixed day does: a zip archive and a workbook both want one, and today's would change the file on every run. */
const day = { year: 2026, month: 7, date: 11 };

/** The workbook as the bytes of an .xlsx file, the same on every run and every machine. */
export async function repeatableFile(workbook: Workbook): Promise<Uint8Array> {
  workbook.creator = "Fjordvik HK (invented)";
  workbook.lastModifiedBy = workbook.creator;
  workbook.created = new Date(Date.UTC(day.year, day.month, day.date));
  workbook.modified = workbook.created;
  const parts = unzipSync(new Uint8Array(await workbook.xlsx.writeBuffer()));
  // The archive keeps local times: a day made in local time is the same in every time zone.
  return zipSync(parts, { mtime: new Date(day.year, day.month, day.date), level: 9 });
}
