import { say } from "../language/say";
import {
  asProposed,
  type Decision,
  isAsProposed,
  type Priority,
  type PriorityRow,
  prioritiesTable,
  priorityKey,
} from "../store/priorityTable";
import { columnOffsets, readStoreTable, type StoreRemark } from "../store/storeTable";
import { restoreCells } from "./beforeImage";
import type { Deed, Restoration } from "./deed";
import { trapHost } from "./hostRefusal";
import { type PlannedTable, type Renewed, renewPlanned } from "./renewPlanned";
import { findStoreTables, imageOf, readTables, type StandingTable } from "./storeTables";
import { writeCells } from "./tableCells";
import { writeOrTakeBack } from "./takeBack";

const proposed: PlannedTable<PriorityRow> = {
  table: prioritiesTable,
  keyOf: priorityKey,
  isOurs: isAsProposed,
  coachs: ["choice", "reason"],
};

/**
 * Writes priorities, or puts them in place of those that stand, as `renewPlanned` says. The coach's choice and reason
 * stay with athlete and rank.
 */
export const writePriorities = (fresh: readonly Priority[]): Promise<Renewed> =>
  renewPlanned(proposed, fresh.map(asProposed));

export type Decided = {
  readonly sheet: string;
  /** Why nothing was decided, and where; null where nothing was in the way. */
  readonly inTheWay: StoreRemark | null;
  readonly deed: Deed;
};

/**
 * Writes the coach's decisions beside the proposals they are about, and nothing else; three round trips. Where a proposal
 * does not stand in the workbook yet, all of `fresh` are written first.
 */
export async function writeDecisions(decisions: readonly Decision[], fresh: readonly Priority[]): Promise<Decided> {
  const decided = await decide(decisions);
  if (decided) return decided;
  const choices = new Map(decisions.map((decision) => [priorityKey(decision), decision]));
  const rows = fresh.map((priority) => ({ ...asProposed(priority), ...choices.get(priorityKey(priority)) }));
  const { deed: before, sheet, inTheWay } = await renewPlanned(proposed, rows);
  const after = inTheWay ? null : await decide(decisions);
  // Taken back, the decisions go before the rows they stand in.
  if (after) return { ...after, deed: { what: after.deed.what, steps: [...after.deed.steps, ...before.steps] } };
  const why = say`There is no row for this priority, or no column headed “Coach's choice” and “Coach's reason”.`;
  return { sheet, inTheWay: inTheWay ?? { sheet, cell: "A1", why }, deed: before };
}

/** Null where a decision's row, or a column for it, does not stand. */
const decide = (decisions: readonly Decision[]): Promise<Decided | null> =>
  trapHost(() =>
    Excel.run(async (context): Promise<Decided | null> => {
      const table = (await findStoreTables(context)).find(prioritiesTable);
      if (!table) return null;
      const [standing] = await readTables(context, [table], "before");
      const cells = decisionCells(standing!, decisions);
      if (!cells) return null;
      const { sheet } = standing!;
      const image = imageOf(standing!);
      const deed: Deed = {
        what: say`Overruled a priority of ${decisions[0]!.athlete} on ${standing!.cells.sheet}.`,
        steps: cells.map(
          ({ row, column, content }): Restoration => ({
            ...restoreCells(image, row, column, 1, 1),
            written: [[content ?? ""]],
          }),
        ),
      };
      return writeOrTakeBack(deed, async () => {
        for (const { row, column, content } of cells) {
          writeCells(sheet.getRangeByIndexes(row, column, 1, 1), undefined, [content]);
        }
        await context.sync();
        return { sheet: standing!.cells.sheet, inTheWay: null, deed };
      });
    }),
  );

type DecisionCell = { readonly row: number; readonly column: number; readonly content: string | null };

function decisionCells({ cells, area }: StandingTable, decisions: readonly Decision[]): DecisionCell[] | null {
  const { choice, reason } = columnOffsets(prioritiesTable, cells.headings);
  const offsets = new Map(
    readStoreTable(prioritiesTable, cells).rows.map(({ row, offset }) => [priorityKey(row), offset]),
  );
  const found = decisions.map((decision) => ({ decision, offset: offsets.get(priorityKey(decision)) }));
  if (choice === null || reason === null || found.some(({ offset }) => offset === undefined)) return null;
  return found.flatMap(({ decision, offset }) =>
    [
      { at: choice, content: decision.choice },
      { at: reason, content: decision.reason },
    ]
      .filter(({ at, content }) => (cells.body[offset!]?.[at] ?? null) !== content)
      .map(({ at, content }) => ({ row: cells.firstRow + offset!, column: area.column + at, content })),
  );
}
