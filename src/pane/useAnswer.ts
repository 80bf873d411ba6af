import { useMemo, useState } from "react";
import type { AnyAnalysis } from "../analyses/analysis";
import { describe } from "../analyses/describe";
import type { LiveSource } from "../analyses/liveCells";
import type { Report } from "../analyses/report";
import { seriesOf } from "../analyses/seriesOf";
import { today } from "../analyses/today";
import type { Result } from "../engine/result";
import type { ColumnUse } from "../reading/columns";
import type { Reading } from "../reading/readResults";
import { useWorkbook } from "./workbook";

/** Results to ask about, wherever they come from. */
export type ReadResults = {
  readonly reading: Reading;
  readonly uses: ReadonlySet<ColumnUse>;
  /** Address they were read from. */
  readonly address: string;
  /** The cells, where the results come from one sheet: only then can a table follow them by formulas. */
  readonly cells: LiveSource | null;
};

export type Asked = {
  /** The tests that can be asked about. */
  readonly tests: readonly string[];
  readonly test: string;
  readonly setTest: (test: string) => void;
  readonly settings: Readonly<Record<string, unknown>>;
  readonly setSetting: (name: string, value: unknown) => void;
  /** Whether the written table is to hold formulas. */
  readonly live: boolean;
  readonly setLive: (live: boolean) => void;
  readonly report: Result<Report>;
};

/** Which test and settings the coach has chosen, and the answer, which follows every change at once. */
export function useAnswer(analysis: AnyAnalysis, { reading, uses, address, cells }: ReadResults): Asked {
  const { background } = useWorkbook();
  const [wishedTest, setTest] = useState("");
  const [settings, setSettings] = useState<Readonly<Record<string, unknown>>>(() => analysis.settings.parse({}));
  const [live, setLive] = useState(false);
  const { tests } = useMemo(() => seriesOf(analysis, reading, background), [analysis, reading, background]);
  const test = tests.includes(wishedTest) ? wishedTest : (tests[0] ?? "");
  const report = useMemo(
    () =>
      describe({
        ...{ analysis, reading, uses, test, settings, background, source: address, date: today() },
        ...(live && cells ? { live: cells } : {}),
      }),
    [analysis, reading, uses, test, settings, background, live, cells, address],
  );
  return {
    tests,
    test,
    setTest,
    settings,
    setSetting: (name, value) => setSettings((all) => ({ ...all, [name]: value })),
    live,
    setLive,
    report,
  };
}
