import type { ReactNode } from "react";
import type { AnyAnalysis } from "../../analyses/analysis";
import { Choice } from "../parts/Choice";
import { Message } from "../parts/Message";
import { SchemaForm } from "../parts/SchemaForm";
import type { Screen } from "../screen";
import { type ReadResults, useAnswer } from "../useAnswer";
import { words } from "../words";
import { testDayWords } from "../words/testDay";
import { Answer } from "./Answer";
import { WriteBar } from "./WriteBar";

/** What was understood of the results, the answer, its settings, and the way into the workbook. */
export function AnswerForm(props: {
  readonly analysis: AnyAnalysis;
  readonly results: ReadResults;
  /** Says which result a test's answer is, so that a rerun renews the same table. */
  readonly keyFor: (test: string) => string;
  /** Sheet that the results' addresses belong to; null where each address names its own. */
  readonly sheet: string | null;
  readonly onWritten: (sheet: string) => void;
  readonly understood: (isClear: boolean, testChoice: ReactNode) => ReactNode;
  readonly go: (screen: Screen) => void;
}) {
  const { analysis, results, keyFor, sheet, onWritten, understood, go } = props;
  const asked = useAnswer(analysis, results);
  const { report, test, tests } = asked;
  const isClear = report.ok || report.reasons.every((reason) => reason.code !== "missingColumns");
  return (
    <>
      {understood(
        isClear,
        analysis.tests === "one" && tests.length > 1 && (
          <Choice
            label={words.columns.test}
            value={test}
            options={tests.map((name) => [name, name || words.columns.unnamedTest] as const)}
            onChange={asked.setTest}
          />
        ),
      )}
      {report.ok ? (
        <>
          <Answer report={report.value} />
          {report.value.testAgain.length > 0 && (
            <button
              type="button"
              className="button"
              onClick={() => go({ kind: "testDay", wished: report.value.testAgain })}
            >
              {testDayWords.again(new Set(report.value.testAgain.map(({ athlete }) => athlete)).size)}
            </button>
          )}
          <SchemaForm
            title={words.settings.title}
            schema={analysis.settings}
            settings={asked.settings}
            onChange={asked.setSetting}
          />
          <WriteBar
            key={keyFor(test)}
            report={report.value}
            reportKey={keyFor(test)}
            live={analysis.live && results.cells ? { on: asked.live, set: asked.setLive } : null}
            sheet={sheet}
            onWritten={onWritten}
          />
        </>
      ) : (
        <Message tone="plain" title={words.answer.noAnswer}>
          {report.reasons.map((reason) => (
            <p key={reason.code + reason.message}>{reason.message}</p>
          ))}
          <p>{analysis.select}</p>
        </Message>
      )}
    </>
  );
}
