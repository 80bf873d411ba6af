import { say } from "../language/say";
import type { Cell } from "../reading/grid";
import {
  findTable,
  noRememberedTables,
  parseRememberedTables,
  type RememberedTables,
  rememberedTablesSetting,
} from "../store/rememberedTables";
import type { StoreRemark, StoreTableId, TableCells } from "../store/storeTable";
import type { BeforeImage } from "./beforeImage";
import type { CellGrid } from "./deed";

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
  /** Heading row, rows of data and row of totals, zero-based. */
  readonly area: {
    readonly row: number;
    readonly column: number;
    readonly rowCount: number;
    readonly columnCount: number;
  };
  readonly hasTotals: boolean;
  /** All cells of the area as they were, where that was asked for. */
  readonly before: { readonly values: CellGrid; readonly formulas: CellGrid; readonly numberFormat: CellGrid };
};

/**
 * Rows of a table that are read or written at once: 9 columns of them are some 2 MB, and Excel on the web takes and
 * answers 5 MB at most. A longer table takes one more round trip for each further portion.
 */
export const rowsAtOnce = 20_000;

/** What is loaded of the cells: their values alone, or all that a write must be able to put back. */
const loadedOf = {
  values: { properties: ["values"], rows: rowsAtOnce },
  before: { properties: ["values", "formulas", "numberFormat"], rows: rowsAtOnce / 2 },
} as const;

/** Reads whole tables, hidden rows included, in one round trip (see `rowsAtOnce`). */
export async function readTables(
  context: Excel.RequestContext,
  tables: readonly Excel.Table[],
  what: keyof typeof loadedOf = "values",
): Promise<StandingTable[]> {
  const { properties, rows } = loadedOf[what];
  const loading = tables.map((table) => {
    table.load("name,id,showHeaders,showTotals");
    table.columns.load("items/name");
    const sheet = table.worksheet;
    sheet.load("name,id");
    const whole = table.getRange();
    whole.load("rowIndex,columnIndex,rowCount,columnCount");
    const first = whole.getIntersectionOrNullObject(sheet.getRange(`1:${rows}`));
    first.load(properties.join(","));
    return { table, sheet, whole, first };
  });
  await context.sync();
  const standing: StandingTable[] = [];
  for (const { table, sheet, whole, first } of loading) {
    const before: Record<"values" | "formulas" | "numberFormat", unknown[][]> = {
      ...{ values: [], formulas: [], numberFormat: [] },
    };
    const take = (range: Excel.Range) => {
      for (const property of properties) for (const row of range[property]) before[property].push(row);
    };
    if (!first.isNullObject) take(first);
    const { rowIndex: row, columnIndex: column, rowCount, columnCount } = whole;
    while (before.values.length < rowCount) {
      const done = before.values.length;
      const next = sheet.getRangeByIndexes(row + done, column, Math.min(rows, rowCount - done), columnCount);
      next.load(properties.join(","));
      await context.sync();
      take(next);
    }
    const headers = table.showHeaders ? 1 : 0;
    const body = before.values.slice(headers, table.showTotals ? -1 : undefined);
    standing.push({
      ...{ table, sheet, before, area: { row, column, rowCount, columnCount }, hasTotals: table.showTotals },
      cells: {
        sheet: sheet.name,
        headings: table.columns.items.map(({ name }) => name),
        firstRow: row + headers,
        firstColumn: column,
        body: body.map((line) => line.map(cellOfValue)),
      },
    });
  }
  return standing;
}

/** The table as it was before a write, where it was read with all that is needed to put it back. */
export const imageOf = ({ table, sheet, area: { row, column }, before }: StandingTable): BeforeImage => ({
  ...{ sheetId: sheet.id, anchor: { tableId: table.id, row, column }, row, column },
  ...before,
});

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
  why: say`This table was found by its name: what the workbook remembers of our tables was written by a newer version of the add-in, or is damaged.`,
});
