import type { Workbook } from "exceljs";
import { dressNumber, dressText, freezeBelow, setHeadings, setTitle, setWidths } from "./look";
import { noteOn, squad } from "./squad";

const headings = [
  ...["Name", "Role", "Team", "Throwing hand", "Take-off leg"],
  ...["Birth year", "Body mass (kg)", "Stature (cm)", "Notes"],
];
const formats = [null, null, null, null, null, "0", "0.0", "0", null];

export function addSquadSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Squad");
  setWidths(sheet, [24, 13, 11, 17, 14, 13, 18, 16, 62]);
  setTitle(sheet, "Squad", "Fjordvik HK, season 2026/27: seniors and under-18.");
  setHeadings(sheet, 3, headings, 5);
  sheet.getCell("I3").alignment = { vertical: "middle", horizontal: "left", indent: 1 };
  squad.forEach((member, index) => {
    const { name, role, team, throwingHand, takeOffLeg, birthYear, bodyMass, stature } = member;
    const values = [name, role, team, throwingHand, takeOffLeg, birthYear, bodyMass, stature, noteOn(name)];
    values.forEach((value, column) => {
      const cell = sheet.getCell(index + 4, column + 1);
      cell.value = value;
      const format = formats[column];
      if (format) dressNumber(cell, format);
      else dressText(cell);
    });
    sheet.getCell(index + 4, values.length).alignment = { indent: 1 };
  });
  freezeBelow(sheet, 3);
}
