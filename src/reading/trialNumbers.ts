import { type Column, type ColumnMap, holdsResults, offsetOf } from "./columns";

/** A column of results, and which trial of its series it is in each row, of how many. */
export type ResultColumn = Column & { readonly trial: number; readonly trialsInRow: number };

/**
 * The columns that hold results; in a wide sheet each is the first, second .. trial of its test, measure and side, unless
 * it says which one itself: then a trial whose column is gone leaves a gap.
 */
export function resultColumns(map: ColumnMap): ResultColumn[] {
  // Where each row names its test, the columns' own names do not tell tests apart.
  const namesTest = offsetOf(map, "test") !== null;
  const seriesOf = ({ use, test, measure }: Column) => `${use}|${namesTest ? "" : test}|${measure}`;
  const columns = map.columns.filter(holdsResults);
  const counts = counter();
  const numbered = columns.map((column) => {
    const place = counts.next(seriesOf(column));
    return { column, series: seriesOf(column), trial: column.attempt ?? place };
  });
  const most = new Map<string, number>();
  for (const { series, trial } of numbered) most.set(series, Math.max(most.get(series) ?? 0, trial));
  return numbered.map(({ column, series, trial }) => ({ ...column, trial, trialsInRow: most.get(series)! }));
}

/**
 * The number of a column's trial within a row: rows of one athlete, test, side and day go on counting. What stands in
 * one row keeps one number, so that a load finds its repetitions even where another row lacks one of the two.
 *
 * @param row number of the row among those that belong together, from 1 on.
 */
export const trialNumber = (row: number, { trial, trialsInRow }: ResultColumn): number =>
  (row - 1) * trialsInRow + trial;

/** Counts 1, 2, 3 .. for each key. */
export function counter() {
  const counts = new Map<string, number>();
  return {
    next(key: string): number {
      counts.set(key, (counts.get(key) ?? 0) + 1);
      return counts.get(key)!;
    },
  };
}
