import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook, type Worksheet } from "exceljs";
import { diary } from "../../sample-workbooks/diary";
import {
  implausible,
  injured,
  lateJoiner,
  misspelt,
  overdue,
  slips,
  spike,
  swappedSides,
} from "../../sample-workbooks/plantedTruths";
import { squad } from "../../sample-workbooks/squad";
import { testDayHeadingRow } from "../../sample-workbooks/testDaySheets";
import { days } from "./scores";

let workbook: Workbook;

beforeAll(async () => {
  workbook = new Workbook();
  const bytes = readFileSync(join(__dirname, "../../sample-workbooks/fjordvik-handball.xlsx"));
  await workbook.xlsx.load(bytes as unknown as ArrayBuffer);
});

const sheetCalled = (name: string): Worksheet => workbook.getWorksheet(name)!;

const rowOf = (sheet: Worksheet, row: number): unknown[] => (sheet.getRow(row).values as unknown[]).slice(1);

const columnOf = (sheet: Worksheet, column: number, below: number): unknown[] =>
  (sheet.getColumn(column).values as unknown[]).slice(below + 1);

/** The cell of an athlete below a heading of a test day. */
const cellAt = (sheet: Worksheet, athlete: string, heading: string): unknown => {
  const row = columnOf(sheet, 1, 0).indexOf(athlete) + 1;
  return sheet.getCell(row, rowOf(sheet, testDayHeadingRow).indexOf(heading) + 1).value;
};

describe("the squad's sheet", () => {
  it("lists 26 seniors and 18 under 18, by year of birth alone", () => {
    const sheet = sheetCalled("Squad");
    const headings = ["Name", "Role", "Team", "Throwing hand", "Take-off leg", "Birth year", "Body mass (kg)"];
    expect(rowOf(sheet, 3)).toEqual([...headings, "Stature (cm)", "Notes"]);
    const teams = columnOf(sheet, 3, 3);
    expect([teams.length, teams.filter((team) => team === "Seniors").length]).toEqual([44, 26]);
    // 17 or younger when the season starts in 2026, and a senior is 18 or older.
    squad.forEach(({ team, birthYear }, index) => {
      expect(sheet.getCell(index + 4, 6).value).toBe(birthYear);
      expect(team === "Seniors" ? birthYear <= 2008 : birthYear >= 2009).toBe(true);
    });
  });

  it("gives bodies that handball players can have (common practice, no source)", () => {
    for (const { bodyMass, stature } of squad) {
      expect(bodyMass / (stature / 100) ** 2).toBeGreaterThan(18);
      expect(bodyMass / (stature / 100) ** 2).toBeLessThan(29);
      expect(stature).toBeGreaterThan(154);
      expect(stature).toBeLessThan(192);
    }
  });
});

describe("the test days", () => {
  it.each(days)("$sheet: date, headings and numbers as they were drawn, names in sight", (day) => {
    const sheet = sheetCalled(day.sheet);
    expect(sheet.getCell("B3").value).toEqual(day.date);
    expect(rowOf(sheet, testDayHeadingRow)).toEqual(["Athlete", "Role", "Team", ...day.headings]);
    day.rows.forEach(({ athlete, typed, cells }, index) => {
      expect(rowOf(sheet, testDayHeadingRow + 1 + index)).toEqual([typed, athlete.role, athlete.team, ...cells]);
    });
    expect(sheet.rowCount).toBe(testDayHeadingRow + day.rows.length);
    expect(sheet.views[0]).toMatchObject({ state: "frozen", xSplit: 1, ySplit: testDayHeadingRow });
    expect(new Set(day.headings).size).toBe(day.headings.length);
  });

  it("repeats each session's headings, so that days can be compared", () => {
    const [field, gym] = [days.filter(({ place }) => place === "field"), days.filter(({ place }) => place === "gym")];
    for (const same of [field, gym]) {
      expect(same).toHaveLength(3);
      for (const { headings } of same) expect(headings).toEqual(same[0]!.headings);
    }
    const [first, second, retest] = field.map(({ date }) => date.getTime() / 86_400_000);
    expect([second! - first!, retest! - second!]).toEqual([7, 63]);
  });

  it("has a week of testing before the block and a retest after it", () => {
    const diaryDays = diary().map(({ date }) => date.getTime());
    const testDays = days.map(({ date }) => date.getTime());
    expect(Math.max(...testDays.slice(0, 4))).toBeLessThan(Math.min(...diaryDays));
    expect(Math.max(...diaryDays)).toBeLessThan(testDays[4]!);
  });
});

