import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type CellValue, Workbook } from "exceljs";
import { isLift, type TestKey, testKeys, testOf } from "../../sample-workbooks/battery";
import { injured, slips } from "../../sample-workbooks/plantedTruths";
import { columnLetters } from "../../src/reading/address";
import { holdsResults } from "../../src/reading/columns";
import type { Cell, Grid } from "../../src/reading/grid";
import { readResults } from "../../src/reading/readResults";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { days } from "./scores";

let workbook: Workbook;

beforeAll(async () => {
  workbook = new Workbook();
  const bytes = readFileSync(join(__dirname, "../../sample-workbooks/fjordvik-handball.xlsx"));
  await workbook.xlsx.load(bytes as unknown as ArrayBuffer);
});

/** A sheet as our reading gets it: days as serial numbers of the 1900 date system (day 0 is 30 December 1899). */
function gridOf(name: string): Grid {
  const sheet = workbook.getWorksheet(name)!;
  const cells = Array.from({ length: sheet.rowCount }, (_, row) =>
    Array.from({ length: sheet.columnCount }, (_, column) => asCell(sheet.getCell(row + 1, column + 1).value)),
  );
  const nothing = { hiddenRows: [], unselectedRows: [], unselectedColumns: [], mergedAreas: [] };
  return { sheet: name, firstRow: 0, firstColumn: 0, cells, ...nothing };
}

const asCell = (value: CellValue): Cell =>
  value instanceof Date ? value.getTime() / 86_400_000 + 25_569 : ((value ?? null) as Cell);

/** What a heading says: side, test, measure and unit, as a coach means them. */
function meant(key: TestKey): string[] {
  const { heading, unit, sides, trials } = testOf(key);
  const every = (columns: readonly string[]) => Array.from({ length: trials }, () => columns).flat();
  if (isLift(key)) return [`result: ${heading}, load, kg`, `result: ${heading}, repetitions, reps`];
  if (key === "sprint") {
    return every([5, 10, 20, 30].map((gate) => `result: Sprint, time${gate}, s`));
  }
  const [, test, flightOrContact] = /^(.*?)(?: (flight|contact) time)?$/.exec(heading)!;
  const measure = flightOrContact ? `${flightOrContact}Time` : null;
  return (sides === 2 ? ["left", "right"] : ["result"]).flatMap((use) =>
    every([`${use}: ${test}, ${measure}, ${unit}`]),
  );
}

describe("our reading of the test days", () => {
  it.each(days)("$sheet: knows the day and what each column holds", ({ sheet, date, place }) => {
    const map = recogniseColumns(gridOf(sheet));
    expect(map.date).toBe(date.toISOString().slice(0, 10));
    expect(map.columns[0]!.use).toBe("athlete");
    expect(map.columns[1]!.use).toBe("group");
    const read = map.columns
      .filter(holdsResults)
      .map(({ use, test, measure, unit }) => `${use}: ${test}, ${measure}, ${unit}`);
    expect(read).toEqual(testKeys.filter((key) => testOf(key).day === place).flatMap(meant));
  });

  it.each(days)("$sheet: reads every number but the planted slips", ({ sheet, headings, rows, occasion }) => {
    const grid = gridOf(sheet);
    const { results, athletes, remarks } = readResults(grid, recogniseColumns(grid));
    const slipped = slips
      .filter((slip) => slip.sheet === sheet)
      .map(({ athlete, heading }) => {
        const row = rows.findIndex((each) => each.athlete.name === athlete);
        return `${columnLetters(3 + headings.indexOf(heading))}${row + 5}`;
      });
    const left = remarks.filter(({ leftOut }) => leftOut);
    expect(left.filter(({ code }) => code === "unitSlip").map(({ cell }) => cell)).toEqual(slipped);
    const injuries = occasion === 2 ? headings.length : 0;
    expect(left.filter(({ code }) => code === "absent")).toHaveLength(injuries);
    expect(left).toHaveLength(slipped.length + injuries);
    expect(athletes).toEqual(rows.map(({ typed }) => typed));
    expect(athletes.includes(injured.athlete)).toBe(true);
    expect(results).toHaveLength(rows.length * headings.length - left.length);
  });
});
