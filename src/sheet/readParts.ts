import type { StoreRemark, StoreTableId, TableCells } from "../store/storeTable";
import { readTables, type TablesOfWorkbook, unknownMemory } from "./storeTables";

/** One table of ours and what its rows are called once read. */
export type Part<Readings> = {
  readonly table: { readonly id: StoreTableId; readonly name: string };
  readonly read: (cells: TableCells) => Partial<Readings> & { readonly remarks: readonly StoreRemark[] };
};

export type PartsReading<Readings> = {
  /** What the tables that stand hold. */
  readonly readings: Partial<Readings>;
  readonly remarks: readonly StoreRemark[];
  readonly present: ReadonlySet<StoreTableId>;
};

/** Reads those of the tables that stand. One round trip, none where none stands. */
export async function readParts<Readings>(
  context: Excel.RequestContext,
  workbook: TablesOfWorkbook,
  parts: readonly Part<Readings>[],
): Promise<PartsReading<Readings>> {
  const found = parts.flatMap((part) => {
    const table = workbook.find(part.table);
    return table ? [{ ...part, standing: table }] : [];
  });
  const standing =
    found.length === 0
      ? []
      : await readTables(
          context,
          found.map((part) => part.standing),
        );
  const remarks: StoreRemark[] = [];
  let readings: Partial<Readings> = {};
  found.forEach(({ read }, index) => {
    const { remarks: own, ...part } = read(standing[index]!.cells);
    if (workbook.remembered === null) remarks.push(unknownMemory(standing[index]!));
    remarks.push(...own);
    readings = { ...readings, ...(part as Partial<Readings>) };
  });
  return { readings, remarks, present: new Set(found.map(({ table }) => table.id)) };
}