describe("what was planted stands in the cells", () => {
  it("a lost comma and a time in milliseconds", () => {
    expect(slips.map(({ sheet, athlete, heading }) => cellAt(sheetCalled(sheet), athlete, heading))).toEqual([
      482, 1980,
    ]);
  });

  it("a flight time nobody can fly", () => {
    expect(cellAt(sheetCalled(implausible.sheet), implausible.athlete, implausible.heading)).toBe(968);
  });

  it("a left and right swapped on one of three days", () => {
    const right = days
      .filter(({ place }) => place === "gym")
      .map(({ sheet }) => [
        sheet,
        Number(cellAt(sheetCalled(sheet), swappedSides.athlete, "Single-leg hop right 1 (cm)")) >
          Number(cellAt(sheetCalled(sheet), swappedSides.athlete, "Single-leg hop left 1 (cm)")),
      ]);
    expect(right.filter(([, isLarger]) => !isLarger)).toEqual([[swappedSides.sheet, false]]);
  });

  it("a name in another spelling, on one sheet only", () => {
    const spelled = days.map(({ sheet }) => [sheet, columnOf(sheetCalled(sheet), 1, 0).includes(misspelt.typed)]);
    expect(spelled.filter(([, isThere]) => isThere)).toEqual([[misspelt.sheet, true]]);
    expect(columnOf(sheetCalled(misspelt.sheet), 1, 0)).not.toContain(misspelt.athlete);
    expect(columnOf(sheetCalled("Squad"), 1, 0)).not.toContain(misspelt.typed);
  });

  it("one athlete who joined late, one who missed the retest, one injured at it", () => {
    const sheetsOf = (athlete: string) => days.map(({ sheet }) => columnOf(sheetCalled(sheet), 1, 0).includes(athlete));
    expect(sheetsOf(lateJoiner.athlete)).toEqual([false, false, false, false, true, true]);
    expect(sheetsOf(overdue.athlete)).toEqual([true, true, true, true, false, false]);
    for (const { sheet, headings } of days.slice(4)) {
      const texts = headings.map((heading) => cellAt(sheetCalled(sheet), injured.athlete, heading));
      expect(new Set(texts)).toEqual(new Set(["inj"]));
    }
  });
});

describe("the diary", () => {
  it("has a row a session and athlete, with real days", () => {
    const sheet = sheetCalled("Diary");
    expect(rowOf(sheet, 3)).toEqual(["Date", "Athlete", "Session", "Minutes", "Rating (0-10)", "Throws", "Jumps"]);
    const rows = diary();
    expect(sheet.rowCount).toBe(3 + rows.length);
    rows.forEach(({ date, athlete, session, minutes, rating, throws, jumps }, index) => {
      const values = [date, athlete, session, minutes, rating, throws, jumps];
      values.forEach((value, column) => {
        expect(sheet.getCell(index + 4, column + 1).value).toEqual(value);
      });
    });
  });

  it("has no entry of one not yet there, nor of one injured; and the camp of one athlete only", () => {
    const entriesOf = (athlete: string) => diary().filter((row) => row.athlete === athlete);
    const iso = (date: Date) => date.toISOString().slice(0, 10);
    expect(entriesOf(lateJoiner.athlete).every(({ date }) => iso(date) >= lateJoiner.joined)).toBe(true);
    expect(entriesOf(injured.athlete).every(({ date }) => iso(date) <= injured.lastDay)).toBe(true);
    expect(entriesOf(injured.athlete).length).toBeGreaterThan(20);
    const camp = diary().filter(({ session }) => session === "Selection camp");
    expect([camp.length, ...new Set(camp.map(({ athlete }) => athlete))]).toEqual([3, spike.athlete]);
  });
});
