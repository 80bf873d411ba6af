import type { Workbook } from "exceljs";
import { dressText, setTitle, setWidths } from "./look";

const lines = [
  "A women's handball club's test results to try Tapeline on. Club, athletes and every number are invented.",
  'Try first: on the sheet "Hop test", select A3:H29, then ask the pane which athletes differ between left and right.',
];

export function addReadMeSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Read me");
  setWidths(sheet, [110]);
  setTitle(sheet, "Fjordvik HK", "What this workbook is");
  lines.forEach((line, index) => {
    const cell = sheet.getCell(index + 4, 1);
    cell.value = line;
    dressText(cell);
    cell.border = {};
    cell.alignment = { wrapText: true, vertical: "top" };
  });
  sheet.views = [{ state: "normal", showGridLines: false }];
}
