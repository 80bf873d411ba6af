import { say } from "../language/say";
import type { TestResult } from "../reading/testResult";
import type { Background } from "../store/background";
import type { AnyAnalysis } from "./analysis";
import { type LiveSource, liveCells, sameRows } from "./liveCells";
import type { ReportTable, ReportValue } from "./report";
import { isDerived } from "./seriesOf";

/** What an analysis needs to say by which formula a cell of its table follows the results. */
export type LiveContext<Settings> = {
  /** All results the answer is from. */
  readonly results: readonly TestResult[];
  readonly settings: Settings;
  readonly background: Background;
  /** The cells of some of them, for the argument of a function; null where a formula cannot read what was used. */
  readonly cells: (results: readonly TestResult[]) => string | null;
};

/** Formulas by field, without "="; null where the value stays. */
export type LiveFields<Row> = { readonly [Field in keyof Row]?: string | null };

/** Excel takes no longer formula. */
const longest = 8192;

/** The formulas of a table's cells, beside its rows; null in the cells that hold values. */
export function liveFormulas(
  { live }: AnyAnalysis,
  { columns, rows }: Pick<ReportTable, "columns" | "rows">,
  answered: readonly Record<string, ReportValue>[],
  context: Omit<LiveContext<unknown>, "cells">,
  source: LiveSource,
): (string | null)[][] {
  return rows.map((values, index) => {
    const used = new Set<TestResult>();
    const cells = (results: readonly TestResult[]) => {
      // Where a set of one repetition is its own maximum, the cell holds the number, but not by the formula.
      if (results.some(isDerived)) return null;
      for (const result of results) used.add(result);
      return liveCells(results, source);
    };
    const fields = live?.(answered[index]!, { ...context, cells }) ?? {};
    const condition = sameRows([...used], source);
    return columns.map(({ key }, column) => {
      const formula = fields[key] ?? null;
      // Where there is no answer there is nothing to follow; the verdict says why.
      if (formula === null || condition === null || (values[column] ?? "") === "") return null;
      const whole = `=IF(${condition},${formula},NA())`;
      return whole.length > longest ? null : whole;
    });
  });
}

/** What a coach must know of a table some of whose columns are live; null where none is. */
export function liveNote({ columns, formulas }: ReportTable, date: string): string | null {
  const live = columns
    .filter((_, column) => formulas?.some((row) => row[column] !== null))
    .map(({ heading }) => heading);
  if (live.length === 0) return null;
  return (
    say`These columns follow your results: ${live.join(", ")}. All others, verdicts too, are of ${date} until the table is ` +
    say`renewed. #N/A in a column that follows means that the results were sorted or moved: renew the table. A trial in a cell ` +
    say`that was not read is not seen.`
  );
}
