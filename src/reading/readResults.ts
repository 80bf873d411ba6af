import { addressOf, compareAddresses } from "./address";
import { cellReader } from "./cellReader";
import { type Column, type ColumnMap, holdsResults, offsetOf, sideOfUse } from "./columns";
import { type Grid, isCellError, textOf } from "./grid";
import { seriesName } from "./measures";
import { readNames } from "./readNames";
import type { UnreadCode } from "./readNumber";
import { rowReader } from "./rowReader";
import type { TestResult } from "./testResult";
import { leaveOutUnitSlips } from "./unitSlips";
import { unitOf } from "./units";

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
  /** Names of the tests in the selection, each measure of a test by itself; [""] where the sheet names none. */
  readonly tests: readonly string[];
  readonly remarks: readonly Remark[];
};

/**
 * The typed results of a selection. Reads every cell it is told to use; a cell it cannot use becomes a remark with
 * its address, and the rest is read all the same. O(cells).
 */
export function readResults(grid: Grid, map: ColumnMap): Reading {
  const remarks: Remark[] = [];
  const rows = dataRows(grid, map, remarks);
  const names = readNames(grid, map, rows, remarks);
  const readRow = rowReader(grid, map, remarks);
  const readCell = cellReader(grid, remarks);
  const numberAttempt = attemptCounter();
  const results: TestResult[] = [];

  const columns = resultColumns(map);
  for (const row of rows) {
    const athlete = names.get(row);
    if (athlete === undefined) continue;
    const inRow = readRow(row);
    for (const column of columns) {
      const cell = addressOf(grid, row, column.offset);
      const unit = inRow.unit ?? column.unit;
      const value = readCell(row, column.offset, cell, unit === null ? null : unitOf(unit));
      if (value === null) continue;
      const side = sideOfUse(column.use) ?? inRow.side;
      if (inRow.unknownSide) {
        remarks.push(inRow.unknownSide);
        continue;
      }
      const test = inRow.test || column.test;
      const measure = inRow.measure ?? column.measure;
      const date = inRow.date ?? map.date;
      const attempt = inRow.attempt ?? column.attempt ?? numberAttempt([athlete, test, measure, side, date].join("|"));
      results.push({ athlete, test, measure, side, date, group: inRow.group, attempt, value, unit, cell });
    }
  }
  const kept = leaveOutUnitSlips(results, remarks);
  return {
    results: kept,
    athletes: [...new Set(names.values())],
    tests: [...new Set(kept.map(({ test, measure }) => seriesName(test, measure)))],
    remarks: remarks.sort((a, b) => compareAddresses(a.cell, b.cell)),
  };
}

/** The columns that hold results; in a wide sheet each is the first, second .. trial of its test and side. */
function resultColumns(map: ColumnMap): (Column & { readonly attempt: number | null })[] {
  const numberAttempt = attemptCounter();
  const columns = map.columns.filter(holdsResults);
  const isWide = columns.length > 1;
  return columns.map((column) => ({
    ...column,
    attempt: isWide ? numberAttempt(`${column.use}|${column.test}|${column.measure}`) : null,
  }));
}

/** Counts 1, 2, 3 .. for each key. */
function attemptCounter(): (key: string) => number {
  const counts = new Map<string, number>();
  return (key) => {
    const count = (counts.get(key) ?? 0) + 1;
    counts.set(key, count);
    return count;
  };
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
