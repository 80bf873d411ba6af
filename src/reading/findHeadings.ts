import { placeOf } from "./address";
import { type Cell, type Grid, isCellError, textOf } from "./grid";
import { type Heading, readHeading } from "./heading";
import { readDate } from "./readDate";
import { unitOf } from "./units";

/** How far down a heading is looked for: titles, dates and notes often stand above it. */
const rowsSearched = 20;
/** Test over side over trial is as deep as headings go. */
const mostRows = 3;
/** Longer text is a sentence. */
const longestHeading = 60;
const longestGroup = 40;

export type Headings = {
  readonly firstRow: number;
  readonly lastRow: number;
  /** One for each column of the grid. */
  readonly columns: readonly Heading[];
};

/** The rows of headings, one to three, with the names of groups carried over their columns; null where there are none. */
export function findHeadings(grid: Grid): Headings | null {
  const rows = grid.cells.slice(0, rowsSearched);
  const start = firstHeadingRow(rows);
  if (start === null) return null;
  let last = start;
  while (last - start + 1 < mostRows && rows[last + 1] && continuesBelow(rows[last + 1]!, rows.slice(start, last + 1)))
    last++;
  let first = start;
  while (last - first + 1 < mostRows && first > 0 && isGroupRow(rows[first - 1]!, rows[first]!)) first--;
  return { firstRow: first, lastRow: last, columns: columnsOf(grid, first, last) };
}

function firstHeadingRow(rows: readonly (readonly Cell[])[]): number | null {
  const at = rows.findIndex((row, index) => {
    if (isHeadingRow(row)) return true;
    const next = rows.slice(index + 1).find((below) => below.some((cell) => cell !== null));
    return isNamesRow(row) && !(next && isHeadingRow(next));
  });
  return at < 0 ? null : at;
}

const isHeadingRow = (cells: readonly Cell[]): boolean => cells.filter(isHeadingWord).length >= 2;

/** "Athlete | Hop | Grip": names of tests alone, behind the word for the athletes; of a list of names, that word by itself. */
const isNamesRow = (cells: readonly Cell[]): boolean => {
  const filled = cells.filter((cell) => cell !== null && textOf(cell) !== "");
  return (
    filled.length >= Math.min(2, cells.length) &&
    filled.every((cell) => typeof cell === "string" && cell.length <= longestGroup && headingOf(cell) !== null) &&
    filled.some((cell) => headingOf(cell)?.named === "athlete")
  );
};

function isHeadingWord(cell: Cell): boolean {
  const heading = headingOf(cell);
  if (heading === null) return false;
  const { unit, named, side, measure, body, isNumbered, stem } = heading;
  return [unit, named, side, measure, body].some((part) => part !== null) || (isNumbered && stem === "");
}

/** What a cell says as a heading; null where it cannot be one. "182 cm" is a result typed as text, "10 m" a split. */
function headingOf(cell: Cell): Heading | null {
  if (typeof cell !== "string" || cell.trim() === "" || cell.length > longestHeading) return null;
  const heading = readHeading([cell]);
  return isMeasurement(cell) && heading.measure === null ? null : heading;
}

const isMeasurement = (text: string): boolean => /^\s*[+-]?\d+(?:[.,]\d+)?\s*[A-Za-z/"%]*\s*$/.test(text);

/** A second row of headings: of trials, of sides, of units, or of more words. The athletes' column is empty in it. */
function continuesBelow(cells: readonly Cell[], above: readonly (readonly Cell[])[]): boolean {
  const texts = cells.map(asText).filter((text) => text !== "");
  if (texts.length === 0 || cells.some(isCellError)) return false;
  const athletesAt = above.map(athletesColumn).find((column) => column >= 0);
  const isFilled = athletesAt === undefined ? texts.length === cells.length : asText(cells[athletesAt]!) !== "";
  if (isFilled && !(athletesAt === undefined && athletesColumn(cells) >= 0)) return false;
  if (texts.length >= 2 && texts.every((text) => /^(?:[A-Za-z]+\.?\s*)?[1-9]$/.test(text))) return true;
  if (texts.every((text) => unitOf(text.replace(/^[([]|[)\]]$/g, "")) !== null)) return true;
  return isHeadingRow(cells) && !cells.some((cell) => typeof cell === "number");
}

const athletesColumn = (cells: readonly Cell[]): number =>
  cells.findIndex((cell) => headingOf(cell)?.named === "athlete");

/** A row right above the headings that names groups of them: tests over trials. A title, a date or a note is none. */
function isGroupRow(cells: readonly Cell[], below: readonly Cell[]): boolean {
  let groups = 0;
  return (
    cells.every((cell, column) => {
      const text = textOf(cell);
      if (text === "") return true;
      if (isCellError(cell) || text.length > longestGroup || text.includes(":") || readDate(cell).kind === "date")
        return false;
      if (asText(below[column]!) === "") return true;
      groups++;
      return !describesRow(headingOf(below[column]!));
    }) && groups > 0
  );
}

/** A heading that speaks of the athlete or the whole row belongs to no group. */
const describesRow = (heading: Heading | null): boolean =>
  heading !== null && ((heading.named !== null && heading.named !== "result") || heading.body !== null);

const asText = (cell: Cell): string =>
  typeof cell === "string" ? cell.trim() : typeof cell === "number" ? String(cell) : "";

function columnsOf(grid: Grid, first: number, last: number): Heading[] {
  let below = grid.cells[last]!.map(asText);
  const levels = [below];
  for (let row = last - 1; row >= first; row--) {
    below = carried(grid.cells[row]!.map(asText), below, spansIn(grid, row));
    levels.unshift(below);
  }
  return below.map((_, column) => readHeading(levels.map((level) => level[column]!).filter((text) => text !== "")));
}

/**
 * A group's name stands once over its columns: merged across them, or in the first of them and then up to the next, or to
 * a column that brings a name of its own where the first had none ("Hop" over "Left", "Right", and then "Grip").
 */
function carried(groups: readonly string[], below: readonly string[], spans: ReadonlyMap<number, number>): string[] {
  const hasName = (column: number) => readHeading([below[column]!]).stem !== "";
  let current = "";
  let isOfNamed = false;
  return groups.map((group, column) => {
    if (spans.size > 0) {
      const from = spans.get(column);
      return from === undefined ? group : (groups[from] ?? group);
    }
    if (group !== "") {
      current = group;
      isOfNamed = hasName(column);
    } else if (!isOfNamed && hasName(column)) current = "";
    return below[column] === "" || describesRow(readHeading([below[column]!])) ? group : current;
  });
}

/** Columns of a row that lie in an area merged across several columns, each with the column its text stands in. */
function spansIn(grid: Grid, row: number): Map<number, number> {
  const spans = new Map<number, number>();
  for (const address of grid.mergedAreas) {
    const [from, to] = address.split(":").map(placeOf);
    if (!to || to.column === from!.column) continue;
    if (from!.row > grid.firstRow + row || to.row < grid.firstRow + row) continue;
    for (let column = from!.column; column <= to.column; column++) {
      spans.set(column - grid.firstColumn, from!.column - grid.firstColumn);
    }
  }
  return spans;
}
