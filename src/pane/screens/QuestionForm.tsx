import type { AnyAnalysis } from "../../analyses/analysis";
import type { Grid } from "../../reading/grid";
import { Message } from "../parts/Message";
import { useQuestion } from "../useQuestion";
import { words } from "../words";
import { Answer } from "./Answer";
import { Remarks } from "./Remarks";
import { SettingsForm } from "./SettingsForm";
import { Understood } from "./Understood";
import { WriteBar } from "./WriteBar";

export function QuestionForm(props: {
  readonly analysis: AnyAnalysis;
  readonly grid: Grid;
  readonly sheetId: string;
  readonly grownFrom: string | null;
  readonly onWritten: (sheet: string) => void;
}) {
  const { analysis, grid, sheetId, grownFrom, onWritten } = props;
  const question = useQuestion(analysis, grid, sheetId);
  const { report } = question;
  return (
    <>
      <Understood analysis={analysis} grid={grid} grownFrom={grownFrom} question={question} />
      <Remarks sheet={grid.sheet} remarks={question.reading.remarks} />
      {report.ok ? (
        <>
          <Answer report={report.value} />
          <SettingsForm analysis={analysis} settings={question.settings} onChange={question.setSetting} />
          <WriteBar key={question.key} report={report.value} reportKey={question.key} onWritten={onWritten} />
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
