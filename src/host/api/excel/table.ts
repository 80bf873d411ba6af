import type { Area } from "../../engine/area";
import { isUnbounded } from "../../engine/area";
import { readValues, writeValues } from "../../engine/cells";
import { clear } from "../../engine/clear";
import { nameFault } from "../../engine/names";
import { tableSection } from "../../engine/references";
import type { Sheet } from "../../engine/sheets";
import { insertCells } from "../../engine/shift";
import { insertTableColumn, insertTableRows, removeTableColumn, removeTableRows } from "../../engine/tableShape";
import type { TableLook } from "../../engine/tables";
import { usedPart } from "../../engine/usedRange";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass, type Scalar } from "../proxies/proxyClass";
import { cellGrid, text, wholeNumber } from "./arguments";
import { AutoFilter } from "./autoFilter";
import { Filter } from "./filter";
import { areaOf, Range } from "./range";
import { sortArea } from "./rangeSort";
import { bodyOf, isEmptyTable, refuseOverlap, type TableTarget, tableOf } from "./tableCollections";
import { tableChanged, tableSelected } from "./tableEvents";
import { Worksheet } from "./worksheet";

/** A part of the table as an area of cells. */
function sectionOf(target: TableTarget, section: string): Area | null {
  const table = tableOf(target);
  const rows = tableSection(table, section);
  return rows && { book: target.book, sheetId: table.sheetId, ...table.rectangle, ...rows };
}

/** The rows of data; a table without any answers with the empty row that Excel shows for it. */
export const dataBody = (target: TableTarget): Area =>
  bodyOf(target) ?? refuse("ItemNotFound", "The table has no rows of data.");

function looked<K extends keyof TableLook>(key: K): Scalar<TableTarget, TableLook[K]> {
  return {
    get: (target) => tableOf(target).look[key],
    set: (target, value) => target.book.tables.setLook(tableOf(target), { [key]: value }),
  };
}

const tableStyle = /^TableStyle(Light([1-9]|1\d|2[01])|Medium([1-9]|1\d|2[0-8])|Dark([1-9]|1[01]))$/;

export function checkTableName(target: TableTarget, given: unknown): string {
  const name = text(given, "A table's name");
  const fault = nameFault(name);
  if (fault) refuse("InvalidArgument", fault);
  const holder = target.book.tables.named(name);
  if ((holder && holder.id !== target.tableId) || target.book.names.formulaOf(name, null) !== null) {
    refuse("ItemAlreadyExists", "A table or name of this name exists.");
  }
  return name;
}

