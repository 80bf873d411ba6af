import type { Workbook } from "exceljs";
import { diary } from "./diary";
import { dressDate, dressNumber, dressText, freezeBelow, setHeadings, setTitle, setWidths } from "./look";

const headings = ["Date", "Athlete", "Session", "Minutes", "Rating (0-10)", "Throws", "Jumps"];

export function addDiarySheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Diary");
  setWidths(sheet, [13, 24, 18, 11, 15, 11, 11]);
  setTitle(
    sheet,
    "Training diary",
    "The block from 31 August to 25 October 2026. How hard the whole session was, from 0 (rest) to 10 (maximal), asked half an hour after it.",
  );
  setHeadings(sheet, 3, headings, 3);
  diary().forEach(({ date, athlete, session, minutes, rating, throws, jumps }, index) => {
    [date, athlete, session, minutes, rating, throws, jumps].forEach((value, column) => {
      const cell = sheet.getCell(index + 4, column + 1);
      cell.value = value;
      if (column === 0) dressDate(cell);
      else if (column < 3) dressText(cell);
      else dressNumber(cell, "0");
    });
  });
  freezeBelow(sheet, 3);
}
