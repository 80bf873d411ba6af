import { say } from "../language/say";
import { type Clash, type KeptResult, mergeKept, type ResultRow, readKept, resultsTable } from "../store/keptResults";
import { columnOffsets, type StoreRemark } from "../store/storeTable";
import type { Deed } from "./deed";
import { trapHost } from "./hostRefusal";
import type { LongWork } from "./longWork";
import { makeStoreTable } from "./makeStoreTable";
import { loadBelow, type RowChanges, rewriteRows } from "./rewriteRows";
import { findStoreTables, readTables, type StandingTable } from "./storeTables";

export type KeptOutcome = {
  /** How many rows came to the table, how many were renewed, how many stood there already. */
  readonly added: number;
  readonly changed: number;
  readonly same: number;
  /** Trials that stand with another value of another origin: nothing was written of these. */
  readonly clashes: readonly Clash[];
  /** Why nothing at all was written, and where; null where nothing was in the way. */
  readonly inTheWay: StoreRemark | null;
  /** Whether the coach stopped it, and nothing was written. */
  readonly cancelled: boolean;
  readonly deed: Deed;
};

/**
 * Keeps results in the workbook's own table, which is made where there is none: new ones below the last row, corrected
 * ones in their row. The coach's own columns, sorting and filters stay as they are. Three round trips, and more only
 * for long tables and many results. Where the coach's cells are in the way, or it is stopped, nothing is written.
 */
export const keepResults = (fresh: readonly KeptResult[], work: LongWork = {}): Promise<KeptOutcome> =>
  trapHost(() =>
    Excel.run(async (context): Promise<KeptOutcome> => {
      const workbook = await findStoreTables(context);
      const table = workbook.find(resultsTable);
      if (table) return addToTable(context, table, fresh, work);
      const { added, same, clashes } = mergeKept([], fresh);
      const { sheet, steps } = await makeStoreTable(context, workbook, resultsTable, added, { isShown: true });
      const deed: Deed = { what: keptWords(added.length, 0, sheet), steps };
      return { added: added.length, changed: 0, same: same.length, clashes, inTheWay: null, cancelled: false, deed };
    }),
  );

async function addToTable(
  context: Excel.RequestContext,
  table: Excel.Table,
  fresh: readonly KeptResult[],
  work: LongWork,
): Promise<KeptOutcome> {
  const below = loadBelow(table, fresh.length);
  const [standing] = await readTables(context, [table], "before");
  const { added, changed, same, clashes } = withoutFormulas(
    mergeKept(readKept(standing!.cells).results, fresh),
    standing!,
  );
  const blank = blankRows(standing!);
  const changes: RowChanges<ResultRow> = {
    written: [
      ...changed.map(({ standing: row, fresh: { value, unit } }) => ({
        offset: row.offset,
        row: { ...row, value, unit: unit ?? row.unit },
        fields: unit === null || unit === row.unit ? ["value"] : ["value", "unit"],
      })),
      ...blank.slice(0, added.length).map((offset, index) => ({ offset, row: added[index]! })),
    ],
    emptied: [],
    appended: added.slice(blank.length),
  };
  const what = keptWords(added.length, changed.length, standing!.sheet.name);
  const told = { same: same.length, clashes, inTheWay: null, cancelled: false };
  const nothing = { ...told, added: 0, changed: 0, deed: { what: say`Kept nothing new.`, steps: [] } };
  try {
    const outcome = await rewriteRows(context, resultsTable, { standing: standing!, below }, changes, {
      ...{ coachs: [], spare: ["unit", "source"], what, work },
    });
    if (outcome.kind === "inTheWay") return { ...nothing, inTheWay: outcome.remark };
    return { ...told, added: added.length, changed: changed.length, deed: outcome.deed };
  } catch (failure) {
    if (work.signal?.aborted && failure === work.signal.reason) return { ...nothing, cancelled: true };
    throw failure;
  }
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

/** Offsets of the rows at the end of the table in which nothing of ours stands, to be filled before the table grows. */
function blankRows({ cells, before, area, hasTotals }: StandingTable): number[] {
  if (hasTotals) return [];
  const offsets = Object.values(columnOffsets(resultsTable, cells.headings)) as (number | null)[];
  const isBlank = (row: number): boolean => {
    const formulas = before.formulas[cells.firstRow - area.row + row];
    const oursAreFree = offsets.every((offset) => offset === null || (formulas?.[offset] ?? "") === "");
    return oursAreFree && cells.body[row]!.every((cell) => cell === null);
  };
  const from = cells.body.findLastIndex((_, row) => !isBlank(row)) + 1;
  return cells.body.slice(from).map((_, index) => from + index);
}

function keptWords(added: number, changed: number, sheet: string): string {
  const [kept, renewed] = [added, changed].map((number) => (number === 1 ? say`1 result` : say`${number} results`));
  if (changed === 0) return say`Kept ${kept} on ${sheet}.`;
  return added === 0 ? say`Renewed ${renewed} on ${sheet}.` : say`Kept ${kept} and renewed ${renewed} on ${sheet}.`;
}
