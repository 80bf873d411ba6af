import type { Workbook } from "exceljs";
import { dressText, setTitle, setWidths } from "./look";

const lines = [
  "A women's handball club's test results to try Tapeline on. Club, athletes and every number are invented.",
  'Try first: on the sheet "Hop test", select A3:H29, then ask the pane which athletes differ between left and right.',
  "",
  "The sheets",
  "Hop test: the seniors on 11 August, one row an athlete.",
  "Hop test long: the same, one row a trial.",
  "Hop test dirty: part of the same as a hurried helper might have typed it.",
  "Squad: both teams; years of birth alone, no dates.",
  "Field 18 Aug and Gym 20 Aug: both teams in the first session of the pre-season.",
  "Field 25 Aug and Gym 27 Aug: the same a week later, to learn how much the tests vary by themselves.",
  "Field 27 Oct and Gym 29 Oct: the retest after the block.",
  "Diary: the eight weeks of the block, 31 August to 25 October, one row a session and athlete. Days of rest have no row.",
  "",
  "As in any club's sheets, some cells are wrong: typed in another unit, on the wrong side, under another spelling.",
];

export function addReadMeSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Read me");
  setWidths(sheet, [110]);
  setTitle(sheet, "Fjordvik HK", "What this workbook is");
  lines.forEach((line, index) => {
    if (line === "") return;
    const cell = sheet.getCell(index + 4, 1);
    cell.value = line;
    dressText(cell);
    cell.border = {};
    cell.alignment = { wrapText: true, vertical: "top" };
  });
  sheet.views = [{ state: "normal", showGridLines: false }];
}
