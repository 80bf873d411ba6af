import type { ColumnMap } from "../reading/columns";
import { type Cell, type Grid, isCellError, textOf } from "../reading/grid";
import { entryMap } from "../store/entrySheet";
import { entrySheetsSetting, parseEntrySheets, type RememberedEntrySheet } from "../store/entrySheets";
import { isSameName } from "../store/sameName";
import { trapHost } from "./hostRefusal";
import { cellOfValue, readTables } from "./storeTables";

/** What stands on an entry sheet now, and how it is to be read. */
export type EntrySheetReading = {
  readonly sheet: string;
  readonly sheetId: string;
  /** ISO day of all results. */
  readonly date: string;
  readonly grid: Grid;
  readonly map: ColumnMap;
  /** Headings of ours that are no longer there: their results cannot be read. */
  readonly missing: readonly string[];
};

/** All entry sheets that we remember and that still stand, in the order of the workbook. Two round trips. */
export const readEntrySheets = (): Promise<readonly EntrySheetReading[]> =>
  trapHost(() =>
    Excel.run(async (context): Promise<readonly EntrySheetReading[]> => {
      const { settings, tables, worksheets } = context.workbook;
      const setting = settings.getItemOrNullObject(entrySheetsSetting);
      setting.load("value");
      worksheets.load("items/name,items/id");
      tables.load("items/id");
      await context.sync();
      const stored = setting.isNullObject ? null : parseEntrySheets(setting.value);
      if (stored === null) return [];

      const found = worksheets.items.flatMap((sheet) => {
        const plan = stored.sheets[sheet.id];
        if (!plan) return [];
        const table = tables.items.find(({ id }) => id === plan.tableId) ?? null;
        // Where the coach has made plain cells of the table, the sheet's cells are searched for its headings.
        const used = table ? null : sheet.getUsedRangeOrNullObject(true);
        used?.load("values,rowIndex,columnIndex");
        return [{ sheet, plan, table, used }];
      });
      if (found.length === 0) return [];
      const standing = await readTables(
        context,
        found.flatMap(({ table }) => table ?? []),
      );
      return found.flatMap(({ sheet, plan, table, used }) => {
        const block = table
          ? blockOfTable(standing.find((one) => one.table === table)!.cells)
          : blockOfCells(used!, plan);
        return block ? [readingOf(sheet, plan, block)] : [];
      });
    }),
  );

/** Headings, and the cells below them. */
type Block = Pick<Grid, "firstRow" | "firstColumn" | "cells">;

const blockOfTable = (cells: Awaited<ReturnType<typeof readTables>>[number]["cells"]): Block => ({
  firstRow: cells.firstRow - 1,
  firstColumn: cells.firstColumn,
  cells: [cells.headings, ...cells.body],
});

/** From the row of our headings down to the last result; the lines below the table are no athletes. */
function blockOfCells(used: Excel.Range, { columns }: RememberedEntrySheet): Block | null {
  if (used.isNullObject) return null;
  const cells = used.values.map((row) => row.map(cellOfValue));
  const isOurs = (cell: Cell) => columns.find(({ heading }) => isSameName(heading, textOf(cell)));
  const top = cells.findIndex((row) => row.filter(isOurs).length > columns.length / 2);
  if (top < 0) return null;
  const results = cells[top]!.flatMap((cell, offset) => (isResult(isOurs(cell)) ? [offset] : []));
  const isFilled = (cell: Cell | undefined) => cell != null && (isCellError(cell) || textOf(cell) !== "");
  const last = cells.findLastIndex((row) => results.some((offset) => isFilled(row[offset])));
  return {
    firstRow: used.rowIndex + top,
    firstColumn: used.columnIndex,
    cells: cells.slice(top, last + 1),
  };
}

const isResult = (column: RememberedEntrySheet["columns"][number] | undefined): boolean =>
  column !== undefined && column.use !== "athlete" && column.use !== "group";

function readingOf(sheet: Excel.Worksheet, { columns, date }: RememberedEntrySheet, block: Block): EntrySheetReading {
  const headings = block.cells[0]!.map(textOf);
  return {
    ...{ sheet: sheet.name, sheetId: sheet.id, date },
    grid: { ...block, sheet: sheet.name, hiddenRows: [], unselectedRows: [], unselectedColumns: [], mergedAreas: [] },
    map: entryMap(columns, { headings, firstColumn: block.firstColumn, date }),
    missing: columns.flatMap(({ heading }) => (headings.some((one) => isSameName(one, heading)) ? [] : [heading])),
  };
}
