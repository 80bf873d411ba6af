import { columnLetters, placeOf } from "../reading/address";

/** The rectangle around one or more areas, and which rows and columns (zero-based on the sheet) they really cover. */
export type Areas = {
  readonly address: string;
  readonly rows: ReadonlySet<number>;
  readonly columns: ReadonlySet<number>;
};

/** Takes an address as the program gives it, e.g. "'Hop test'!A3:A20,'Hop test'!D3:F20". */
export function areasOf(address: string): Areas {
  const rows = new Set<number>();
  const columns = new Set<number>();
  let [top, left, bottom, right] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, -1, -1];
  for (const area of splitAreas(address)) {
    const [from, to] = area.split(":").map(placeOf);
    const last = to ?? from!;
    top = Math.min(top, from!.row);
    left = Math.min(left, from!.column);
    bottom = Math.max(bottom, last.row);
    right = Math.max(right, last.column);
    for (let row = from!.row; row <= last.row; row++) rows.add(row);
    for (let column = from!.column; column <= last.column; column++) columns.add(column);
  }
  return { address: `${columnLetters(left)}${top + 1}:${columnLetters(right)}${bottom + 1}`, rows, columns };
}

/** An address of one area without its sheet: "'Hop test'!A3:F20" as "A3:F20". */
export const withoutSheet = (address: string): string => address.slice(address.lastIndexOf("!") + 1);

/** The areas of an address without their sheet, whose name may hold commas and exclamation marks within its quotes. */
export const splitAreas = (address: string): string[] =>
  [...address.matchAll(/(?:(?:'(?:[^']|'')*'|[^',!]+)!)?([^,!']+)(?:,|$)/g)].map((match) => match[1]!);
