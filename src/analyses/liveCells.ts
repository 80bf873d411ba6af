import { columnLetters, placeOf, quotedSheet } from "../reading/address";
import { type ColumnMap, offsetOf } from "../reading/columns";
import { type Cell, type Grid, textOf } from "../reading/grid";
import type { TestResult } from "../reading/testResult";

/** Where live formulas find the results: the cells that were read, and which column is what. */
export type LiveSource = { readonly grid: Grid; readonly map: ColumnMap };

/**
 * The cells of results as a formula refers to them, fixed so that a sorted table keeps them: a range where they fill one
 * ("'Hop test'!$B$4:$D$4"), else an array of the single cells, which every version of Excel knows how to make
 * ("CHOOSE({1,2},'Hop test'!$B$4,'Hop test'!$D$4)").
 *
 * Null where there is none, or where a cell does not hold the very number that was used (text such as "1.82 m", another
 * unit): a formula would read it otherwise, so the value is written instead.
 */
export function liveCells(results: readonly TestResult[], { grid }: LiveSource): string | null {
  if (results.length === 0) return null;
  const places: Place[] = [];
  for (const { cell, value } of results) {
    const place = placeIn(grid, cell);
    if (place === null || cellAt(grid, place) !== value) return null;
    places.push(place);
  }
  return reference(grid, places);
}

/** What says whose result of what a row is: sorting or typing over it makes another's of it. */
const identifying = ["athlete", "test", "measure", "side", "date"] as const;

/**
 * A condition that is true as long as the rows of these results are still the athlete's, and of the same test, side and
 * day: sorting the results moves them, and a formula that stays behind would give one's numbers to another. Null where no
 * column says whose row it is.
 */
export function sameRows(results: readonly TestResult[], { grid, map }: LiveSource): string | null {
  const places = results.map(({ cell }) => placeIn(grid, cell));
  if (offsetOf(map, "athlete") === null || places.length === 0 || places.includes(null)) return null;
  const rows = [...new Set(places.map((place) => place!.row))].sort((a, b) => a - b);
  const conditions = identifying.flatMap((use) => {
    const offset = offsetOf(map, use);
    if (offset === null) return [];
    const column = grid.firstColumn + offset;
    return runsAlike(rows, (row) => cellAt(grid, { row, column }) ?? null).map(({ first, count, cell }) => {
      const cells = areaOf(grid, { row: first, column }, { row: first + count - 1, column });
      const alike = typeof cell === "number" ? `${cells}=${cell}` : `TRIM(${cells})=${quotedText(textOf(cell))}`;
      return count === 1 ? alike : `SUMPRODUCT(--(${alike}))=${count}`;
    });
  });
  return conditions.length === 1 ? conditions[0]! : `AND(${conditions.join(",")})`;
}

/** Text as a formula holds it. */
export const quotedText = (text: string): string => `"${text.replaceAll('"', '""')}"`;

type Place = { readonly row: number; readonly column: number };

/** Null for a cell outside the grid, or on another sheet than its. */
function placeIn(grid: Grid, cell: string): Place | null {
  if (cell.includes("!")) return null;
  const place = placeOf(cell);
  return cellAt(grid, place) === undefined ? null : place;
}

const cellAt = ({ cells, firstRow, firstColumn }: Grid, { row, column }: Place): Cell | undefined =>
  cells[row - firstRow]?.[column - firstColumn];

function reference(grid: Grid, places: readonly Place[]): string {
  const rows = places.map(({ row }) => row);
  const columns = places.map(({ column }) => column);
  const from = { row: Math.min(...rows), column: Math.min(...columns) };
  const to = { row: Math.max(...rows), column: Math.max(...columns) };
  const area = (to.row - from.row + 1) * (to.column - from.column + 1);
  if (area === places.length) return areaOf(grid, from, to);
  const cells = places.map((place) => areaOf(grid, place, place));
  return `CHOOSE({${cells.map((_, index) => index + 1).join(",")}},${cells.join(",")})`;
}

function areaOf({ sheet }: Grid, from: Place, to: Place): string {
  const fixed = ({ row, column }: Place) => `$${columnLetters(column)}$${row + 1}`;
  const isCell = from.row === to.row && from.column === to.column;
  return `${quotedSheet(sheet)}!${fixed(from)}${isCell ? "" : `:${fixed(to)}`}`;
}

type Run = { readonly first: number; readonly count: number; readonly cell: Cell };

/** Rows below each other in which a column says the same. */
function runsAlike(rows: readonly number[], cellIn: (row: number) => Cell): Run[] {
  const runs: Run[] = [];
  for (const row of rows) {
    const cell = cellIn(row);
    const last = runs.at(-1);
    const isAlike = last && typeof last.cell === typeof cell && textOf(last.cell) === textOf(cell);
    if (isAlike && last.first + last.count === row) runs[runs.length - 1] = { ...last, count: last.count + 1 };
    else runs.push({ first: row, count: 1, cell });
  }
  return runs;
}
