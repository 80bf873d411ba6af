import type { Cell } from "../reading/grid";
import {
  findTable,
  noRememberedTables,
  parseRememberedTables,
  type RememberedTables,
  rememberedTablesSetting,
} from "../store/rememberedTables";
import type { StoreRemark, StoreTableId, TableCells } from "../store/storeTable";

/** What is known of the workbook's tables before any is read. */
export type TablesOfWorkbook = {
  /** The setting as it stands; undefined where there is none. */
  readonly setting: unknown;
  /** What the setting says; null where a newer version wrote it, or it is damaged: it must then stay as it is. */
  readonly remembered: RememberedTables | null;
  readonly find: (table: { readonly id: StoreTableId; readonly name: string }) => Excel.Table | null;
  readonly taken: { readonly sheets: readonly string[]; readonly tables: readonly string[] };
};

/** One round trip. */
export async function findStoreTables(context: Excel.RequestContext): Promise<TablesOfWorkbook> {
  const { settings, tables, worksheets } = context.workbook;
  const setting = settings.getItemOrNullObject(rememberedTablesSetting);
  setting.load("value");
  tables.load("items/name,items/id");
  worksheets.load("items/name");
  await context.sync();
  const stored = setting.isNullObject ? undefined : setting.value;
  const remembered = stored === undefined ? noRememberedTables : parseRememberedTables(stored);
  return {
    setting: stored,
    remembered,
    find: (table) => findTable(table, remembered, tables.items),
    taken: {
      sheets: worksheets.items.map(({ name }) => name),
      tables: tables.items.map(({ name }) => name),
    },
  };
}

/** A table of ours as it stands, with the handles to write into it. */
export type StandingTable = {
  readonly table: Excel.Table;
  readonly sheet: Excel.Worksheet;
  readonly cells: TableCells;
  readonly hasTotals: boolean;
};

/**
 * Rows of a table that are read at once: 9 columns of them are some 2 MB, and Excel on the web answers with 5 MB at
 * most. A longer table takes one more round trip for each further portion.
 */
export const rowsAtOnce = 20_000;

/** Reads whole tables, hidden rows included, in one round trip (see `rowsAtOnce`). */
export async function readTables(
  context: Excel.RequestContext,
  tables: readonly Excel.Table[],
): Promise<StandingTable[]> {
  const loading = tables.map((table) => {
    table.load("name,id,showHeaders,showTotals");
    table.columns.load("items/name");
    const sheet = table.worksheet;
    sheet.load("name,id");
    const whole = table.getRange();
    whole.load("rowIndex,columnIndex,rowCount,columnCount");
    const first = whole.getIntersectionOrNullObject(sheet.getRange(`1:${rowsAtOnce}`));
    first.load("values");
    return { table, sheet, whole, first };
  });
  await context.sync();
  const standing: StandingTable[] = [];
  for (const { table, sheet, whole, first } of loading) {
    const values: unknown[][] = first.isNullObject ? [] : [...first.values];
    while (values.length < whole.rowCount) {
      const count = Math.min(rowsAtOnce, whole.rowCount - values.length);
      const next = sheet.getRangeByIndexes(whole.rowIndex + values.length, whole.columnIndex, count, whole.columnCount);
      next.load("values");
      await context.sync();
      for (const row of next.values) values.push(row);
    }
    const headers = table.showHeaders ? 1 : 0;
    const body = values.slice(headers, table.showTotals ? -1 : undefined);
    standing.push({
      table,
      sheet,
      hasTotals: table.showTotals,
      cells: {
        sheet: sheet.name,
        headings: table.columns.items.map(({ name }) => name),
        firstRow: whole.rowIndex + headers,
        firstColumn: whole.columnIndex,
        body: body.map((row) => row.map(cellOfValue)),
      },
    });
  }
  return standing;
}

const errorText = /^#(?:N\/A|GETTING_DATA|[A-Z0-9/]+[!?])$/;

/** A value without its type, which would double what is sent: an error is known by its text. */
export function cellOfValue(value: unknown): Cell {
  if (typeof value === "number" || typeof value === "boolean") return value;
  const text = String(value ?? "");
  if (text === "") return null;
  return errorText.test(text) ? { error: text } : text;
}

/** Told once for each table found by its name alone, where the workbook's memory cannot be read. */
export const unknownMemory = ({ cells }: StandingTable): StoreRemark => ({
  sheet: cells.sheet,
  cell: `A${cells.firstRow}`,
  why: "This table was found by its name: what the workbook remembers of our tables was written by a newer version of the add-in, or is damaged.",
});