/** Shows or hides the row of totals, which stands below the data: what is there moves down or up. */
async function showTotals(target: TableTarget, show: boolean): Promise<void> {
  const table = tableOf(target);
  if (table.look.showTotals === show) return;
  const { book } = target;
  const { rectangle, sheetId } = table;
  if (show) {
    const below = { book, sheetId, ...rectangle, row: rectangle.row + rectangle.rowCount, rowCount: 1 };
    if (usedPart(book, sheetId, below, true)) await insertCells(below, "Down");
    book.tables.resize(tableOf(target), { ...rectangle, rowCount: rectangle.rowCount + 1 });
    book.tables.setLook(tableOf(target), { showTotals: true });
    const last = table.columns.at(-1)!.name.replace(/(['#@[\]])/g, "'$1");
    const total = Array.from({ length: rectangle.columnCount }, (_, index) =>
      index === rectangle.columnCount - 1 ? `=SUBTOTAL(109,${table.name}[${last}])` : index === 0 ? "Total" : null,
    );
    writeValues(below, [total]);
  } else {
    const totals = { book, sheetId, ...rectangle, row: rectangle.row + rectangle.rowCount - 1, rowCount: 1 };
    clear(totals, "All");
    book.tables.setLook(table, { showTotals: false });
    book.tables.resize(tableOf(target), { ...rectangle, rowCount: rectangle.rowCount - 1 });
  }
}

export const Table: ProxyClass<Excel.Table, TableTarget> = proxyClass<Excel.Table, TableTarget>("Table", {
  scalars: {
    highlightFirstColumn: looked("highlightFirstColumn"),
    highlightLastColumn: looked("highlightLastColumn"),
    id: { get: ({ tableId }) => tableId },
    legacyId: { get: ({ tableId }) => tableId },
    name: {
      get: (target) => tableOf(target).name,
      set: (target, name) => target.book.tables.rename(tableOf(target), checkTableName(target, name)),
    },
    showBandedColumns: looked("showBandedColumns"),
    showBandedRows: looked("showBandedRows"),
    showFilterButton: looked("showFilterButton"),
    showHeaders: {
      get: () => true,
      set: (_target, show) => {
        if (!show) refuse("NotImplemented", "The embedded host does not offer tables without a heading row.");
      },
    },
    showTotals: { get: (target) => tableOf(target).look.showTotals, set: showTotals },
    style: {
      get: (target) => tableOf(target).look.style,
      set: (target, style) => {
        if (style !== "" && !tableStyle.test(style)) refuse("InvalidArgument", `"${style}" is no table style.`);
        target.book.tables.setLook(tableOf(target), { style });
      },
    },
  },
  objects: {
    autoFilter: { of: () => AutoFilter, at: (target) => target },
    columns: { of: () => TableColumnCollection, at: (target) => target },
    rows: { of: () => TableRowCollection, at: (target) => target },
    sort: { of: () => TableSort, at: (target) => target },
    worksheet: { of: () => Worksheet, at: (target): Sheet => ({ book: target.book, id: tableOf(target).sheetId }) },
  },
  methods: {
    clearFilters: (target) => target.book.filters.clear(target.tableId),
    convertToRange: {
      of: () => Range,
      at: (target) => {
        const table = tableOf(target);
        target.book.formulas.forget(table);
        target.book.tables.remove(table);
        return { book: target.book, sheetId: table.sheetId, ...table.rectangle };
      },
    },
    delete(target) {
      const table = tableOf(target);
      target.book.tables.remove(table);
      clear({ book: target.book, sheetId: table.sheetId, ...table.rectangle }, "All");
    },
    getDataBodyRange: { of: () => Range, at: dataBody },
    getHeaderRowRange: { of: () => Range, at: (target) => sectionOf(target, "#headers") },
    getRange: { of: () => Range, at: (target) => sectionOf(target, "#all") },
    getTotalRowRange: { of: () => Range, at: (target) => sectionOf(target, "#totals") },
    reapplyFilters: { reads: true, act: (target) => target.book.filters.reapply(target.tableId) },
    resize(target, given) {
      const table = tableOf(target);
      const area = areaOf(given, { book: target.book, sheetId: table.sheetId, ...table.rectangle });
      const overlaps =
        area.row === table.rectangle.row &&
        area.column < table.rectangle.column + table.rectangle.columnCount &&
        area.column + area.columnCount > table.rectangle.column;
      // Table.resize in the reference: the headings stay in their row, and the new range overlaps the old one.
      if (area.sheetId !== table.sheetId || !overlaps || area.rowCount < 2 || isUnbounded(area)) {
        refuse("InvalidArgument", "The range of a table keeps its heading row and overlaps the table.");
      }
      refuseOverlap(target.book, area, table.id);
      target.book.tables.resize(table, area);
    },
  },
  events: {
    onChanged: ({ book, tableId }, tell) => tableChanged(book, (table) => table.id === tableId, tell),
    onSelectionChanged: ({ book, tableId }, tell) => tableSelected(book, tableId, tell),
  },
});

type ColumnTarget = TableTarget & { readonly columnId: string };

/** A column by its id: where it is now and what it is called. */
function columnOf(target: ColumnTarget): { name: string; index: number } {
  const { columns } = tableOf(target);
  const index = columns.findIndex(({ id }) => id === target.columnId);
  return index < 0 ? refuse("ItemNotFound", "The column is gone.") : { name: columns[index]!.name, index };
}

function columnSection(target: ColumnTarget, section: string): Area | null {
  const area = sectionOf(target, section);
  return area && { ...area, column: area.column + columnOf(target).index, columnCount: 1 };
}

const columnsOf = (target: TableTarget): ColumnTarget[] =>
  tableOf(target).columns.map(({ id }) => ({ ...target, columnId: id }));

/** A column by its name, or by its id, which counts from 1. */
function columnByKey(target: TableTarget, key: unknown): ColumnTarget | null {
  const columns = columnsOf(target);
  if (typeof key === "number") return columns[key - 1] ?? null;
  const wanted = text(key, "A column's name or id").toLowerCase();
  return (
    columns.find((column) => columnOf(column).name.toLowerCase() === wanted) ??
    (/^\d+$/.test(wanted) ? (columns[Number(wanted) - 1] ?? null) : null)
  );
}

export const TableColumn: ProxyClass<Excel.TableColumn, ColumnTarget> = proxyClass<Excel.TableColumn, ColumnTarget>(
  "TableColumn",
  {
    scalars: {
      // ASSUMPTION: ids count the columns from 1 in their order; Excel keeps a column's id when others come and go.
      id: { get: (target) => columnOf(target).index + 1 },
      index: { get: (target) => columnOf(target).index },
      name: {
        get: (target) => columnOf(target).name,
        set: (target, name) => {
          const taken = columnByKey(target, text(name, "A column's name"));
          if (name === "") refuse("InvalidArgument", "A column's name is not empty.");
          if (taken && taken.columnId !== target.columnId) refuse("ItemAlreadyExists", "A column of this name exists.");
          writeValues(columnSection(target, "#headers")!, [[`'${name}`]]);
        },
      },
      values: {
        get: (target) => readValues(columnSection(target, "#all")!),
        set: (target, values) => {
          const area = columnSection(target, "#all")!;
          writeValues(area, cellGrid(area, values));
        },
      },
    },
    objects: { filter: { of: () => Filter, at: (target) => ({ ...target, index: columnOf(target).index }) } },
    methods: {
      async delete(target) {
        const table = tableOf(target);
        if (table.columns.length === 1) refuse("InvalidOperation", "A table has at least one column.");
        const { index } = columnOf(target);
        await removeTableColumn(target.book, table, index);
      },
      getDataBodyRange: { of: () => Range, at: (target) => columnSection(target, "#data") },
      getHeaderRowRange: { of: () => Range, at: (target) => columnSection(target, "#headers") },
      getRange: { of: () => Range, at: (target) => columnSection(target, "#all") },
      getTotalRowRange: { of: () => Range, at: (target) => columnSection(target, "#totals") },
    },
  },
);

/** Where something new goes: behind the last without an index, as null and -1 ask for. */
function placeFor(index: unknown, count: number): number {
  if (index === undefined || index === null || index === -1) return count;
  const at = wholeNumber(index, "The index", 0);
  return at <= count ? at : refuse("InvalidArgument", "The index is beyond the end of the table.");
}

export const TableColumnCollection: ProxyClass<Excel.TableColumnCollection, TableTarget> = proxyClass<
  Excel.TableColumnCollection,
  TableTarget
>("TableColumnCollection", {
  items: { of: () => TableColumn, list: columnsOf },
  scalars: { count: { get: (target) => columnsOf(target).length } },
  methods: {
    add: {
      of: () => TableColumn,
      first: async (target, given, values, name) => {
        const table = tableOf(target);
        const index = placeFor(given, table.columns.length);
        const { book } = target;
        const { rectangle, sheetId } = table;
        const single = { book, sheetId, ...rectangle, column: rectangle.column + index, columnCount: 1 };
        if (values !== undefined && values !== null) cellGrid(single, values);
        await insertTableColumn(book, table, index);
        if (values !== undefined && values !== null) writeValues(single, cellGrid(single, values));
        if (name !== undefined && name !== null)
          writeValues({ ...single, rowCount: 1 }, [[`'${text(name, "A name")}`]]);
      },
      at: (target, given) => {
        const columns = columnsOf(target);
        return columns[placeFor(given, columns.length - 1)]!;
      },
    },
    getCount: { answer: (target) => columnsOf(target).length },
    getItem: { of: () => TableColumn, at: columnByKey },
    getItemAt: {
      of: () => TableColumn,
      at: (target, index) => columnsOf(target)[wholeNumber(index, "The index", 0)] ?? null,
    },
    getItemOrNullObject: { of: () => TableColumn, at: columnByKey },
  },
});

type RowTarget = TableTarget & { readonly index: number };

const rowsOf = (target: TableTarget): RowTarget[] =>
  isEmptyTable(target)
    ? []
    : Array.from({ length: bodyOf(target)?.rowCount ?? 0 }, (_, index) => ({ ...target, index }));

function rowArea(target: RowTarget): Area {
  const body = bodyOf(target);
  return body && target.index < body.rowCount
    ? { ...body, row: body.row + target.index, rowCount: 1 }
    : refuse("ItemNotFound", "The row is gone.");
}

async function deleteRow(target: RowTarget): Promise<void> {
  const area = rowArea(target);
  const table = tableOf(target);
  if (dataBody(target).rowCount === 1) {
    clear(area, "Contents");
    return;
  }
  await removeTableRows(target.book, table, area.row, 1);
}

export const TableRow: ProxyClass<Excel.TableRow, RowTarget> = proxyClass<Excel.TableRow, RowTarget>("TableRow", {
  scalars: {
    index: { get: ({ index }) => index },
    values: {
      get: (target) => readValues(rowArea(target)),
      set: (target, values) => writeValues(rowArea(target), cellGrid(rowArea(target), values)),
    },
  },
  methods: { delete: deleteRow, getRange: { of: () => Range, at: rowArea } },
});

/** Rows of values for the table: one value, or rows as wide as the table. */
function newRows(target: TableTarget, values: unknown): unknown[][] {
  const width = tableOf(target).columns.length;
  if (values === undefined || values === null) return [Array.from({ length: width }, () => null)];
  if (!Array.isArray(values)) return [Array.from({ length: width }, () => values)];
  const fits = values.length > 0 && values.every((row) => Array.isArray(row) && row.length === width);
  if (!fits) refuse("InvalidArgument", `The number of columns of the values is not the table's: ${width} wanted.`);
  return values as unknown[][];
}

export const TableRowCollection: ProxyClass<Excel.TableRowCollection, TableTarget> = proxyClass<
  Excel.TableRowCollection,
  TableTarget
>("TableRowCollection", {
  items: { of: () => TableRow, list: rowsOf },
  scalars: { count: { get: (target) => rowsOf(target).length } },
  methods: {
    add: {
      of: () => TableRow,
      first: async (target, given, values) => {
        const rows = newRows(target, values);
        const count = rowsOf(target).length;
        const index = placeFor(given, count);
        const table = tableOf(target);
        // The empty row of a new table is filled first.
        const missing = rows.length - (isEmptyTable(target) ? 1 : 0);
        if (missing > 0) await insertTableRows(target.book, table, table.rectangle.row + 1 + index, missing);
        target.book.tables.setLook(tableOf(target), { isNew: false });
        const body = dataBody(target);
        writeValues({ ...body, row: body.row + index, rowCount: rows.length }, rows);
      },
      at: (target, given, values) => {
        const added = newRows(target, values).length;
        return { ...target, index: placeFor(given, rowsOf(target).length - added) };
      },
    },
    deleteRows: async (target, rows) => {
      const indexes = (rows as (number | RowTarget)[]).map((row) => (typeof row === "number" ? row : row.index));
      for (const index of [...new Set(indexes)].sort((a, b) => b - a)) await deleteRow({ ...target, index });
    },
    deleteRowsAt: async (target, index, count) => {
      for (let step = 0; step < (count ?? 1); step += 1) await deleteRow({ ...target, index });
    },
    getCount: { answer: (target) => rowsOf(target).length },
    getItemAt: {
      of: () => TableRow,
      at: (target, index) => rowsOf(target)[wholeNumber(index, "The index", 0)] ?? null,
    },
  },
});

/** What a table was last sorted by. */
const sortedBy = new WeakMap<object, Map<string, { fields: Excel.SortField[]; matchCase: boolean }>>();

export const TableSort: ProxyClass<Excel.TableSort, TableTarget> = proxyClass<Excel.TableSort, TableTarget>(
  "TableSort",
  {
    scalars: {
      fields: { get: ({ book, tableId }) => sortedBy.get(book)?.get(tableId)?.fields ?? [] },
      matchCase: { get: ({ book, tableId }) => sortedBy.get(book)?.get(tableId)?.matchCase ?? false },
      method: { get: () => "PinYin" },
    },
    methods: {
      apply: {
        reads: true,
        act(target, fields, matchCase) {
          sortArea(dataBody(target), fields as Excel.SortField[], { matchCase: matchCase ?? false });
          const known = sortedBy.get(target.book) ?? new Map();
          known.set(target.tableId, { fields: fields as Excel.SortField[], matchCase: matchCase ?? false });
          sortedBy.set(target.book, known);
        },
      },
      // ASSUMPTION: clearing forgets what it was sorted by and leaves the rows where they are.
      clear: ({ book, tableId }) => {
        sortedBy.get(book)?.delete(tableId);
      },
      reapply: {
        reads: true,
        act(target) {
          const last = sortedBy.get(target.book)?.get(target.tableId);
          if (last) sortArea(dataBody(target), last.fields, { matchCase: last.matchCase });
        },
      },
    },
  },
);
