import { areaAddress, placeOf } from "../reading/address";
import { type Clash, type KeptResult, mergeKept, readKept, resultsTable } from "../store/keptResults";
import { columnOffsets, columnsOf, type StoreRemark } from "../store/storeTable";
import { type BeforeImage, restoreCells } from "./beforeImage";
import {
  createStoreTables,
  fillStoreTable,
  headerRow,
  offer,
  rememberStoreTables,
  removeSheets,
} from "./createStoreTable";
import type { Anchor, Deed, Restoration } from "./deed";
import { trapHost } from "./hostRefusal";
import { resultsSheet } from "./storeSheet";
import { findStoreTables, readTables, rowsAtOnce, type StandingTable, type TablesOfWorkbook } from "./storeTables";
import { writeCells } from "./tableCells";
import { styleColumn } from "./tableLook";

export type KeptOutcome = {
  /** How many rows came to the table, how many were renewed, how many stood there already. */
  readonly added: number;
  readonly changed: number;
  readonly same: number;
  /** Trials that stand with another value of another origin: nothing was written of these. */
  readonly clashes: readonly Clash[];
  /** Why nothing at all was written, and where; null where nothing was in the way. */
  readonly inTheWay: StoreRemark | null;
  readonly deed: Deed;
};

/**
 * Keeps results in the workbook's own table, which is made where there is none: new ones below the last row, corrected
 * ones in their row. The coach's own columns, sorting and filters stay as they are. Three round trips, and more only
 * for tables longer than `rowsAtOnce`. Where the coach's cells are in the way, nothing is written.
 */
export const keepResults = (fresh: readonly KeptResult[]): Promise<KeptOutcome> =>
  trapHost(() =>
    Excel.run(async (context): Promise<KeptOutcome> => {
      const workbook = await findStoreTables(context);
      const table = workbook.find(resultsTable);
      return table ? addToTable(context, table, fresh) : makeTable(context, workbook, fresh);
    }),
  );

const nothingDone: Deed = { what: "Kept nothing new.", steps: [] };

async function makeTable(
  context: Excel.RequestContext,
  workbook: TablesOfWorkbook,
  fresh: readonly KeptResult[],
): Promise<KeptOutcome> {
  const { added, same, clashes } = mergeKept([], fresh);
  const told = { added: added.length, changed: 0, same: same.length, clashes, inTheWay: null };
  if (added.length === 0) return { ...told, deed: nothingDone };
  const [created] = createStoreTables(context, [resultsSheet([])], workbook);
  const { sheet, table, sheetName } = created!;
  try {
    await context.sync();
    fillStoreTable(created!);
    const headings = columnsOf(resultsTable).map(([, { heading }]) => heading);
    const area = { row: headerRow, column: 0, rowCount: 2, columnCount: headings.length };
    await appendRows(context, { table, sheet, area, headings, from: headerRow + 1 }, added);
    const filled = { ...created!, store: resultsSheet(added) };
    const steps = rememberStoreTables(context, [filled], workbook);
    await context.sync();
    return { ...told, deed: { what: keptWords(added.length, 0, sheetName), steps } };
  } catch (error) {
    await removeSheets(context, [sheetName]);
    throw error;
  }
}

async function addToTable(
  context: Excel.RequestContext,
  table: Excel.Table,
  fresh: readonly KeptResult[],
): Promise<KeptOutcome> {
  const below = table
    .getRange()
    .getLastRow()
    .getOffsetRange(1, 0)
    .getResizedRange(Math.max(fresh.length, 1) - 1, 0);
  const inTheWay = below.getUsedRangeOrNullObject(true);
  inTheWay.load("address");
  const [standing] = await readTables(context, [table], "before");
  const { cells, sheet } = standing!;
  const { added, changed, same, clashes } = withoutFormulas(mergeKept(readKept(cells).results, fresh), standing!);
  const told = { added: added.length, changed: changed.length, same: same.length, clashes };

  const blank = blankRowsAtEnd(standing!);
  const obstacle = missingColumn(standing!) ?? obstacleBelow(standing!, inTheWay, added.length - blank);
  if (obstacle) return { ...told, added: 0, changed: 0, inTheWay: obstacle, deed: nothingDone };
  if (added.length + changed.length === 0) return { ...told, inTheWay: null, deed: nothingDone };

  const image = imageOf(standing!);
  const renewals = renewRows(standing!, changed, image);
  const from = cells.firstRow + cells.body.length - blank;
  const place = { table, sheet, area: standing!.area, headings: cells.headings, from };
  await appendRows(context, place, added);
  await context.sync();
  const steps = [...renewals, ...(added.length === 0 ? [] : undoAppending(place, added, image))];
  return { ...told, inTheWay: null, deed: { what: keptWords(added.length, changed.length, sheet.name), steps } };
}

