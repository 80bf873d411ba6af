import type { DescribedColumn } from "./describeColumn";
import type { MeasureKey } from "./measures";

/** Which numbers a column of results holds: the test's name, and its measure where it has several. */
export type Series = { readonly test: string; readonly measure: MeasureKey | null };

/** What a test of nothing but sprint times is called, where no heading gives it a name. */
export const unnamedSprint = "Sprint";

/**
 * The series of each column of results, by its heading and those of its siblings: one spelling for each test; kilograms
 * and repetitions of one test are load and repetitions; repetitions without a load are a test's only number and need no
 * measure; and splits without a name ("10 m (s)") belong to the sheet's one sprint.
 */
export function nameSeries(columns: readonly DescribedColumn[]): Map<number, Series> {
  const spelling = spellings(columns);
  const testOf = ({ heading }: DescribedColumn) => spelling.get(like(heading.stem)) ?? "";
  const sprints = new Set(columns.filter(isSplit).map(testOf));
  sprints.delete("");
  const sprint = sprints.size === 1 ? [...sprints][0]! : unnamedSprint;
  const lifted = new Set(columns.filter(isLoad).map(testOf));
  const repeated = new Set(columns.filter(isCount).map(testOf));

  const series = new Map<number, Series>();
  for (const column of columns) {
    const test = testOf(column);
    const isSet = lifted.has(test) && repeated.has(test);
    series.set(column.offset, {
      test: test === "" && isSplit(column) ? sprint : test,
      measure: isCount(column)
        ? isSet
          ? "repetitions"
          : null
        : isSet && isLoad(column)
          ? "load"
          : column.heading.measure,
    });
  }
  return series;
}

const like = (stem: string): string => stem.toLowerCase().replace(/[\s-]+/g, " ");

function spellings(columns: readonly DescribedColumn[]): Map<string, string> {
  const first = new Map<string, string>();
  for (const { heading } of columns) if (!first.has(like(heading.stem))) first.set(like(heading.stem), heading.stem);
  return first;
}

const isSplit = ({ heading }: DescribedColumn): boolean => /^time\d/.test(heading.measure ?? "");

const isLoad = ({ heading: { measure, unit } }: DescribedColumn): boolean =>
  measure === "load" || (measure === null && unit?.quantity === "mass");

const isCount = ({ heading: { measure, unit } }: DescribedColumn): boolean =>
  measure === "repetitions" || (measure === null && unit?.quantity === "count");
