import { say } from "../language/say";
import type { ColumnUse } from "../reading/columns";
import { seriesName } from "../reading/measures";
import type { Reading } from "../reading/readResults";
import type { Background } from "./background";
import { fromKept, resultsTable, type StandingResult } from "./keptResults";

/** The workbook's own table of results in the form in which any selection is read. */
export type KeptReading = Reading & {
  /** What an answer says it was read from. */
  readonly address: string;
};

/** What the table tells of each result. */
export const keptUses: ReadonlySet<ColumnUse> = new Set([
  "athlete",
  "result",
  "side",
  "attempt",
  "test",
  "measure",
  "unit",
  "date",
  "group",
]);

export function keptReading(kept: readonly StandingResult[], background: Background): KeptReading {
  const results = fromKept(kept, background);
  return {
    results,
    athletes: [...new Set(results.map(({ athlete }) => athlete))],
    tests: [...new Set(results.map(({ test, measure }) => seriesName(test, measure)))],
    remarks: [],
    bodies: [],
    alike: [],
    address: say`the table ${resultsTable.name}`,
  };
}
