import { parseRectangle, quotedSheet, rectangleAddress, splitSheet } from "./addresses";
import type { Area } from "./area";
import { sheetColumns, sheetRows } from "./area";
import type { Book } from "./book";
import { nameOf, type Sheet, sheetNamed } from "./sheets";
import { dataRows, type Table } from "./tables";

/** "'Hop test'!A3:G28". */
export const addressOf = (area: Area): string =>
  `${quotedSheet(nameOf({ book: area.book, id: area.sheetId }))}!${rectangleAddress(area)}`;

export const sheetOf = ({ book, sheetId }: Pick<Area, "book" | "sheetId">): Sheet => ({ book, id: sheetId });

export const wholeSheet = ({ book, id }: Sheet): Area => ({
  book,
  sheetId: id,
  row: 0,
  column: 0,
  rowCount: sheetRows,
  columnCount: sheetColumns,
});

/** What "Table", "Table[Column]", "Table[#All]" or "Table[[#Headers],[Column]]" stands for. */
function structuredArea(book: Book, reference: string): Area | null {
  const [, name, specifier] = /^([^[\]]+?)(?:\[(.*)\])?$/.exec(reference.trim()) ?? [];
  const table = name ? book.tables.named(name) : null;
  if (!table) return null;
  const parts =
    specifier === undefined ? [] : [...specifier.matchAll(/\[((?:'.|[^[\]'])*)\]/g)].map((part) => part[1]!);
  const asked = parts.length ? parts : specifier ? [specifier] : [];
  const section = asked.find((part) => part.startsWith("#"))?.toLowerCase() ?? "#data";
  const columns = asked
    .filter((part) => !part.startsWith("#"))
    .map((part) => {
      const wanted = part.replace(/'(.)/g, "$1").toLowerCase();
      return table.columns.findIndex((column) => column.name.toLowerCase() === wanted);
    });
  if (columns.includes(-1)) return null;
  const rows = tableSection(table, section);
  if (!rows) return null;
  const first = columns.length ? Math.min(...columns) : 0;
  const last = columns.length ? Math.max(...columns) : table.columns.length - 1;
  return {
    book,
    sheetId: table.sheetId,
    ...rows,
    column: table.rectangle.column + first,
    columnCount: last - first + 1,
  };
}

export function tableSection(table: Table, section: string): { row: number; rowCount: number } | null {
  const { row, rowCount } = table.rectangle;
  switch (section) {
    case "#all":
      return { row, rowCount };
    case "#headers":
      return { row, rowCount: 1 };
    case "#totals":
      return table.look.showTotals ? { row: row + rowCount - 1, rowCount: 1 } : null;
    case "#data":
      return dataRows(table);
    default:
      return null;
  }
}

/** Finds what an address, a name or a table reference stands for; without a sheet in it, on `sheet`. */
export function resolveArea(book: Book, reference: string, sheet: Sheet | null): Area | null {
  const { sheet: sheetName, rest } = splitSheet(reference.trim().replace(/^=/, ""));
  const on = sheetName === null ? sheet : sheetNamed(book, sheetName);
  if (sheetName !== null && !on) return null;
  const rectangle = parseRectangle(rest);
  if (rectangle) return on ? { book, sheetId: on.id, ...rectangle } : null;
  const formula = book.names.formulaOf(rest, on?.id ?? null);
  if (formula !== null) return resolveArea(book, formula, null);
  return structuredArea(book, rest);
}
