import { addressOf } from "../reading/address";
import { type ColumnMap, offsetOf } from "../reading/columns";
import type { Grid } from "../reading/grid";
import type { AnyAnalysis } from "./analysis";

/**
 * Says which result a report is, so that a rerun renews the same table: the analysis, the heading of the athletes it
 * was read under (rows may be added below without its becoming another), and the test where there is one at a time.
 *
 * @param sheetId identity of the sheet that was read.
 */
export function reportKey(analysis: AnyAnalysis, grid: Grid, sheetId: string, map: ColumnMap, test: string): string {
  const heading = addressOf(grid, Math.max(map.firstDataRow - 1, 0), offsetOf(map, "athlete") ?? 0);
  return [analysis.id, sheetId, heading, analysis.tests === "one" ? test : ""].join("|");
}

/** The same for an answer from the workbook's own table of results. */
export const keptKey = (analysis: AnyAnalysis, test: string): string =>
  [analysis.id, "kept", analysis.tests === "one" ? test : ""].join("|");
