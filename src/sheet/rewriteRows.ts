import { say } from "../language/say";
import { areaAddress, placeOf } from "../reading/address";
import { columnOffsets, columnsOf, type StoreRemark, type StoreTable } from "../store/storeTable";
import { withoutSheet } from "./areas";
import { type BeforeImage, restoreCells } from "./beforeImage";
import { type CellPlace, cellRuns } from "./cellRuns";
import { dressCells } from "./createStoreTable";
import type { Deed, Restoration } from "./deed";
import { cellsAtOnce, inPortions, type LongWork } from "./longWork";
import { storeSheet } from "./storeSheet";
import { imageOf, type StandingTable } from "./storeTables";
import { writeCells } from "./tableCells";
import { styleColumn } from "./tableLook";
import { writeOrTakeBack } from "./takeBack";

/** What is to become of the rows of a table of ours that stands; offsets are from its first row of data. */
export type RowChanges<Row> = {
  readonly written: readonly {
    readonly offset: number;
    readonly row: Row;
    /** Fields that become another; all where it is left out. */
    readonly fields?: readonly (keyof Row)[];
  }[];
  /** Rows whose cells of ours are emptied. They stay, for what the coach has beside them. */
  readonly emptied: readonly number[];
  /** What comes below the last row. */
  readonly appended: readonly Row[];
};

export type RowsRewritten =
  | { readonly kind: "written"; readonly deed: Deed }
  /** Nothing was written, since this is in the way. */
  | { readonly kind: "inTheWay"; readonly remark: StoreRemark };

/** Queues reading what stands below a table, before it may grow by so many rows. */
export function loadBelow(table: Excel.Table, rowCount: number): Excel.Range {
  const last = table.getRange().getLastRow().getOffsetRange(1, 0);
  const below = last.getResizedRange(Math.max(rowCount, 1) - 1, 0).getUsedRangeOrNullObject(true);
  return below.load("address");
}

/**
 * Writes rows where they stand and others below them, one round trip in all for up to `cellsAtOnce` cells. Columns of the
 * coach's own, and `coachs` of ours that are theirs to fill, are never written; columns `spare` may be gone. Where the
 * program fails, or the work is stopped, the table is as before.
 *
 * @param standing read with all that is needed to put it back.
 * @param below what `loadBelow` has read.
 * @param what the deed in a coach's words.
 */
export async function rewriteRows<Row>(
  context: Excel.RequestContext,
  table: StoreTable<Row>,
  { standing, below }: { readonly standing: StandingTable; readonly below: Excel.Range },
  changes: RowChanges<Row>,
  {
    coachs,
    spare = [],
    what,
    work = {},
  }: {
    readonly coachs: readonly (keyof Row)[];
    readonly spare?: readonly (keyof Row)[];
    readonly what: string;
    readonly work?: LongWork;
  },
): Promise<RowsRewritten> {
  const columns = ourColumns(table, standing).filter(
    ({ field, offset }) => !coachs.includes(field) && !(offset === null && spare.includes(field)),
  );
  const missing = columns.find(({ offset }) => offset === null);
  const remark = missing ? missingColumn(standing, missing.heading) : obstacleBelow(standing, below, changes.appended);
  if (remark) return { kind: "inTheWay", remark };

  const image = imageOf(standing);
  const runs = cellRuns(changedCells(columns, standing, changes));
  const isUnchanged = runs.every(({ cells }) => cells.every(({ before, content }) => before === (content ?? "")));
  const inPlace = isUnchanged ? [] : runs;
  const steps: Restoration[] = [
    ...inPlace.map(({ row, column, cells }) => ({
      ...restoreCells(image, row, column, cells.length, 1),
      written: cells.map(({ content }) => [content ?? ""]),
    })),
    ...undoAppending(columns, standing, changes.appended, image),
  ];
  const deed: Deed = { what, steps };
  if (steps.length === 0) return { kind: "written", deed };
  return writeOrTakeBack(deed, async () => {
    await inPortions(
      context,
      inPlace,
      ({ cells }) => cells.length,
      ({ row, column, cells }) => {
        const range = standing.sheet.getRangeByIndexes(row, column, cells.length, 1);
        // The format goes first, so that text which looks like a formula or a number stays text.
        range.numberFormat = cells.map(({ format }) => [format]);
        range.values = cells.map(({ content }) => [content ?? ""]);
      },
    );
    await appendRows(context, table, standing, changes.appended, coachs, work);
    await context.sync();
    return { kind: "written", deed };
  });
}

/** Column of ours, with its number among them and its place in the standing table. */
type OurColumn<Row> = {
  readonly field: keyof Row & string;
  readonly heading: string;
  readonly format: string;
  readonly content: (row: Row) => number | string | null;
  readonly offset: number | null;
};

