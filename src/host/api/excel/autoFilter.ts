import type { Area } from "../../engine/area";
import type { Book } from "../../engine/book";
import { wholeSheet } from "../../engine/references";
import type { Sheet } from "../../engine/sheets";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { wholeNumber } from "./arguments";
import { rowTest } from "./filter";
import { areaOf, Range } from "./range";
import { dataBody } from "./table";
import { type TableTarget, tableOf } from "./tableCollections";

/** The filter of a sheet or of a table. */
type FilterOwner = Sheet | TableTarget;

const bookOf = (owner: FilterOwner): Book => owner.book;
const keyOf = (owner: FilterOwner): string => ("tableId" in owner ? owner.tableId : `sheet ${owner.id}`);

function filtered(owner: FilterOwner): Area | null {
  const area = bookOf(owner).filters.areaOf(keyOf(owner));
  return area && { ...area, row: area.row - 1, rowCount: area.rowCount + 1 };
}

export const AutoFilter: ProxyClass<Excel.AutoFilter, FilterOwner> = proxyClass<Excel.AutoFilter, FilterOwner>(
  "AutoFilter",
  {
    scalars: {
      criteria: {
        get: (owner) => {
          const area = bookOf(owner).filters.areaOf(keyOf(owner));
          return Array.from(
            { length: area?.columnCount ?? 0 },
            (_, column) => bookOf(owner).filters.criteriaOf(keyOf(owner), column) as Excel.FilterCriteria,
          );
        },
      },
      enabled: { get: (owner) => bookOf(owner).filters.isOpen(keyOf(owner)) || "tableId" in owner },
      isDataFiltered: { get: (owner) => bookOf(owner).filters.isFiltered(keyOf(owner)) },
    },
    methods: {
      apply: {
        reads: true,
        act(owner, given, column, criteria) {
          const { filters } = bookOf(owner);
          const key = keyOf(owner);
          const whole: Area =
            "tableId" in owner
              ? { book: owner.book, sheetId: tableOf(owner).sheetId, ...tableOf(owner).rectangle }
              : areaOf(given, wholeSheet(owner));
          if (!("tableId" in owner)) filters.close(key);
          const rows =
            "tableId" in owner
              ? () => dataBody(owner)
              : () => ({ ...whole, row: whole.row + 1, rowCount: Math.max(1, whole.rowCount - 1) });
          filters.open(key, rows);
          if (column === undefined || column === null) return;
          const index = wholeNumber(column, "The column", 0);
          if (index >= whole.columnCount) refuse("InvalidArgument", "The column lies within the range.");
          if (criteria) filters.set(key, index, rowTest(criteria), criteria);
        },
      },
      clearColumnCriteria: (owner, column) =>
        bookOf(owner).filters.clear(keyOf(owner), wholeNumber(column, "The column", 0)),
      clearCriteria: (owner) => bookOf(owner).filters.clear(keyOf(owner)),
      getRange: { of: () => Range, at: filtered },
      getRangeOrNullObject: { of: () => Range, at: filtered },
      reapply: (owner) => bookOf(owner).filters.reapply(keyOf(owner)),
      remove: (owner) => bookOf(owner).filters.close(keyOf(owner)),
    },
  },
);
