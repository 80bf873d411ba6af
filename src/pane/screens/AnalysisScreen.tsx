import { useState } from "react";
import type { AnyAnalysis } from "../../analyses/analysis";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { useSource } from "../useSource";
import { words } from "../words";
import { QuestionForm } from "./QuestionForm";

/** From the selection to the written answer, for any analysis. */
export function AnalysisScreen({ analysis }: { readonly analysis: AnyAnalysis }) {
  const [resultSheet, setResultSheet] = useState<string | null>(null);
  const { source, retry } = useSource(resultSheet);

  if (source.state === "reading") {
    return (
      <p className="quiet" role="status">
        {words.reading}
      </p>
    );
  }
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
  return (
    <QuestionForm
      analysis={analysis}
      grid={selection.grid}
      sheetId={selection.sheetId}
      grownFrom={selection.grownFrom}
      onWritten={setResultSheet}
    />
  );
}
