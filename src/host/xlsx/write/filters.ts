import type { IAutoFilter } from "@univerjs/sheets-filter";
import { rangeReference } from "../addresses";
import { tag } from "./markup";

/** The filter of a sheet; `left` counts conditions the file format has no plain form for (by colour). */
export function filterMarkup(filter: IAutoFilter | undefined) {
  if (!filter) return { markup: "", left: 0, filteredRows: new Set<number>() };
  let left = 0;
  const columns = (filter.filterColumns ?? []).map(({ colId, filters, customFilters }) => {
    const content = filters
      ? tag(
          "filters",
          { blank: filters.blank === true },
          (filters.filters ?? []).map((val) => tag("filter", { val })),
        )
      : customFilters
        ? tag(
            "customFilters",
            { and: Boolean(customFilters.and) },
            customFilters.customFilters.map(({ operator, val }) => tag("customFilter", { operator, val })),
          )
        : "";
    if (content === "") left += 1;
    return content && tag("filterColumn", { colId: colId - filter.ref.startColumn }, content);
  });
  return {
    markup: tag("autoFilter", { ref: rangeReference(filter.ref) }, columns),
    left,
    filteredRows: new Set(filter.cachedFilteredOut ?? []),
  };
}
