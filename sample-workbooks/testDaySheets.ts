import type { Workbook } from "exceljs";
import { dressDate, dressNumber, dressText, freezeBelow, setHeadings, setTitle, setWidths, wrapHeadings } from "./look";
import { type TestDay, testDays } from "./testDays";

/** The headings stand below title, facts and date. */
export const testDayHeadingRow = 4;
const athleteHeadings = ["Athlete", "Role", "Team"];
/** Height of a heading row with so many lines, in points. */
const headingHeight = { field: 3 * 16, gym: 4 * 16 } as const;

const facts = {
  field:
    "Seniors and under-18, in the hall: sprint from a standing start through gates, 505 turn off either leg, overhead throw of a 3 kg ball, intermittent shuttle run.",
  gym: "Seniors and under-18: jumps on the contact mat (drop from 30 cm), squat and bench press to failure with a spotter, then capacity.",
} as const;

/** One sheet a day, one row an athlete: what the coach takes along on a board. */
export function addTestDaySheets(workbook: Workbook): void {
  for (const day of testDays()) addTestDaySheet(workbook, day);
}

function addTestDaySheet(workbook: Workbook, { sheet: name, place, date, title, headings, rows }: TestDay): void {
  const sheet = workbook.addWorksheet(name);
  setWidths(sheet, [24, 12, 10, ...headings.map(widthOf)]);
  setTitle(sheet, title, facts[place]);
  sheet.getCell("A3").value = "Date";
  dressText(sheet.getCell("A3"));
  sheet.getCell("B3").value = date;
  dressDate(sheet.getCell("B3"));
  setHeadings(sheet, testDayHeadingRow, [...athleteHeadings, ...headings], athleteHeadings.length);
  wrapHeadings(sheet, testDayHeadingRow, headingHeight[place]);
  rows.forEach(({ athlete, typed, cells }, index) => {
    const row = testDayHeadingRow + 1 + index;
    [typed, athlete.role, athlete.team].forEach((text, column) => {
      const cell = sheet.getCell(row, column + 1);
      cell.value = text;
      dressText(cell);
    });
    cells.forEach((value, column) => {
      const cell = sheet.getCell(row, athleteHeadings.length + column + 1);
      cell.value = value;
      dressNumber(cell, formatOf(headings[column]!));
    });
  });
  freezeBelow(sheet, testDayHeadingRow);
}

/** Wide enough, in any typeface, for the longest word of the heading, which wraps between words. */
const widthOf = (heading: string): number =>
  Math.max(10, ...heading.split(" ").map((word) => Math.round(1.3 * word.length + 2)));

/** Decimals as the instrument gives them. */
function formatOf(heading: string): string {
  if (/^(Sprint|505)/.test(heading)) return "0.00";
  return /\(kg\)|throw/.test(heading) ? "0.0" : "0";
}
