import type { Area } from "../../engine/area";
import { sortRows } from "../../engine/sort";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { wholeNumber } from "./arguments";

/** Checks the fields and sorts; keys count from the area's first column (or row). */
export function sortArea(
  area: Area,
  fields: readonly Excel.SortField[],
  options: { matchCase?: boolean; hasHeaders?: boolean; orientation?: unknown },
): void {
  if (!Array.isArray(fields) || fields.length === 0) refuse("InvalidArgument", "A sort has at least one field.");
  if (options.orientation === "Columns") refuse("NotImplemented", "The embedded host does not sort columns.");
  const keys = fields.map((field) => {
    const key = wholeNumber(field.key, "A sort key", 0);
    if (key >= area.columnCount) refuse("InvalidArgument", "A sort key lies within the range.");
    if (field.sortOn && field.sortOn !== "Value") {
      refuse("NotImplemented", `The embedded host does not sort on ${field.sortOn}.`);
    }
    return { column: key, ascending: field.ascending ?? true };
  });
  const body = options.hasHeaders ? { ...area, row: area.row + 1, rowCount: area.rowCount - 1 } : area;
  if (body.rowCount > 0) sortRows(body, keys, options.matchCase ?? false);
}

export const RangeSort: ProxyClass<Excel.RangeSort, Area> = proxyClass<Excel.RangeSort, Area>("RangeSort", {
  methods: {
    apply: (area, fields, matchCase, hasHeaders, orientation) =>
      sortArea(area, fields as Excel.SortField[], {
        matchCase: matchCase ?? false,
        hasHeaders: hasHeaders ?? false,
        orientation,
      }),
  },
});
