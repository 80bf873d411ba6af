import type { AnyAnalysis } from "../src/analyses/analysis";
import { describe as describeAnswer } from "../src/analyses/describe";
import type { Report } from "../src/analyses/report";
import { seriesOf } from "../src/analyses/seriesOf";
import type { Result } from "../src/engine/result";
import { gridAddress } from "../src/reading/address";
import { type ColumnMap, usesOf } from "../src/reading/columns";
import type { Grid } from "../src/reading/grid";
import { type Reading, readResults } from "../src/reading/readResults";
import { recogniseColumns } from "../src/reading/recogniseColumns";
import { noBackground } from "../src/store/background";

export type AskedGrid = { readonly map: ColumnMap; readonly reading: Reading; readonly answer: Result<Report> };

/** Reads a selection as it is recognised and asks an analysis of its first series, as the pane does before anything is set. */
export function askGrid(analysis: AnyAnalysis, grid: Grid): AskedGrid {
  const map = recogniseColumns(grid);
  const reading = readResults(grid, map);
  const { tests } = seriesOf(analysis, reading, noBackground);
  const answer = describeAnswer({
    ...{ analysis, reading, uses: usesOf(map), test: tests[0] ?? "", background: noBackground },
    ...{ settings: analysis.settings.parse({}), source: gridAddress(grid), date: "2026-11-20" },
  });
  return { map, reading, answer };
}
