import { type Grid, textOf } from "./grid";
import type { Heading } from "./heading";
import { absenceWords, sideOf } from "./vocabulary";

/** A column as it shows itself: its heading, and how many of its cells are of which kind. */
export type DescribedColumn = {
  readonly offset: number;
  readonly heading: Heading;
  /** Numbers, also those typed as text ("182 cm"). */
  readonly numbers: number;
  readonly texts: number;
  readonly sides: number;
  /** Middle of the plain numbers; null where there are none. */
  readonly middle: number | null;
  readonly selected: boolean;
};

export function describeColumn(grid: Grid, offset: number, heading: Heading, firstDataRow: number): DescribedColumn {
  const plain: number[] = [];
  let numbers = 0;
  let texts = 0;
  let sides = 0;
  for (let row = firstDataRow; row < grid.cells.length; row++) {
    const cell = grid.cells[row]![offset]!;
    const text = typeof cell === "string" ? textOf(cell) : "";
    if (typeof cell === "number") plain.push(cell);
    else if (/^[+-]?\d+(?:[.,]\d+)?\s*[A-Za-z/"%]*$/.test(text)) numbers++;
    else if (text !== "" && absenceWords[text.toLowerCase()] === undefined) {
      texts++;
      if (sideOf(text) !== null) sides++;
    }
  }
  plain.sort((a, b) => a - b);
  return {
    offset,
    heading,
    numbers: numbers + plain.length,
    texts,
    sides,
    middle: plain[Math.floor(plain.length / 2)] ?? null,
    selected: !grid.unselectedColumns.includes(offset),
  };
}
