import type { Area } from "../../engine/area";
import { sortLines } from "../../engine/sort";
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
  const what = options.orientation === "Columns" ? "columns" : "rows";
  const width = what === "rows" ? area.columnCount : area.rowCount;
  const keys = fields.map((field) => {
    const at = wholeNumber(field.key, "A sort key", 0);
    if (at >= width) refuse("InvalidArgument", "A sort key lies within the range.");
    if (field.sortOn && field.sortOn !== "Value") {
      refuse("NotImplemented", `The embedded host does not sort on ${field.sortOn}.`);
    }
    return { at, ascending: field.ascending ?? true };
  });
  const heading = options.hasHeaders ? 1 : 0;
  const body =
    what === "rows"
      ? { ...area, row: area.row + heading, rowCount: area.rowCount - heading }
      : { ...area, column: area.column + heading, columnCount: area.columnCount - heading };
  if (body.rowCount > 0 && body.columnCount > 0) sortLines(body, what, keys, options.matchCase ?? false);
}

export const RangeSort: ProxyClass<Excel.RangeSort, Area> = proxyClass<Excel.RangeSort, Area>("RangeSort", {
  methods: {
    apply: {
      reads: true,
      act: (area, fields, matchCase, hasHeaders, orientation) =>
        sortArea(area, fields as Excel.SortField[], {
          matchCase: matchCase ?? false,
          hasHeaders: hasHeaders ?? false,
          orientation,
        }),
    },
  },
});
