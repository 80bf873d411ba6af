import { say } from "../language/say";
import { type DiaryEntry, diaryTable, mergeDiary, readDiary } from "../store/diary";
import type { StoreRemark } from "../store/storeTable";
import type { Deed } from "./deed";
import { trapHost } from "./hostRefusal";
import { makeStoreTable } from "./makeStoreTable";
import { loadBelow, rewriteRows } from "./rewriteRows";
import { findStoreTables, readTables, type StandingTable } from "./storeTables";

export type DiaryKept = {
  readonly sheet: string;
  /** How many entries came to the diary, and how many stood there already. */
  readonly added: number;
  readonly same: number;
  /** Entries that stand with other numbers: nothing was written of these. */
  readonly differing: readonly { readonly standing: DiaryEntry; readonly fresh: DiaryEntry }[];
  /** Why nothing at all was written, and where; null where nothing was in the way. */
  readonly inTheWay: StoreRemark | null;
  readonly deed: Deed;
};

/**
 * Puts entries into the workbook's own diary, each once: the diary is made where there is none, new entries come below
 * the last row, and no row that stands is touched. Three round trips, and more only for diaries longer than
 * `rowsAtOnce`.
 */
export const keepDiary = (fresh: readonly DiaryEntry[]): Promise<DiaryKept> =>
  trapHost(() =>
    Excel.run(async (context): Promise<DiaryKept> => {
      const workbook = await findStoreTables(context);
      const table = workbook.find(diaryTable);
      if (table) return addToDiary(context, table, fresh);
      // The coach stays with the diary that is taken over.
      const { sheet, steps } = await makeStoreTable(context, workbook, diaryTable, fresh, { isShown: false });
      const deed = { what: addedWords(fresh.length, sheet), steps };
      return { sheet, added: fresh.length, same: 0, differing: [], inTheWay: null, deed };
    }),
  );

async function addToDiary(
  context: Excel.RequestContext,
  table: Excel.Table,
  fresh: readonly DiaryEntry[],
): Promise<DiaryKept> {
  const below = loadBelow(table, fresh.length);
  const [standing] = await readTables(context, [table], "before");
  const { added, same, differing } = mergeDiary(readDiary(standing!.cells).diary, fresh);
  const { sheet } = standing!.cells;
  const told = { sheet, added: added.length, same, differing };
  const blank = blankRows(standing!);
  const changes = {
    written: blank.slice(0, added.length).map((offset, index) => ({ offset, row: added[index]! })),
    emptied: [],
    appended: added.slice(blank.length),
  };
  const what = addedWords(added.length, sheet);
  const outcome = await rewriteRows(context, diaryTable, { standing: standing!, below }, changes, { coachs: [], what });
  return outcome.kind === "written"
    ? { ...told, inTheWay: null, deed: outcome.deed }
    : { ...told, added: 0, inTheWay: outcome.remark, deed: { what: say`Wrote nothing.`, steps: [] } };
}

/** Offsets of the rows at the end of the table in which nothing stands: an empty table has one. */
function blankRows({ cells, before, area }: StandingTable): number[] {
  const isBlank = (offset: number): boolean =>
    (before.formulas[cells.firstRow - area.row + offset] ?? []).every((formula) => formula === "");
  const from = cells.body.findLastIndex((_, offset) => !isBlank(offset)) + 1;
  return cells.body.slice(from).map((_, index) => from + index);
}

const addedWords = (count: number, sheet: string): string =>
  count === 1 ? say`Added one entry to ${sheet}.` : say`Added ${count} entries to ${sheet}.`;
