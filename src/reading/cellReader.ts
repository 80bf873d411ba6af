import { say } from "../language/say";
import type { Grid } from "./grid";
import { type MeasureKey, measureOf } from "./measures";
import { mergedCells } from "./mergedCells";
import { readNumber } from "./readNumber";
import type { Remark, RemarkCode } from "./readResults";
import type { Unit } from "./units";

/**
 * Reads a result; null where there is none to use, and then a remark says why. Results are above zero; only what is
 * counted (repetitions) may be zero as well.
 */
export function cellReader(grid: Grid, remarks: Remark[]) {
  const mergedAt = mergedCells(grid);
  return (row: number, column: number, cell: string, unit: Unit | null, measure: MeasureKey | null): number | null => {
    const leaveOut = (code: RemarkCode, why: string) => {
      remarks.push({ cell, code, leftOut: true, why });
      return null;
    };
    const read = readNumber(grid.cells[row]![column]!, unit);
    if (read.kind === "unread") return leaveOut(read.code, read.why);
    if (read.kind === "empty") {
      const merged = mergedAt(row, column);
      return merged
        ? leaveOut("merged", say`Part of the merged cells ${merged.address}: no value of its own.`)
        : leaveOut("empty", say`Empty: taken as a missing trial.`);
    }
    if (read.value < 0 || (read.value === 0 && !mayBeZero(unit, measure)))
      return leaveOut("notPositive", say`${read.value} is not a possible result; it must be above zero.`);
    if (read.remark) remarks.push({ cell, code: "converted", leftOut: false, why: read.remark });
    return read.value;
  };
}

const mayBeZero = (unit: Unit | null, measure: MeasureKey | null): boolean =>
  measure === null ? unit?.quantity === "count" : measureOf(measure).mayBeZero === true;
