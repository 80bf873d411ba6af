import type { Area } from "../../engine/area";
import { readFormulas, readValues, writeValues } from "../../engine/cells";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { wholeNumber } from "./arguments";

type Outcome = { readonly removed: number; readonly uniqueRemaining: number };

export const RemoveDuplicatesResult: ProxyClass<Excel.RemoveDuplicatesResult, Outcome> = proxyClass<
  Excel.RemoveDuplicatesResult,
  Outcome
>("RemoveDuplicatesResult", {
  scalars: {
    removed: { get: ({ removed }) => removed },
    uniqueRemaining: { get: ({ uniqueRemaining }) => uniqueRemaining },
  },
});

/** Takes out rows that repeat an earlier one in the given columns; what stays moves up within the area. */
export function removeDuplicates(area: Area, columns: unknown, includesHeader: boolean): Outcome {
  if (!Array.isArray(columns) || columns.length === 0)
    return refuse("InvalidArgument", "At least one column is named.");
  const keys = columns.map((column) => {
    const key = wholeNumber(column, "A column", 0);
    return key < area.columnCount ? key : refuse("InvalidArgument", "A column lies within the range.");
  });
  const body = includesHeader ? { ...area, row: area.row + 1, rowCount: area.rowCount - 1 } : area;
  const values = readValues(body);
  const formulas = readFormulas(body);
  const seen = new Set<string>();
  const kept = formulas.filter((_row, index) => {
    const key = JSON.stringify(keys.map((column) => String(values[index]![column]).toLowerCase()));
    return seen.has(key) ? false : seen.add(key);
  });
  const removed = formulas.length - kept.length;
  const empty = Array.from({ length: removed }, () => Array.from({ length: area.columnCount }, () => ""));
  if (removed > 0) writeValues(body, [...kept, ...empty]);
  return { removed, uniqueRemaining: kept.length };
}