function ourColumns<Row>(table: StoreTable<Row>, { cells }: StandingTable): OurColumn<Row>[] {
  const offsets = columnOffsets(table, cells.headings);
  return columnsOf(table).map(([field, { heading, format, write }]) => ({
    ...{ field, heading, format, offset: offsets[field] },
    content: (row: Row) => write(row[field]),
  }));
}

type ChangedCell = CellPlace & {
  readonly content: number | string | null;
  readonly before: unknown;
  readonly format: string;
};

function changedCells<Row>(
  columns: readonly OurColumn<Row>[],
  { cells, area, before }: StandingTable,
  { written, emptied }: RowChanges<Row>,
): ChangedCell[] {
  const rows = [...written, ...emptied.map((offset) => ({ offset, row: null, fields: undefined }))];
  return columns.flatMap((column) =>
    rows.flatMap(({ offset, row: fresh, fields }): ChangedCell[] => {
      if (fields && !fields.includes(column.field)) return [];
      const row = cells.firstRow + offset;
      const content = fresh === null ? null : column.content(fresh);
      const format = String(before.numberFormat[row - area.row]?.[column.offset!] ?? "General");
      return [
        {
          ...{ row, column: area.column + column.offset!, content },
          before: before.formulas[row - area.row]?.[column.offset!] ?? "",
          format: formatFor(content, format, column.format),
        },
      ];
    }),
  );
}

/** A number format that the coach has chosen stays, as long as it can show what comes. */
function formatFor(content: number | string | null, standing: string, ours: string): string {
  if (typeof content === "string") return "@";
  return typeof content === "number" && standing === "@" ? ours : standing;
}

/** Queues rows below the last, column by column, and then the table's new size; many are sent in portions. */
async function appendRows<Row>(
  context: Excel.RequestContext,
  table: StoreTable<Row>,
  standing: StandingTable,
  appended: readonly Row[],
  coachs: readonly (keyof Row)[],
  { onProgress, signal }: LongWork,
): Promise<void> {
  const { sheet, area } = standing;
  const store = storeSheet(table, []);
  const columns = ourColumns(table, standing);
  const atOnce = Math.floor(cellsAtOnce / columns.length);
  for (let done = 0; done < appended.length; done += atOnce) {
    if (done > 0) {
      await context.sync();
      onProgress?.(done, appended.length);
      signal?.throwIfAborted();
    }
    const portion = appended.slice(done, done + atOnce);
    columns.forEach(({ field, offset, format, content }, index) => {
      if (offset === null) return;
      const cells = sheet.getRangeByIndexes(area.row + area.rowCount + done, area.column + offset, portion.length, 1);
      if (!coachs.includes(field)) writeCells(cells, format, portion.map(content));
      styleColumn(cells, store.table.columns[index]!, offset === 0);
      dressCells(cells, store, index);
    });
  }
  if (appended.length === 0) return;
  const { row, column, rowCount, columnCount } = area;
  standing.table.resize(sheet.getRangeByIndexes(row, column, rowCount + appended.length, columnCount));
}

/** How to take appended rows away again: our columns emptied, then the table as long as it was. */
function undoAppending<Row>(
  columns: readonly OurColumn<Row>[],
  { area, table }: StandingTable,
  appended: readonly Row[],
  image: BeforeImage,
): Restoration[] {
  if (appended.length === 0) return [];
  const { row, column, rowCount, columnCount } = area;
  const emptied = columns.map(({ offset, content }) => ({
    ...restoreCells(image, row + rowCount, column + offset!, appended.length, 1),
    written: appended.map((fresh) => [content(fresh) ?? ""]),
  }));
  return [
    ...emptied,
    {
      kind: "resizeTable",
      ...{ tableId: table.id, sheetId: image.sheetId },
      address: areaAddress(row, column, rowCount, columnCount),
      written: areaAddress(row, column, rowCount + appended.length, columnCount),
    },
  ];
}

function missingColumn({ cells, area }: StandingTable, heading: string): StoreRemark {
  const why = say`No column is headed “${heading}”; without it nothing can be renewed.`;
  return { sheet: cells.sheet, cell: areaAddress(area.row, area.column, 1, 1), why };
}

function obstacleBelow(
  { cells: { sheet }, area, hasTotals }: StandingTable,
  below: Excel.Range,
  appended: readonly unknown[],
): StoreRemark | null {
  if (appended.length === 0) return null;
  const end = area.row + area.rowCount;
  if (hasTotals) {
    const cell = areaAddress(end - 1, area.column, 1, 1);
    return { sheet, cell, why: say`The row of totals is in the way; switch it off for the table to grow.` };
  }
  if (below.isNullObject) return null;
  const cell = withoutSheet(below.address);
  if (placeOf(cell.split(":")[0]!).row >= end + appended.length) return null;
  return { sheet, cell, why: say`Cells below the table are in the way; move them for the table to grow.` };
}
