import { type Background, noBackground } from "../store/background";
import { batteryTable, readBattery } from "../store/battery";
import { resultsTable } from "../store/keptResults";
import { readWeights, weightsTable } from "../store/qualityWeights";
import { readSquad, squadTable } from "../store/squad";
import type { StoreRemark, StoreTableId, TableCells } from "../store/storeTable";
import { trapHost } from "./hostRefusal";
import { findStoreTables, readTables, unknownMemory } from "./storeTables";

export type BackgroundReading = {
  readonly background: Background;
  readonly remarks: readonly StoreRemark[];
  /** Which tables of ours stand in the workbook, the results among them, which are not read here. */
  readonly present: ReadonlySet<StoreTableId>;
};

type PartReading = Partial<Background> & { readonly remarks: readonly StoreRemark[] };

const parts: readonly { readonly table: { id: StoreTableId; name: string }; read(cells: TableCells): PartReading }[] = [
  { table: squadTable, read: readSquad },
  { table: batteryTable, read: readBattery },
  { table: weightsTable, read: readWeights },
];

/** What the workbook says of athletes, tests and weights. Two round trips. */
export const readBackground = (): Promise<BackgroundReading> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const workbook = await findStoreTables(context);
      const found = parts.flatMap((part) => {
        const table = workbook.find(part.table);
        return table ? [{ ...part, standing: table }] : [];
      });
      const present = new Set(found.map(({ table }) => table.id));
      if (workbook.find(resultsTable)) present.add(resultsTable.id);
      const remarks: StoreRemark[] = [];
      let background = noBackground;
      const standing =
        found.length === 0
          ? []
          : await readTables(
              context,
              found.map((part) => part.standing),
            );
      found.forEach(({ read }, index) => {
        const { remarks: own, ...part } = read(standing[index]!.cells);
        if (workbook.remembered === null) remarks.push(unknownMemory(standing[index]!));
        remarks.push(...own);
        background = { ...background, ...part };
      });
      return { background, remarks, present };
    }),
  );
