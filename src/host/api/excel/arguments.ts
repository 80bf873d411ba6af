import type { Area, Rectangle } from "../../engine/area";
import { isOnSheet, isUnbounded } from "../../engine/area";
import type { Book } from "../../engine/book";
import { resolveArea } from "../../engine/references";
import { activeSheetId } from "../../engine/selection";
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

/** A range as it is given: itself, or by its address, which is of the sheet `id` where it names none. */
export function areaGiven(book: Book, given: unknown, id: string, what: string): Area | null {
  return typeof given === "object" && given !== null
    ? (given as Area)
    : resolveArea(book, text(given, what), { book, id });
}

/** The one cell that something belongs to, on a sheet or, with null, on any. */
export function cellGiven(
  { book, sheetId }: { readonly book: Book; readonly sheetId: string | null },
  given: unknown,
  what: string,
): Area {
  const area = areaGiven(book, given, sheetId ?? activeSheetId(book), "A cell's address");
  if (area?.rowCount !== 1 || area.columnCount !== 1) {
    return refuse("InvalidArgument", `${what} belongs to one cell.`);
  }
  return sheetId === null || area.sheetId === sheetId
    ? area
    : refuse("InvalidArgument", "The cell is on another worksheet.");
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
