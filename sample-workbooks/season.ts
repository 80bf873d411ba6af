import { Workbook } from "exceljs";
import { addDiarySheet } from "./diarySheet";
import { addDirtySheet, addLongSheet, addWideSheet } from "./hopTestSheets";
import { addReadMeSheet } from "./readMeSheet";
import { repeatableFile } from "./repeatableFile";
import { addSquadSheet } from "./squadSheet";
import { addTestDaySheets } from "./testDaySheets";

/** The season of Fjordvik HK as the bytes of an .xlsx file. */
export async function season(): Promise<Uint8Array> {
  const workbook = new Workbook();
  for (const add of [
    ...[addWideSheet, addLongSheet, addDirtySheet, addReadMeSheet],
    ...[addSquadSheet, addTestDaySheets, addDiarySheet],
  ]) {
    add(workbook);
  }
  return repeatableFile(workbook);
}