/** Where rows are appended: `from` is the sheet's row of the first of them, zero-based. */
type Place = {
  readonly table: Excel.Table;
  readonly sheet: Excel.Worksheet;
  readonly area: StandingTable["area"];
  readonly headings: readonly string[];
  readonly from: number;
};

const grownArea = ({ area, from }: Place, count: number): StandingTable["area"] => ({
  ...area,
  rowCount: Math.max(area.rowCount, from + count - area.row),
});

/**
 * Queues rows at the end, column by column, and then the table's new size: where the sheet is protected, the first write
 * is refused and nothing has changed. Longer appends are sent in portions, and cleared again where one fails.
 */
async function appendRows(context: Excel.RequestContext, place: Place, added: readonly KeptResult[]): Promise<void> {
  const { sheet, area, table, headings, from } = place;
  const offsets = columnOffsets(resultsTable, headings);
  const { choices, table: look } = resultsSheet([]);
  for (let done = 0; done < added.length; done += rowsAtOnce) {
    const portion = added.slice(done, done + rowsAtOnce);
    columnsOf(resultsTable).forEach(([field, { write }], index) => {
      const offset = offsets[field];
      if (offset === null) return;
      const range = sheet.getRangeByIndexes(from + done, area.column + offset, portion.length, 1);
      const definition = look.columns[index]!;
      writeCells(
        range,
        definition.format,
        portion.map((row) => write(row[field])),
      );
      styleColumn(range, definition, offset === 0);
      offer(range, choices[index] ?? null);
    });
    if (done + rowsAtOnce >= added.length) continue;
    try {
      await context.sync();
    } catch (error) {
      if (done > 0) sheet.getRangeByIndexes(from, area.column, done, area.columnCount).clear("Contents");
      await context.sync();
      throw error;
    }
  }
  const { row, column, rowCount, columnCount } = grownArea(place, added.length);
  if (rowCount !== area.rowCount) table.resize(sheet.getRangeByIndexes(row, column, rowCount, columnCount));
}

type Merged = ReturnType<typeof mergeKept<ReturnType<typeof readKept>["results"][number]>>;

/** A value that a formula of the coach's gives is never written over: it clashes instead. */
function withoutFormulas(merged: Merged, { before, cells, area }: StandingTable): Merged {
  const column = columnOffsets(resultsTable, cells.headings).value;
  const isFormula = (offset: number): boolean => {
    const formula = before.formulas[cells.firstRow - area.row + offset]?.[column ?? 0];
    return typeof formula === "string" && formula.startsWith("=");
  };
  return {
    ...merged,
    changed: merged.changed.filter(({ standing }) => !isFormula(standing.offset)),
    clashes: [...merged.clashes, ...merged.changed.filter(({ standing }) => isFormula(standing.offset))],
  };
}

/** Queues the new values of corrected results, and gives what stood there. */
function renewRows({ cells, sheet }: StandingTable, changed: Merged["changed"], image: BeforeImage): Restoration[] {
  const offsets = columnOffsets(resultsTable, cells.headings);
  const renew = (offset: number | null, row: number, value: number | string): Restoration[] => {
    if (offset === null) return [];
    const [at, column] = [cells.firstRow + row, cells.firstColumn + offset];
    sheet.getRangeByIndexes(at, column, 1, 1).values = [[value]];
    return [{ ...restoreCells(image, at, column, 1, 1), written: [[value]] }];
  };
  return changed.flatMap(({ standing, fresh }) => [
    ...renew(offsets.value, standing.offset, fresh.value),
    ...(fresh.unit === null || fresh.unit === standing.unit ? [] : renew(offsets.unit, standing.offset, fresh.unit)),
  ]);
}

