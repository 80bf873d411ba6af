import { columnLetters } from "./address";
import { assignUses } from "./assignUses";
import { bodyUnits, unitOfBodies } from "./bodyFacts";
import { type Column, type ColumnMap, type ColumnUse, isBodyUse, isResultUse } from "./columns";
import { columnUnits } from "./columnUnits";
import { dateAbove } from "./dateAbove";
import { type DescribedColumn, describeColumn } from "./describeColumn";
import { findHeadings } from "./findHeadings";
import type { Grid } from "./grid";
import { readHeading } from "./heading";
import { nameSeries } from "./nameSeries";
import { tellBodies } from "./tellBodies";

/**
 * What each column of a selection seems to hold, from its heading and its cells. Knows wide sheets (one row per
 * athlete, columns such as "Hop left 1 (cm)" and "Sprint 10 m (s)", or rows of headings above each other) and long
 * sheets (one row per attempt, with columns that say whose, which test, which side). Never fails: what it cannot tell is
 * "none", for the coach to say. O(cells).
 */
export function recogniseColumns(grid: Grid): ColumnMap {
  const headings = findHeadings(grid);
  const firstDataRow = headings ? headings.lastRow + 1 : 0;
  const described = tellBodies(
    (grid.cells[0] ?? []).map((_, offset) =>
      describeColumn(grid, offset, headings?.columns[offset] ?? readHeading([]), firstDataRow),
    ),
  );
  const uses = assignUses(described);
  const results = described.filter((_, index) => isResultUse(uses[index]!));
  const series = nameSeries(results);
  const units = columnUnits(grid, results, series, firstDataRow);
  const columns = described.map((column, index): Column => {
    const { offset, heading } = column;
    const use = uses[index]!;
    return {
      offset,
      letters: columnLetters(grid.firstColumn + offset),
      heading: heading.text,
      use,
      test: series.get(offset)?.test ?? heading.stem,
      measure: series.get(offset)?.measure ?? null,
      unit: units.get(offset)?.symbol ?? unitBesideResults(column, use),
    };
  });
  return {
    firstDataRow,
    columns,
    date: uses.includes("date") || !headings ? null : dateAbove(grid, headings.firstRow),
    sameAthlete: {},
    sameTest: {},
    includeHiddenRows: false,
  };
}

function unitBesideResults({ heading, middle }: DescribedColumn, use: ColumnUse): string | null {
  if (heading.unit) return heading.unit.symbol;
  if (!isBodyUse(use)) return null;
  return middle === null ? bodyUnits[use] : (unitOfBodies(use, middle)?.symbol ?? null);
}
