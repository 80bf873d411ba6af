import { useMemo, useState } from "react";
import type { AnyAnalysis } from "../analyses/analysis";
import { describe } from "../analyses/describe";
import type { Report } from "../analyses/report";
import { reportKey } from "../analyses/reportKey";
import { today } from "../analyses/today";
import type { Result } from "../engine/result";
import { addressOf, gridAddress } from "../reading/address";
import { type ColumnMap, usesOf } from "../reading/columns";
import type { Grid } from "../reading/grid";
import { type Reading, readResults } from "../reading/readResults";
import { recogniseColumns } from "../reading/recogniseColumns";
import { noBackground } from "../store/background";

export type Question = {
  readonly map: ColumnMap;
  readonly setMap: (map: ColumnMap) => void;
  readonly reading: Reading;
  readonly test: string;
  readonly setTest: (test: string) => void;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly setSetting: (name: string, value: unknown) => void;
  readonly report: Result<Report>;
  /** Says which result this is, so that a rerun renews the same table. */
  readonly key: string;
};

/**
 * What the coach asks of the cells at hand: how they are to be read, which test, which settings; and the answer, which
 * follows every change at once. Corrections to the columns are kept for as long as the same cells stay at hand.
 */
export function useQuestion(analysis: AnyAnalysis, grid: Grid, sheetId: string): Question {
  const place = `${sheetId}!${addressOf(grid, 0, 0)}`;
  const [corrected, setCorrected] = useState<{ readonly place: string; readonly map: ColumnMap } | null>(null);
  const [wishedTest, setTest] = useState("");
  const [settings, setSettings] = useState<Readonly<Record<string, unknown>>>(() => analysis.settings.parse({}));

  const recognised = useMemo(() => recogniseColumns(grid), [grid]);
  const fits = corrected?.place === place && corrected.map.columns.length === recognised.columns.length;
  const map = fits ? corrected.map : recognised;
  const reading = useMemo(() => readResults(grid, map), [grid, map]);
  const test = reading.tests.includes(wishedTest) ? wishedTest : (reading.tests[0] ?? "");
  const report = useMemo(
    () =>
      describe({
        analysis,
        reading,
        uses: usesOf(map),
        test,
        settings,
        background: noBackground,
        source: gridAddress(grid),
        date: today(),
      }),
    [analysis, reading, map, test, settings, grid],
  );
  return {
    map,
    setMap: (next) => setCorrected({ place, map: next }),
    reading,
    test,
    setTest,
    settings,
    setSetting: (name, value) => setSettings((all) => ({ ...all, [name]: value })),
    report,
    key: reportKey(analysis, grid, sheetId, map, test),
  };
}
