import { type Background, noBackground } from "../store/background";
import { batteryTable, readBattery } from "../store/battery";
import { comparisonSetting, parseComparison } from "../store/comparison";
import { resultsTable } from "../store/keptResults";
import { readWeights, weightsTable } from "../store/qualityWeights";
import { readSquad, squadTable } from "../store/squad";
import type { StoreRemark, StoreTableId } from "../store/storeTable";
import { trapHost } from "./hostRefusal";
import { type Part, readParts } from "./readParts";
import { findStoreTables } from "./storeTables";

export type BackgroundReading = {
  readonly background: Background;
  readonly remarks: readonly StoreRemark[];
  /** Which tables of ours stand in the workbook, the results among them, which are not read here. */
  readonly present: ReadonlySet<StoreTableId>;
};

const parts: readonly Part<Background>[] = [
  { table: squadTable, read: readSquad },
  { table: batteryTable, read: readBattery },
  { table: weightsTable, read: readWeights },
];

/** What the workbook says of athletes, tests and weights, and whom athletes are compared with. Two round trips. */
export const readBackground = (): Promise<BackgroundReading> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const setting = context.workbook.settings.getItemOrNullObject(comparisonSetting).load("value");
      const workbook = await findStoreTables(context);
      const comparedWith = setting.isNullObject ? {} : { comparedWith: parseComparison(setting.value) };
      const { readings, remarks, present } = await readParts(context, workbook, parts);
      const withResults = workbook.find(resultsTable) ? [...present, resultsTable.id] : present;
      return { background: { ...noBackground, ...readings, ...comparedWith }, remarks, present: new Set(withResults) };
    }),
  );
