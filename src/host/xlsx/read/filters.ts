import { BooleanNumber, type IWorksheetData } from "@univerjs/core";
import type { IAutoFilter, IFilterColumn } from "@univerjs/sheets-filter";
import { rangeOf } from "../addresses";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";

/**
 * The filter of a sheet. Rows it keeps out of sight are marked hidden in the file; here they become the filter's own,
 * so that taking the filter away shows them again.
 */
export function readFilter(sheet: XmlElement, data: Partial<IWorksheetData>): IAutoFilter | undefined {
  const source = childOf(sheet, "autoFilter");
  if (!source?.attributes.ref) return undefined;
  const ref = rangeOf(source.attributes.ref);
  const filterColumns = childrenOf(source, "filterColumn").flatMap((column) => readColumn(column, ref.startColumn));
  if (filterColumns.length === 0) return { ref };
  const rows = data.rowData ?? {};
  const cachedFilteredOut = Object.keys(rows)
    .map(Number)
    .filter((row) => row > ref.startRow && row <= ref.endRow && rows[row]?.hd === BooleanNumber.TRUE);
  for (const row of cachedFilteredOut) delete rows[row]?.hd;
  return { ref, filterColumns, cachedFilteredOut };
}

function readColumn(column: XmlElement, startColumn: number): IFilterColumn[] {
  const colId = startColumn + (numberOf(column, "colId") ?? 0);
  const values = childOf(column, "filters");
  if (values) {
    const filters = childrenOf(values, "filter").map((each) => each.attributes.val ?? "");
    return [{ colId, filters: { filters, ...(truthOf(values, "blank") && { blank: true as const }) } }];
  }
  const custom = childOf(column, "customFilters");
  if (!custom) return [];
  const tests = childrenOf(custom, "customFilter").map(({ attributes: { operator, val = "" } }) => ({
    val,
    ...(operator && { operator }),
  }));
  type CustomFilters = NonNullable<IFilterColumn["customFilters"]>;
  const and = truthOf(custom, "and") ? BooleanNumber.TRUE : undefined;
  return [{ colId, customFilters: { customFilters: tests, ...(and && { and }) } as CustomFilters }];
}
