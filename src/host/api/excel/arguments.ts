import type { Area, Rectangle } from "../../engine/area";
import { isOnSheet, isUnbounded } from "../../engine/area";
import { refuse } from "../errors";
import { enumerations } from "../published/enumerations";

/** A whole number within bounds, or InvalidArgument. */
export function wholeNumber(value: unknown, what: string, least = Number.NEGATIVE_INFINITY): number {
  return typeof value === "number" && Number.isInteger(value) && value >= least
    ? value
    : refuse("InvalidArgument", `${what} is a whole number${least > -1e9 ? ` from ${least}` : ""}.`);
}

export const text = (value: unknown, what: string): string =>
  typeof value === "string" ? value : refuse("InvalidArgument", `${what} is text.`);

/** The rectangle on the area's sheet, or InvalidArgument where it leaves the sheet. */
export function onSheet(area: Area, rectangle: Rectangle): Area {
  const { row, column, rowCount, columnCount } = rectangle;
  const moved = { ...area, row, column, rowCount, columnCount };
  return isOnSheet(moved) ? moved : refuse("InvalidArgument", "The range leaves the worksheet.");
}

/** The words of a published enumeration. */
export const wordsOf = (enumeration: string): string[] => Object.values(enumerations[enumeration] ?? {}).map(String);

/** One of the values an enumeration has. */
export function oneOf<T extends string>(value: unknown, values: readonly T[], what: string): T {
  return values.includes(value as T)
    ? (value as T)
    : refuse("InvalidArgument", `${what} is one of ${values.join(", ")}.`);
}

/**
 * Values for each cell of an area: one value for all, or rows of the area's very shape
 * (office/dev/add-ins/excel/excel-add-ins-ranges-set-get-values).
 */
export function cellGrid(area: Area, given: unknown): unknown[][] {
  if (isUnbounded(area)) {
    refuse("InvalidArgument", "Cells of an unbounded range cannot be set (excel-add-ins-ranges-unbounded).");
  }
  if (!Array.isArray(given)) {
    return Array.from({ length: area.rowCount }, () => Array.from({ length: area.columnCount }, () => given));
  }
  const fits =
    given.length === area.rowCount && given.every((row) => Array.isArray(row) && row.length === area.columnCount);
  if (!fits) {
    const width = Array.isArray(given[0]) ? given[0].length : 0;
    refuse(
      "InvalidArgument",
      `The number of rows or columns in the input array doesn't match the size of the range: ${given.length} x ${width} given, ${area.rowCount} x ${area.columnCount} wanted.`,
    );
  }
  return given as unknown[][];
}
