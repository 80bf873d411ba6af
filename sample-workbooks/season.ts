import { Workbook } from "exceljs";
import { addDirtySheet, addLongSheet, addWideSheet } from "./hopTestSheets";
import { addReadMeSheet } from "./readMeSheet";
import { repeatableFile } from "./repeatableFile";

/** The season of Fjordvik HK as the bytes of an .xlsx file. */
export async function season(): Promise<Uint8Array> {
  const workbook = new Workbook();
  for (const addSheet of [addWideSheet, addLongSheet, addDirtySheet, addReadMeSheet]) addSheet(workbook);
  return repeatableFile(workbook);
}
