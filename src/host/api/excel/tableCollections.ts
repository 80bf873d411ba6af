import { type Area, contains, intersection } from "../../engine/area";
import type { Book } from "../../engine/book";
import { mergedAreas } from "../../engine/merges";
import { resolveArea, wholeSheet } from "../../engine/references";
import { activeSheetId } from "../../engine/selection";
import { insertCells } from "../../engine/shift";
import { type Table as BookTable, dataRows } from "../../engine/tables";
import { usedPart } from "../../engine/usedRange";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { onSheet, text, wholeNumber } from "./arguments";
import { Table } from "./table";
import { tableChanged } from "./tableEvents";

/** Tables of the workbook or of one sheet. */
export type TablesOf = { readonly book: Book; readonly sheetId: string | null };

/** A table by its id: what a proxy stands for, as names and places change. */
export type TableTarget = { readonly book: Book; readonly tableId: string };

export const tableOf = ({ book, tableId }: TableTarget): BookTable =>
  book.tables.get(tableId) ?? refuse("ItemNotFound", "The table is gone.");

const listed = ({ book, sheetId }: TablesOf): TableTarget[] =>
  book.tables.list(sheetId ?? undefined).map((table) => ({ book, tableId: table.id }));

/** Whether a name or id, in small letters, is the table's. */
const isCalled = (target: TableTarget, wanted: string): boolean =>
  [tableOf(target).name, target.tableId].some((own) => own.toLowerCase() === wanted);

const byKey = (tables: TablesOf, key: unknown): TableTarget | null => {
  const wanted = text(key, "A table's name or id").toLowerCase();
  return listed(tables).find((target) => isCalled(target, wanted)) ?? null;
};

/** Refuses a place where no table can be: another table or merged cells in it. */
export function refuseOverlap(book: Book, area: Area, own: string | null): void {
  for (const table of book.tables.list(area.sheetId)) {
    if (table.id !== own && intersection(table.rectangle, area))
      refuse("InvalidArgument", "A table can't overlap another table.");
  }
  if (mergedAreas(area).length) refuse("MergedRangeConflict");
}

/** Where the new table is to be, as far as it holds anything: a whole column becomes its used part. */
function placeFor({ book, sheetId }: TablesOf, given: unknown): Area {
  const on = { book, id: sheetId ?? activeSheetId(book) };
  const area =
    typeof given === "object" && given !== null
      ? (given as Area)
      : (resolveArea(book, text(given, "A table's address"), on) ??
        refuse("InvalidArgument", `"${given}" is no range.`));
  if (sheetId !== null && area.sheetId !== sheetId) refuse("InvalidArgument", "The range is on another worksheet.");
  const whole = wholeSheet({ book, id: area.sheetId });
  if (area.rowCount === whole.rowCount || area.columnCount === whole.columnCount) {
    return usedPart(book, area.sheetId, area, true) ?? refuse("InvalidArgument", "The range is empty.");
  }
  return area;
}

/** "Table1", "Table2" .. the first that is free. */
function freshName(book: Book): string {
  for (let number = 1; ; number += 1) {
    const name = `Table${number}`;
    if (!book.tables.named(name) && book.names.formulaOf(name, null) === null) return name;
  }
}

export const TableCollection: ProxyClass<Excel.TableCollection, TablesOf> = proxyClass<Excel.TableCollection, TablesOf>(
  "TableCollection",
  {
    items: { of: () => Table, list: listed },
    scalars: { count: { get: (tables) => listed(tables).length } },
    methods: {
      add: {
        of: () => Table,
        first: async (tables, address, hasHeaders) => {
          const area = placeFor(tables, address);
          refuseOverlap(tables.book, area, null);
          // Without headings of its own a table gets a row for them, and what is below moves down.
          if (!hasHeaders) await insertCells({ ...area, rowCount: 1 }, "Down");
        },
        at: (tables, address, hasHeaders) => {
          const given = placeFor(tables, address);
          const rowCount = Math.max(given.rowCount + (hasHeaders ? 0 : 1), 2);
          const area = onSheet(given, { ...given, rowCount });
          const tableId = tables.book.tables.add(area.sheetId, area, freshName(tables.book));
          const target = { book: tables.book, tableId };
          if (rowCount > given.rowCount + (hasHeaders ? 0 : 1)) {
            tables.book.tables.setLook(tableOf(target), { isNew: true });
          }
          return target;
        },
      },
      getCount: { answer: (tables) => listed(tables).length },
      getItem: { of: () => Table, at: byKey },
      getItemAt: { of: () => Table, at: (tables, index) => listed(tables)[wholeNumber(index, "The index", 0)] ?? null },
      getItemOrNullObject: { of: () => Table, at: byKey },
    },
    events: {
      onAdded: (tables, tell) =>
        tables.book.tables.listen("added", (table) => {
          if (tables.sheetId === null || tables.sheetId === table.sheetId) {
            tell({ type: "TableAdded", tableId: table.id, worksheetId: table.sheetId, source: "Local" } as never);
          }
        }),
      onChanged: (tables, tell) =>
        tableChanged(tables.book, (table) => tables.sheetId === null || table.sheetId === tables.sheetId, tell),
      onDeleted: (tables, tell) =>
        tables.book.tables.listen("deleted", (table) => {
          if (tables.sheetId === null || tables.sheetId === table.sheetId) {
            tell({
              type: "TableDeleted",
              tableId: table.id,
              tableName: table.name,
              worksheetId: table.sheetId,
              source: "Local",
            } as never);
          }
        }),
    },
  },
);

type TablesIn = { readonly book: Book; readonly area: Area; readonly fullyContained: boolean };

const within = ({ book, area, fullyContained }: TablesIn): TableTarget[] =>
  book.tables
    .list(area.sheetId)
    .filter(({ rectangle }) => (fullyContained ? contains(area, rectangle) : intersection(area, rectangle) !== null))
    .map((table) => ({ book, tableId: table.id }));

const named = (scope: TablesIn, key: unknown): TableTarget | null => {
  const wanted = text(key, "A table's name").toLowerCase();
  return within(scope).find((target) => isCalled(target, wanted)) ?? null;
};

export const TableScopedCollection: ProxyClass<Excel.TableScopedCollection, TablesIn> = proxyClass<
  Excel.TableScopedCollection,
  TablesIn
>("TableScopedCollection", {
  items: { of: () => Table, list: within },
  methods: {
    getCount: { answer: (scope) => within(scope).length },
    getFirst: { of: () => Table, at: (scope) => within(scope)[0] ?? null },
    getItem: { of: () => Table, at: named },
    getItemOrNullObject: { of: () => Table, at: named },
  },
});

/** Whether the table's only row is the empty one of a table made of headings alone. */
export function isEmptyTable(target: TableTarget): boolean {
  const body = bodyOf(target);
  return tableOf(target).look.isNew && body?.rowCount === 1 && usedPart(target.book, body.sheetId, body, true) === null;
}

/** The rows of data as an area, or null where the table has none. */
export function bodyOf(target: TableTarget): Area | null {
  const table = tableOf(target);
  const rows = dataRows(table);
  return rows && { book: target.book, sheetId: table.sheetId, ...rows };
}
