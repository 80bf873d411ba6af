import type { DescribedColumn } from "./describeColumn";
import type { Grid } from "./grid";
import { fitsMeasure, measureOf } from "./measures";
import type { Series } from "./nameSeries";
import { timeUnit } from "./timeUnit";
import { type Unit, unitOf } from "./units";

/**
 * The unit of each column of results: as its heading says; else as the one unit of the columns of the same series; else
 * as most numbers typed as text in it say; else what its measure leaves no doubt of; else the one unit of all others.
 */
export function columnUnits(
  grid: Grid,
  columns: readonly DescribedColumn[],
  series: ReadonlyMap<number, Series>,
  firstDataRow: number,
): Map<number, Unit> {
  const found = new Map<number, Unit>();
  const seriesOf = ({ offset }: DescribedColumn) => series.get(offset)!;
  const open = () => columns.filter(({ offset }) => !found.has(offset));
  const give = (column: DescribedColumn, unit: Unit | null) => {
    if (unit && fitsMeasure(unit, seriesOf(column).measure)) found.set(column.offset, unit);
  };
  const giveSiblings = () => {
    const shared = unitsBySeries(columns, found, seriesOf);
    for (const column of open()) give(column, only(shared.get(keyOf(seriesOf(column)))));
  };

  for (const column of columns) give(column, column.heading.unit);
  giveSiblings();
  for (const column of open()) give(column, typedUnit(grid, column, firstDataRow));
  giveSiblings();
  for (const column of open()) give(column, impliedUnit(column, seriesOf(column)));
  const all = only(new Set(found.values()));
  for (const column of open()) give(column, all);
  return found;
}

const keyOf = ({ test, measure }: Series): string => `${test}|${measure}`;

const only = (units: ReadonlySet<Unit> | undefined): Unit | null => (units?.size === 1 ? [...units][0]! : null);

function unitsBySeries(
  columns: readonly DescribedColumn[],
  found: ReadonlyMap<number, Unit>,
  seriesOf: (column: DescribedColumn) => Series,
): Map<string, Set<Unit>> {
  const units = new Map<string, Set<Unit>>();
  for (const column of columns) {
    const unit = found.get(column.offset);
    const key = keyOf(seriesOf(column));
    if (unit) units.set(key, (units.get(key) ?? new Set()).add(unit));
  }
  return units;
}

/** Repetitions are counted, and times of some tenths or hundreds tell their unit by themselves. */
function impliedUnit({ middle }: DescribedColumn, { measure }: Series): Unit | null {
  const unit = measure === null ? null : unitOf(measureOf(measure).unit ?? "");
  if (unit?.quantity === "count") return unit;
  return unit?.quantity === "time" && middle !== null ? timeUnit(middle) : null;
}

/** The unit most numbers typed as text carry, where the plain numbers beside them can be in it. */
function typedUnit(grid: Grid, { offset, middle }: DescribedColumn, firstDataRow: number): Unit | null {
  const typed = new Map<Unit, number[]>();
  for (let row = firstDataRow; row < grid.cells.length; row++) {
    const cell = grid.cells[row]![offset];
    const match = typeof cell === "string" ? /^\s*(\d+(?:[.,]\d+)?)\s*([A-Za-z/"%]+)\s*$/.exec(cell) : null;
    const unit = match && unitOf(match[2]!);
    if (!unit) continue;
    const values = typed.get(unit) ?? [];
    values.push(Number(match[1]!.replace(",", ".")));
    typed.set(unit, values);
  }
  const fitting = [...typed].filter(([, values]) => isLike(values, middle));
  return fitting.sort((a, b) => b[1].length - a[1].length)[0]?.[0] ?? null;
}

/** The middle of the plain numbers lies within five times of the typed ones: common practice, no source. */
const isLike = (values: readonly number[], middle: number | null): boolean =>
  middle === null || values.some((value) => middle > value / 5 && middle < value * 5);
