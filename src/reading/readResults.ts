import { say } from "../language/say";
import { addressOf, compareAddresses } from "./address";
import { type BodyFacts, bodyUnits } from "./bodyFacts";
import { cellReader } from "./cellReader";
import { type Column, type ColumnMap, isBodyUse, type NamedTest, offsetOf, sideOfUse } from "./columns";
import { type Grid, isCellError, textOf } from "./grid";
import { inOneUnit } from "./inOneUnit";
import { fitsMeasure, type MeasureKey, seriesName } from "./measures";
import { bodyReader } from "./readBodies";
import { type Alike, readNames } from "./readNames";
import { shorten, type UnreadCode } from "./readNumber";
import { type InRow, rowReader } from "./rowReader";
import type { TestResult } from "./testResult";
import { counter, resultColumns, trialNumber } from "./trialNumbers";
import { leaveOutUnitSlips } from "./unitSlips";
import { type Unit, unitOf } from "./units";

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
  | "nearDuplicate"
  | "sameAthlete"
  | "measure"
  | "implausible";

export type Reading = {
  readonly results: readonly TestResult[];
  /** Every athlete named in the selection, in sheet order, also those without a result. */
  readonly athletes: readonly string[];
  /** Names that may be one person's; read as such only where the map says so. */
  readonly alike: readonly Alike[];
  /** One for each athlete of whom body mass or stature stands in the selection. */
  readonly bodies: readonly BodyFacts[];
  /** Names of the tests in the selection, each measure of a test by itself; [""] where the sheet names none. */
  readonly tests: readonly string[];
  readonly remarks: readonly Remark[];
};

/**
 * The typed results of a selection, each series in one unit. Reads every cell it is told to use; a cell it cannot use
 * becomes a remark with its address, and the rest is read all the same. O(cells).
 */
export function readResults(grid: Grid, map: ColumnMap): Reading {
  const remarks: Remark[] = [];
  const rows = dataRows(grid, map, remarks);
  const names = readNames(grid, map, rows, remarks);
  const bodies = bodyReader(grid, map, remarks);
  const results = resultsOf(grid, map, names.ofRow, bodies, remarks);
  const kept = leaveOutUnitSlips(inOneUnit(results, remarks), remarks);
  return {
    results: kept,
    athletes: [...new Set(names.ofRow.values())],
    alike: names.alike,
    bodies: bodies.facts(),
    tests: [...new Set(kept.map(({ test, measure }) => seriesName(test, measure)))],
    remarks: remarks.sort((a, b) => compareAddresses(a.cell, b.cell)),
  };
}

function resultsOf(
  grid: Grid,
  map: ColumnMap,
  athletes: ReadonlyMap<number, string>,
  bodies: ReturnType<typeof bodyReader>,
  remarks: Remark[],
): TestResult[] {
  const readRow = rowReader(grid, map, remarks);
  const readCell = cellReader(grid, remarks);
  const columns = resultColumns(map);
  const rowsTogether = counter();
  const readAs = (test: string, measure: MeasureKey | null): NamedTest => {
    const name = seriesName(test, measure);
    return Object.hasOwn(map.sameTest, name) ? map.sameTest[name]! : { test, measure };
  };
  const results: TestResult[] = [];
  for (const [row, athlete] of athletes) {
    const inRow = readRow(row);
    bodies.readRow(athlete, row);
    if (inRow.unknownSide && !isBlank(grid, row, [...columns.map(({ offset }) => offset), offsetOf(map, "side")!])) {
      remarks.push(inRow.unknownSide);
      continue;
    }
    const asRead = readAs(inRow.test, inRow.measure);
    const together = [athlete, asRead.test, asRead.measure, inRow.side, inRow.date].join("|");
    const rowNumber = inRow.attempt ?? rowsTogether.next(together);
    for (const column of columns) {
      const cell = addressOf(grid, row, column.offset);
      const measure = inRow.saysMeasure ? inRow.measure : (inRow.measure ?? column.measure);
      const unit = unitIn(inRow, column);
      if (measure !== null && isBodyUse(measure)) {
        bodies.readCell(athlete, row, column.offset, measure, unit ?? unitOf(bodyUnits[measure]));
        continue;
      }
      const value = readCell(row, column.offset, cell, unit, measure);
      if (value === null) continue;
      const side = sideOfUse(column.use) ?? inRow.side;
      const attempt = trialNumber(rowNumber, column);
      const { date, group } = inRow;
      const named = readAs(inRow.test || column.test, measure);
      results.push({ athlete, ...named, side, date, group, attempt, value, unit: unit?.symbol ?? null, cell });
    }
  }
  return results;
}

/** A row's own unit goes before its column's, but kilograms beside a load are not the unit of its repetitions. */
function unitIn({ unit, unknownUnit, saysMeasure }: InRow, column: Column): Unit | null {
  if (unknownUnit) return null;
  const isForOther = !saysMeasure && !fitsMeasure(unit, column.measure);
  return unit !== null && !isForOther ? unit : column.unit === null ? null : unitOf(column.unit);
}

/** Rows to read: below the headings, not hidden (unless asked for), not wholly empty. */
function dataRows(grid: Grid, map: ColumnMap, remarks: Remark[]): number[] {
  const hidden = new Set(map.includeHiddenRows ? [] : grid.hiddenRows);
  const skipped = new Set(grid.unselectedRows);
  const used = map.columns.filter((column) => column.use !== "none").map((column) => column.offset);
  const rows: number[] = [];
  for (let row = map.firstDataRow; row < grid.cells.length; row++) {
    if (skipped.has(row)) continue;
    if (isBlank(grid, row, used)) continue;
    if (hidden.has(row)) {
      const cell = addressOf(grid, row, offsetOf(map, "athlete") ?? 0);
      const name = textOf(grid.cells[row]![offsetOf(map, "athlete") ?? 0]!);
      remarks.push({
        cell,
        code: "hiddenRow",
        leftOut: true,
        why: say`The row${name ? say` of ${shorten(name)}` : ""} is hidden and was left out.`,
      });
    } else rows.push(row);
  }
  return rows;
}

const isBlank = (grid: Grid, row: number, columns: readonly number[]): boolean =>
  columns.every((column) => textOf(grid.cells[row]![column]!) === "" && !isCellError(grid.cells[row]![column]!));