/** How to take appended rows away again: our columns emptied, then the table as long as it was. */
function undoAppending(place: Place, added: readonly KeptResult[], image: BeforeImage): Restoration[] {
  const { area, table, headings, from } = place;
  const offsets = columnOffsets(resultsTable, headings);
  const emptied = columnsOf(resultsTable).flatMap(([field, { write }]) => {
    const offset = offsets[field];
    if (offset === null) return [];
    const written = added.map((row) => [write(row[field]) ?? ""]);
    return [{ ...restoreCells(image, from, area.column + offset, added.length, 1), written }];
  });
  const address = ({ row, column, rowCount, columnCount }: StandingTable["area"]) =>
    areaAddress(row, column, rowCount, columnCount);
  const grown = address(grownArea(place, added.length));
  if (grown === address(area)) return emptied;
  return [
    ...emptied,
    { kind: "resizeTable", tableId: table.id, sheetId: image.sheetId, address: address(area), written: grown },
  ];
}

function imageOf({ table, sheet, area, before }: StandingTable): BeforeImage {
  const anchor: Anchor = { tableId: table.id, row: area.row, column: area.column };
  return { sheetId: sheet.id, anchor, row: area.row, column: area.column, ...before };
}

/** Rows at the end of the table with nothing in them, to be filled before the table grows. */
function blankRowsAtEnd({ cells, before, area, hasTotals }: StandingTable): number {
  if (hasTotals) return 0;
  const offsets = Object.values(columnOffsets(resultsTable, cells.headings)) as (number | null)[];
  const isBlank = (row: number): boolean => {
    const formulas = before.formulas[cells.firstRow - area.row + row];
    const oursAreFree = offsets.every((offset) => offset === null || (formulas?.[offset] ?? "") === "");
    return oursAreFree && cells.body[row]!.every((cell) => cell === null);
  };
  let count = 0;
  while (count < cells.body.length && isBlank(cells.body.length - 1 - count)) count += 1;
  return count;
}

/** All columns but unit and source say which trial a row is; without one of them a row would mean another. */
function missingColumn({ cells, area }: StandingTable): StoreRemark | null {
  const offsets = columnOffsets(resultsTable, cells.headings);
  const missing = columnsOf(resultsTable).find(
    ([field]) => field !== "unit" && field !== "source" && offsets[field] === null,
  );
  if (!missing) return null;
  const why = `No column is headed “${missing[1].heading}”; without it no result can be kept.`;
  return { sheet: cells.sheet, cell: areaAddress(area.row, area.column, 1, 1), why };
}

/** @param rowCount how many rows the table grows by. */
function obstacleBelow(
  { cells: { sheet }, area, hasTotals }: StandingTable,
  below: Excel.Range,
  rowCount: number,
): StoreRemark | null {
  if (rowCount <= 0) return null;
  const end = area.row + area.rowCount;
  if (hasTotals) {
    const cell = areaAddress(end - 1, area.column, 1, 1);
    return { sheet, cell, why: "The row of totals is in the way; switch it off to keep results." };
  }
  if (below.isNullObject) return null;
  const cell = below.address.slice(below.address.lastIndexOf("!") + 1);
  if (placeOf(cell.split(":")[0]!).row >= end + rowCount) return null;
  return { sheet, cell, why: "Cells below the table are in the way; move them to keep results." };
}

function keptWords(added: number, changed: number, sheet: string): string {
  const count = (number: number) => `${number} result${number === 1 ? "" : "s"}`;
  const parts = [
    ...(added > 0 ? [`kept ${count(added)}`] : []),
    ...(changed > 0 ? [`renewed ${count(changed)}`] : []),
  ].join(" and ");
  return `${parts.charAt(0).toUpperCase()}${parts.slice(1)} on ${sheet}.`;
}
