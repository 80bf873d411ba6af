import { say } from "../language/say";
import { type RememberedTables, rememberedTablesSetting } from "../store/rememberedTables";
import { freeName } from "./createTable";
import type { CellGrid, Restoration } from "./deed";
import { setUpPage } from "./pageSetup";
import type { Choices, StoreSheet } from "./storeSheet";
import type { TablesOfWorkbook } from "./storeTables";
import { writeColumn } from "./tableCells";
import { styleLines } from "./tableLook";
import { rowHeight, wrappedLineCount } from "./wrappedLineCount";

export type CreatedStoreTable = {
  readonly store: StoreSheet;
  readonly sheetName: string;
  readonly sheet: Excel.Worksheet;
  readonly table: Excel.Table;
};

/** Title, line of use, and a blank row stand above the headings. */
export const headerRow = 3;

/**
 * Queues sheets with empty tables of the right size, each under its own name or the next that is free, and loads their
 * identities. The caller sends it off.
 */
export function createStoreTables(
  context: Excel.RequestContext,
  stores: readonly StoreSheet[],
  { taken }: TablesOfWorkbook,
): CreatedStoreTable[] {
  const sheets = [...taken.sheets];
  const tables = [...taken.tables];
  return stores.map((store) => {
    const sheetName = freeName(store.sheet, " ", sheets);
    const tableName = freeName(store.table.name, "_", tables);
    sheets.push(sheetName);
    tables.push(tableName);
    const sheet = context.workbook.worksheets.add(sheetName);
    const rowCount = Math.max(store.table.rows.length, 1);
    const area = sheet.getRangeByIndexes(headerRow, 0, rowCount + 1, store.table.columns.length);
    const headings = area.getRow(0);
    headings.numberFormat = [store.table.columns.map(() => "@")];
    headings.values = [store.table.columns.map(({ heading }) => heading)];
    const table = sheet.tables.add(area, true);
    table.name = tableName;
    table.style = "TableStyleLight1";
    table.showBandedRows = false;
    sheet.load("name,id");
    table.load("id");
    return { store, sheetName, sheet, table };
  });
}

/** Queues everything that goes into a created table and its sheet. */
export function fillStoreTable({ store, sheet }: CreatedStoreTable): void {
  const above = sheet.getRangeByIndexes(0, 0, 2, 1);
  above.values = [[store.title], [store.use]];
  styleLines(above);
  const { columns, rows } = store.table;
  columns.forEach((column, index) => {
    const heading = sheet.getRangeByIndexes(headerRow, index, 1, 1);
    // An empty table has one row, dressed like any other.
    const values = rows.length === 0 ? [null] : rows.map((row) => row[index] ?? null);
    writeColumn(heading, store.table, index, values);
    heading.format.columnWidth = store.widths[index]! * pointsPerCharacter;
    explain(heading, column.heading, column.meaning);
    dressCells(heading.getOffsetRange(1, 0).getResizedRange(values.length - 1, 0), store, index);
  });
  rows.forEach((row, index) => {
    const lines = row.map((value, column) =>
      isSentence(store, column) ? wrappedLineCount(String(value ?? ""), store.widths[column]! - 2) : 1,
    );
    const most = Math.max(...lines);
    if (most > 1) sheet.getRangeByIndexes(headerRow + 1 + index, 0, 1, 1).format.rowHeight = rowHeight(most);
  });
  sheet.freezePanes.freezeRows(headerRow + 1);
  setUpPage(sheet, { titleRow: headerRow });
  sheet.showGridlines = false;
}

/** Gives cells of a column what its number format and colour are not: lines that break, and the words it offers. */
export function dressCells(cells: Excel.Range, store: StoreSheet, column: number): void {
  if (isSentence(store, column)) cells.format.wrapText = true;
  cells.format.verticalAlignment = "Top";
  offer(cells, store.choices[column] ?? null);
}

const pointsPerCharacter = 5.6;
/** Columns of whole sentences are this wide, in characters, and wrap. */
const wrappedFrom = 36;

const isSentence = ({ table, widths }: StoreSheet, column: number): boolean =>
  table.columns[column]!.format === undefined && widths[column]! >= wrappedFrom;

/**
 * Shows what a column means when its heading is selected. Excel holds 32 characters in the title of a prompt and 255 in its
 * message.
 */
export function explain(heading: Excel.Range, title: string, meaning: string): void {
  heading.dataValidation.rule = { custom: { formula: "=TRUE" } };
  heading.dataValidation.errorAlert = { showAlert: false, style: "Information", title: "", message: "" };
  heading.dataValidation.prompt = { showPrompt: true, title: title.slice(0, 32), message: meaning.slice(0, 255) };
}

/** A list in a rule holds 255 characters; a longer one is left to the prompt of the heading. */
const listLimit = 255;

/** Offers the words of a column in a list in each of its cells. */
export function offer(body: Excel.Range, choices: Choices | null): void {
  const source = choices?.words.join(",") ?? "";
  if (choices === null || source.length > listLimit) return;
  body.dataValidation.rule = { list: { inCellDropDown: true, source } };
  const message = say`One of these is needed: ${choices.words.join(", ")}.`;
  body.dataValidation.errorAlert = {
    showAlert: choices.only,
    style: "Stop",
    title: say`Not in the list`,
    message: message.length <= 255 ? message : say`Choose one from the list, or leave the cell empty.`,
  };
}

/**
 * Queues that the workbook remembers the created tables, and gives how to undo creating them. What a newer version has
 * written stays as it is: the tables are then found by their names.
 */
export function rememberStoreTables(
  context: Excel.RequestContext,
  created: readonly CreatedStoreTable[],
  { remembered, setting }: TablesOfWorkbook,
): Restoration[] {
  const removals = created.map(
    ({ sheet, store }): Restoration => ({
      kind: "removeSheet",
      sheetId: sheet.id,
      written: { row: 0, column: 0, formulas: writtenCells(store) },
    }),
  );
  if (remembered === null) return removals;
  const next: RememberedTables = {
    ...remembered,
    tables: {
      ...remembered.tables,
      ...Object.fromEntries(
        created.map(({ store, sheet, table }) => [store.id, { tableId: table.id, sheetId: sheet.id }]),
      ),
    },
  };
  context.workbook.settings.add(rememberedTablesSetting, next);
  const entries = created.map(({ store }) => ({ entry: store.id, value: remembered.tables[store.id] }));
  const existed = setting !== undefined;
  return [...removals, { kind: "restoreEntries", key: rememberedTablesSetting, record: "tables", entries, existed }];
}

/** All cells of the sheet as we write them. */
function writtenCells({ title, use, table: { columns, rows } }: StoreSheet): CellGrid {
  const line = (text: string) => columns.map((_, index) => (index === 0 ? text : ""));
  const body = rows.length === 0 ? [line("")] : rows.map((row) => row.map((value) => value ?? ""));
  return [line(title), line(use), line(""), columns.map(({ heading }) => heading), ...body];
}

/** Removes sheets of these names, as far as they were made, so that nothing half-written stays. */
export async function removeSheets(context: Excel.RequestContext, names: readonly string[]): Promise<void> {
  const sheets = names.map((name) => context.workbook.worksheets.getItemOrNullObject(name));
  await context.sync();
  for (const sheet of sheets) if (!sheet.isNullObject) sheet.delete();
  await context.sync();
}
