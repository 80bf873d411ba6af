import { say } from "../language/say";
import type { BatteryTest } from "../store/battery";
import type { QualityWeight } from "../store/qualityWeights";
import type { SquadMember } from "../store/squad";
import type { Deed } from "./deed";
import { trapHost } from "./hostRefusal";
import { makeStoreTables } from "./makeStoreTable";
import { batterySheet, resultsSheet, type StoreSheet, squadSheet, weightsSheet } from "./storeSheet";
import { findStoreTables } from "./storeTables";

/** The rows to begin with; a table that is not named is not made. */
export type TablesToSetUp = {
  readonly squad?: readonly SquadMember[];
  readonly battery?: readonly BatteryTest[];
  readonly weights?: readonly QualityWeight[];
};

export type SetUp = {
  /** Names of the sheets made, which may be "Squad 2" beside a sheet of the coach's. */
  readonly sheets: readonly string[];
  readonly deed: Deed;
};

/**
 * Makes those tables that do not stand yet, each on its own sheet, and an empty table of results. A table that stands
 * is left as it is. Three round trips; where one fails, the sheets made so far are removed.
 */
export const setUp = ({ squad, battery, weights }: TablesToSetUp): Promise<SetUp> =>
  makeMissing([
    ...(squad ? [squadSheet(squad)] : []),
    ...(battery ? [batterySheet(battery)] : []),
    ...(weights ? [weightsSheet(weights)] : []),
    resultsSheet([]),
  ]);

/** Makes those of the wished tables that do not stand yet, as `setUp` does. */
export const makeMissing = (wished: readonly StoreSheet[]): Promise<SetUp> =>
  trapHost(() =>
    Excel.run(async (context): Promise<SetUp> => {
      const workbook = await findStoreTables(context);
      const missing = wished.filter(({ id, table }) => workbook.find({ id, name: table.name }) === null);
      if (missing.length === 0)
        return { sheets: [], deed: { what: say`Set up nothing: all tables stand.`, steps: [] } };
      const { sheets, steps } = await makeStoreTables(context, workbook, missing, { isShown: true });
      return { sheets, deed: { what: say`Set up ${listed(sheets)}.`, steps } };
    }),
  );

const listed = (names: readonly string[]): string =>
  names.length === 1 ? names[0]! : say`${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
