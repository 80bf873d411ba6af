import { addressOf, compareAddresses } from "./address";
import { type ColumnMap, offsetOf, sideOfUse } from "./columns";
import { type Cell, type Grid, isCellError, textOf } from "./grid";
import { mergedCells } from "./mergedCells";
import { readDate } from "./readDate";
import { readNames } from "./readNames";
import { readNumber, shorten, type UnreadCode } from "./readNumber";
import { leaveOutUnitSlips } from "./unitSlips";
import { unitOf } from "./units";
import { type Side, sideOf } from "./vocabulary";

/** One result of one athlete, with the cell it came from. */
export type TestResult = {
  readonly athlete: string;
  readonly test: string;
  readonly side: Side | null;
  /** Day of the test, ISO; null where the sheet does not say. */
  readonly date: string | null;
  readonly value: number;
  readonly cell: string;
};

/** Something in the selection that the coach should know of: left out, or used with a remark. */
export type Remark = {
  readonly cell: string;
  readonly code: RemarkCode;
  readonly why: string;
  /** Whether a result is missing from the computation because of it. */
  readonly leftOut: boolean;
};

export type RemarkCode =
  | UnreadCode
  | "empty"
  | "converted"
  | "hiddenRow"
  | "noAthlete"
  | "unknownSide"
  | "date"
  | "merged"
  | "duplicate"
  | "nearDuplicate";

export type Reading = {
  readonly results: readonly TestResult[];
  /** Every athlete named in the selection, in sheet order, also those without a result. */
  readonly athletes: readonly string[];
  /** Names of the tests in the selection; [""] where the sheet names none. */
  readonly tests: readonly string[];
  readonly remarks: readonly Remark[];
  readonly unit: string | null;
};

/**
 * The typed results of a selection. Reads every cell it is told to use; a cell it cannot use becomes a remark with
 * its address, and the rest is read all the same. O(cells).
 */
export function readResults(grid: Grid, map: ColumnMap): Reading {
  const unit = map.unit === null ? null : unitOf(map.unit);
  const remarks: Remark[] = [];
  const rows = dataRows(grid, map, remarks);
  const names = readNames(grid, map, rows, remarks);
  const results: TestResult[] = [];

  const resultColumns = map.columns.filter((column) => ["left", "right", "result"].includes(column.use));
  const sideColumn = offsetOf(map, "side");
  const testColumn = offsetOf(map, "test");
  const dateColumn = offsetOf(map, "date");
  const mergedAt = mergedCells(grid);
  for (const row of rows) {
    const athlete = names.get(row);
    if (athlete === undefined) continue;
    const cells = grid.cells[row]!;
    const sideInRow = sideColumn === null ? null : readSide(cells[sideColumn]!);
    const date = dateColumn === null ? null : dateOf(grid, row, dateColumn, remarks);
    const testInRow = testColumn === null ? "" : textOf(cells[testColumn]!);
    for (const column of resultColumns) {
      const cell = addressOf(grid, row, column.offset);
      const number = readNumber(cells[column.offset]!, unit);
      if (number.kind === "empty") {
        const merged = mergedAt(row, column.offset);
        if (merged)
          remarks.push({
            cell,
            code: "merged",
            leftOut: true,
            why: `Part of the merged cells ${merged.address}: no value of its own.`,
          });
        else remarks.push({ cell, code: "empty", leftOut: true, why: "Empty: taken as a missing trial." });
        continue;
      }
      if (number.kind === "unread") {
        remarks.push({ cell, code: number.code, leftOut: true, why: number.why });
        continue;
      }
      const side = sideOfUse(column.use) ?? sideInRow;
      if (sideColumn !== null && side === null) {
        const shown = textOf(cells[sideColumn]!);
        const sideCell = addressOf(grid, row, sideColumn);
        const why =
          shown === ""
            ? "No side is given; left or right is needed."
            : `“${shorten(shown)}” is neither left nor right.`;
        remarks.push({ cell: sideCell, code: "unknownSide", leftOut: true, why });
        continue;
      }
      if (number.value <= 0) {
        remarks.push({
          cell,
          code: "notPositive",
          leftOut: true,
          why: `${number.value} is not a possible result; it must be above zero.`,
        });
        continue;
      }
      if (number.remark) remarks.push({ cell, code: "converted", leftOut: false, why: number.remark });
      results.push({ athlete, test: testInRow || column.test, side, date, value: number.value, cell });
    }
  }
  const kept = leaveOutUnitSlips(results, unit, remarks);
  return {
    results: kept,
    athletes: [...new Set(names.values())],
    tests: [...new Set(kept.map((result) => result.test))],
    remarks: remarks.sort((a, b) => compareAddresses(a.cell, b.cell)),
    unit: map.unit,
  };
}

const readSide = (cell: Cell): Side | null => (typeof cell === "string" ? sideOf(cell) : null);

/** The day in a row; one that cannot be read is told, and the row's results are used without it. */
function dateOf(grid: Grid, row: number, column: number, remarks: Remark[]): string | null {
  const read = readDate(grid.cells[row]![column]!);
  if (read.kind === "date") return read.date;
  if (read.kind === "unread") {
    remarks.push({ cell: addressOf(grid, row, column), code: "date", leftOut: false, why: read.why });
  }
  return null;
}

/** Rows to read: below the headings, not hidden (unless asked for), not wholly empty. */
function dataRows(grid: Grid, map: ColumnMap, remarks: Remark[]): number[] {
  const hidden = new Set(map.includeHiddenRows ? [] : grid.hiddenRows);
  const skipped = new Set(grid.unselectedRows);
  const used = map.columns.filter((column) => column.use !== "none").map((column) => column.offset);
  const rows: number[] = [];
  for (let row = map.firstDataRow; row < grid.cells.length; row++) {
    if (skipped.has(row)) continue;
    if (used.every((offset) => textOf(grid.cells[row]![offset]!) === "" && !isCellError(grid.cells[row]![offset]!)))
      continue;
    if (hidden.has(row)) {
      const cell = addressOf(grid, row, offsetOf(map, "athlete") ?? 0);
      const name = textOf(grid.cells[row]![offsetOf(map, "athlete") ?? 0]!);
      remarks.push({
        cell,
        code: "hiddenRow",
        leftOut: true,
        why: `The row${name ? ` of ${name}` : ""} is hidden and was left out.`,
      });
    } else rows.push(row);
  }
  return rows;
}
