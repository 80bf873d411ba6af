import { useEffect, useMemo, useRef, useState } from "react";
import type { AnyAnalysis } from "../../analyses/analysis";
import { questions } from "../../analyses/questions";
import { keptKey, reportKey } from "../../analyses/reportKey";
import { gridAddress } from "../../reading/address";
import { usesOf } from "../../reading/columns";
import { readResults } from "../../reading/readResults";
import { readKeptResults } from "../../sheet/readKeptResults";
import type { Selection } from "../../sheet/readSelection";
import { type KeptReading, keptReading, keptUses } from "../../store/keptReading";
import { Choice } from "../parts/Choice";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { Page } from "../parts/Page";
import { useNoteRecent } from "../recent";
import type { Screen } from "../screen";
import { useColumns } from "../useColumns";
import { useReading } from "../useReading";
import { useSource } from "../useSource";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { AlikeNames } from "./AlikeNames";
import { AnswerForm } from "./AnswerForm";
import { NotSetUp } from "./NotSetUp";
import { Remarks } from "./Remarks";
import { Understood } from "./Understood";
import { UnderstoodKept } from "./UnderstoodKept";

type Origin = "selection" | "kept";

/** From results, selected on a sheet or kept in the workbook's own table, to the written answer, for any analysis. */
export default function QuestionScreen({ id, go }: { readonly id: string; readonly go: (screen: Screen) => void }) {
  const question = questions.find((one) => one.id === id);
  if (!question) throw new Error(`There is no analysis ${id}.`);
  const [analysis, setAnalysis] = useState<AnyAnalysis | null>(null);
  const [error, setError] = useState<Error | null>(null);
  useEffect(() => {
    question.load().then(setAnalysis, setError);
  }, [question]);
  if (error) throw error;
  return (
    <Page title={question.title} text={question.question} go={go}>
      {analysis ? <FromOrigin analysis={analysis} go={go} /> : <Reading />}
    </Page>
  );
}

type Asking = { readonly analysis: AnyAnalysis; readonly go: (screen: Screen) => void };

function FromOrigin(asking: Asking) {
  const { present } = useWorkbook();
  const [wished, setOrigin] = useState<Origin>("selection");
  if (!present.has("results")) return <FromSelection {...asking} />;
  return (
    <>
      <Choice
        label={words.origin.label}
        value={wished}
        options={[
          ["selection", words.origin.selection],
          ["kept", words.origin.kept],
        ]}
        onChange={setOrigin}
      />
      {wished === "selection" ? <FromSelection {...asking} /> : <FromKeptResults {...asking} />}
    </>
  );
}

function FromSelection({ analysis, go }: Asking) {
  const [resultSheet, setResultSheet] = useState<string | null>(null);
  const { source, retry } = useSource(resultSheet);
  if (source.state === "reading") return <Reading />;
  if (source.state === "failed") return <HostTrouble error={source.error} again={retry} />;
  const { selection } = source;
  if (selection.kind === "empty") {
    return (
      <Message tone="plain" title={words.nothing.title}>
        <p>{words.nothing.text(`${selection.sheet}, ${selection.address}`)}</p>
        <p>{analysis.select}</p>
      </Message>
    );
  }
  return <CellsQuestion analysis={analysis} cells={selection} onWritten={setResultSheet} go={go} />;
}

function CellsQuestion(
  props: Asking & {
    readonly cells: Selection & { readonly kind: "cells" };
    readonly onWritten: (sheet: string) => void;
  },
) {
  const { analysis, cells, onWritten, go } = props;
  const columns = useColumns(cells);
  const { grid, map, setMap } = columns;
  const reading = useMemo(() => readResults(grid, map), [grid, map]);
  const results = useMemo(
    () => ({ reading, uses: usesOf(map), address: gridAddress(grid), cells: { grid, map } }),
    [reading, map, grid],
  );
  useNoteRecent(grid, reading.results.length > 0 ? analysis.id : null);
  return (
    <AnswerForm
      analysis={analysis}
      results={results}
      keyFor={(test) => reportKey(analysis, grid, cells.sheetId, map, test)}
      sheet={grid.sheet}
      onWritten={onWritten}
      go={go}
      understood={(isClear, testChoice) => (
        <>
          <Understood isClear={isClear} columns={columns} reading={reading} grownFrom={cells.grownFrom}>
            {testChoice}
          </Understood>
          <AlikeNames sheet={grid.sheet} reading={reading} map={map} setMap={setMap} />
          <NotSetUp reading={reading} correction={columns} />
          <Remarks sheet={grid.sheet} remarks={reading.remarks} />
        </>
      )}
    />
  );
}

function FromKeptResults({ analysis, go }: Asking) {
  const { background, refresh } = useWorkbook();
  const { value: kept, error } = useReading(readKeptResults);
  const last = useRef<KeptReading | null>(null);
  const reading = useMemo(() => {
    if (kept) last.current = unlessSame(last.current, keptReading(kept.results, background));
    return last.current;
  }, [kept, background]);
  const results = useMemo(
    () => reading && { reading, uses: keptUses, address: reading.address, cells: null },
    [reading],
  );
  if (error !== null) return <HostTrouble error={error} again={refresh} />;
  if (results === null) return <Reading />;
  return (
    <AnswerForm
      analysis={analysis}
      results={results}
      keyFor={(test) => keptKey(analysis, test)}
      sheet={null}
      onWritten={() => {}}
      go={go}
      understood={(_, testChoice) => (
        <>
          <UnderstoodKept reading={results.reading}>{testChoice}</UnderstoodKept>
          <NotSetUp reading={results.reading} correction={null} />
        </>
      )}
    />
  );
}

/** An edit elsewhere gives the same results again: no news, and no outcome made stale by it. */
const unlessSame = (before: KeptReading | null, now: KeptReading): KeptReading =>
  before !== null && JSON.stringify(before) === JSON.stringify(now) ? before : now;

const Reading = () => (
  <p className="quiet" role="status">
    {words.reading}
  </p>
);
