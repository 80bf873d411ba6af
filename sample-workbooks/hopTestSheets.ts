import type { Workbook, Worksheet } from "exceljs";
import { type DirtyCell, dirtyHopTest, firstDirtyRow, hiddenRow, mergedTrials } from "./dirtyHopTest";
import { hopTest, hopTestDay } from "./hopTest";
import { dressDate, dressNumber, dressText, freezeBelow, setHeadings, setTitle, setWidths } from "./look";

const wideHeadings = [
  "Athlete",
  "Role",
  "Left 1 (cm)",
  "Left 2 (cm)",
  "Left 3 (cm)",
  "Right 1 (cm)",
  "Right 2 (cm)",
  "Right 3 (cm)",
];
const wideWidths = [24, 13, 14, 14, 14, 14, 14, 14];
const testName = "Single-leg hop for distance";
const testFacts = "Fjordvik HK seniors, 11 August 2026, in the hall. Distance from toe to heel, three trials a side.";

/** One row an athlete: the sheet a coach keeps beside the hall floor. */
export function addWideSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Hop test");
  prepareWideSheet(sheet, testFacts);
  hopTest().forEach(({ athlete, left, right }, index) => {
    fillWideRow(sheet, index + 4, athlete.name, athlete.role, [...left, ...right]);
  });
}

/** One row a trial: the same numbers as they come from a list kept by the hour. */
export function addLongSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Hop test long");
  setWidths(sheet, [13, 24, 27, 9, 10, 15]);
  setTitle(sheet, testName, `${testFacts} One row a trial.`);
  setHeadings(sheet, 3, ["Date", "Athlete", "Test", "Leg", "Attempt", "Distance (cm)"], 4);
  let row = 4;
  for (const { athlete, left, right } of hopTest()) {
    for (const [leg, trials] of [["Left", left] as const, ["Right", right] as const]) {
      trials.forEach((distance, trial) => {
        fillLongRow(sheet, row, [hopTestDay, athlete.name, testName, leg, trial + 1, distance]);
        row += 1;
      });
    }
  }
  freezeBelow(sheet, 3);
}

/** The wide sheet as it comes back from a hurried afternoon: every kind of mess a reading has to name. */
export function addDirtySheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Hop test dirty");
  prepareWideSheet(sheet, "The same afternoon as a hurried helper might have typed it: every mess here is planted.");
  dirtyHopTest().forEach(({ athlete, role, trials }, index) => {
    fillWideRow(sheet, index + firstDirtyRow, athlete, role, trials);
  });
  sheet.mergeCells(mergedTrials);
  sheet.getRow(hiddenRow).hidden = true;
}

function prepareWideSheet(sheet: Worksheet, facts: string): void {
  setWidths(sheet, wideWidths);
  setTitle(sheet, testName, facts);
  setHeadings(sheet, 3, wideHeadings, 2);
  freezeBelow(sheet, 3);
}

function fillWideRow(sheet: Worksheet, row: number, athlete: string, role: string, trials: readonly DirtyCell[]): void {
  for (const [index, text] of [athlete, role].entries()) {
    const cell = sheet.getCell(row, index + 1);
    cell.value = text;
    dressText(cell);
  }
  trials.forEach((trial, index) => {
    const cell = sheet.getCell(row, index + 3);
    cell.value = cellValue(trial);
    dressNumber(cell, "0");
  });
}

function fillLongRow(sheet: Worksheet, row: number, values: readonly (Date | string | number)[]): void {
  values.forEach((value, index) => {
    const cell = sheet.getCell(row, index + 1);
    cell.value = value;
    if (typeof value === "number") dressNumber(cell, "0");
    else if (value instanceof Date) dressDate(cell);
    else dressText(cell);
  });
}

const cellValue = (cell: DirtyCell) =>
  typeof cell === "object" && cell !== null
    ? { formula: cell.formula, result: { error: cell.error as "#DIV/0!" } }
    : cell;
