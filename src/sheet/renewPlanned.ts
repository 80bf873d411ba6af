import { say } from "../language/say";
import { isCellError, textOf } from "../reading/grid";
import { type EditableRow, keepCoachsRows, type Merged } from "../store/keepCoachsRows";
import { columnOffsets, columnsOf, readStoreTable, type StoreRemark, type StoreTable } from "../store/storeTable";
import type { Deed } from "./deed";
import { trapHost } from "./hostRefusal";
import { makeStoreTable } from "./makeStoreTable";
import { loadBelow, rewriteRows } from "./rewriteRows";
import { findStoreTables, readTables, type StandingTable } from "./storeTables";

/** A table that we plan and the coach edits. */
export type PlannedTable<Row> = {
  readonly table: StoreTable<Row>;
  readonly keyOf: (row: Row) => string;
  /** Whether a row reads as we wrote it. */
  readonly isOurs: (row: Row) => boolean;
  /** Whether a row is of a time that is over, and stays as a record of it. */
  readonly isOver?: (row: Row) => boolean;
  /** Columns that are the coach's to fill: what stands there stays with its row, and keeps it. */
  readonly coachs: readonly (keyof Row & string)[];
};

export type Renewed = {
  readonly sheet: string;
  /** Rows that stand as they were planned now. */
  readonly written: number;
  /** Rows that stay as the coach has them. */
  readonly coachs: number;
  /** Why nothing was written, and where; null where nothing was in the way. */
  readonly inTheWay: StoreRemark | null;
  readonly deed: Deed;
};

/**
 * Puts fresh rows in place of those planned before: a row of the coach's, or changed by the coach, stays as it is; ours
 * are renewed where they stand, so that what the coach has beside them stays beside them. The table is made where there
 * is none. Three round trips, and more only for tables longer than `rowsAtOnce`.
 */
export const renewPlanned = <Row>(planned: PlannedTable<Row>, fresh: readonly Row[]): Promise<Renewed> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Renewed> => {
      const workbook = await findStoreTables(context);
      const standing = workbook.find(planned.table);
      if (standing) return renew(context, planned, standing, fresh);
      const { sheet, steps } = await makeStoreTable(context, workbook, planned.table, fresh, { isShown: true });
      const deed = { what: writtenWords(fresh.length, 0, sheet), steps };
      return { sheet, written: fresh.length, coachs: 0, inTheWay: null, deed };
    }),
  );

async function renew<Row>(
  context: Excel.RequestContext,
  planned: PlannedTable<Row>,
  table: Excel.Table,
  fresh: readonly Row[],
): Promise<Renewed> {
  const below = loadBelow(table, fresh.length);
  const [standing] = await readTables(context, [table], "before");
  const { cells } = standing!;
  const merged: Merged<Row> = keepCoachsRows(editableRows(planned, standing!, fresh), fresh, planned.keyOf);
  const written = merged.written.length + merged.appended.length;
  const told = { sheet: cells.sheet, written, coachs: merged.coachs };
  const outcome = await rewriteRows(context, planned.table, { standing: standing!, below }, merged, {
    coachs: planned.coachs,
    what: writtenWords(written, merged.coachs, cells.sheet),
  });
  if (outcome.kind === "written") return { ...told, inTheWay: null, deed: outcome.deed };
  return { ...told, written: 0, inTheWay: outcome.remark, deed: { what: say`Wrote nothing.`, steps: [] } };
}

/** What each row of the standing table is to us. */
function editableRows<Row>(
  { table, keyOf, isOurs, isOver, coachs }: PlannedTable<Row>,
  { cells, area, before }: StandingTable,
  fresh: readonly Row[],
): EditableRow[] {
  const offsets = columnOffsets(table, cells.headings);
  const ourColumns = columnsOf(table).flatMap(([field]) => offsets[field] ?? []);
  const coachsColumns = coachs.flatMap((field) => offsets[field] ?? []);
  const ownColumns = cells.headings.map((_, column) => column).filter((column) => !ourColumns.includes(column));
  const rowAt = new Map(readStoreTable(table, cells).rows.map(({ row, offset }) => [offset, row]));
  const freshKeys = new Set(fresh.map(keyOf));
  const formulaAt = (offset: number, column: number): boolean => {
    const formula = before.formulas[cells.firstRow - area.row + offset]?.[column];
    return typeof formula === "string" && formula.startsWith("=");
  };
  return cells.body.map((line, offset): EditableRow => {
    const isFilled = (column: number): boolean => {
      const cell = line[column] ?? null;
      return cell !== null && (isCellError(cell) || textOf(cell) !== "");
    };
    const row = rowAt.get(offset);
    const key = row === undefined ? null : keyOf(row);
    const isRecord = row !== undefined && isOver?.(row) === true;
    const isDecidedOn = coachsColumns.some(isFilled) && (key === null || !freshKeys.has(key));
    const isCoachs =
      isDecidedOn || ourColumns.some((column) => formulaAt(offset, column)) || (row !== undefined && !isOurs(row));
    return {
      ...{ offset, key },
      state: !ourColumns.some(isFilled)
        ? "free"
        : isRecord
          ? "over"
          : isCoachs || row === undefined
            ? "coachs"
            : "ours",
      // A column that the coach computes follows its row; words and numbers of theirs belong to what stands beside them.
      hasOwnCells: ownColumns.some((column) => isFilled(column) && !formulaAt(offset, column)),
    };
  });
}

function writtenWords(written: number, coachs: number, sheet: string): string {
  const count = (number: number) => (number === 1 ? say`1 row` : say`${number} rows`);
  return say`Wrote ${count(written)} on ${sheet}${coachs > 0 ? say`, and left ${coachs} of yours as they were` : ""}.`;
}
