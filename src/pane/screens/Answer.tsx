import type { ReactNode } from "react";
import type { Report } from "../../analyses/report";
import { NumbersExplained } from "../parts/NumbersExplained";
import { Bars } from "../pictures/Bars";
import { words } from "../words";

/** The answer before anything is written: what it says, the picture, and what to keep in mind. */
export function Answer(props: {
  readonly report: Report;
  /** In place of bars, where the answer has a picture of its own. */
  readonly picture?: ReactNode;
}) {
  const { report, picture } = props;
  return (
    <section className="card" aria-labelledby="answer-title" aria-live="polite">
      <h2 id="answer-title">{words.answer.title}</h2>
      {report.summary.map((sentence, index) => (
        <p key={sentence} className={index === 0 ? "finding" : undefined}>
          {sentence}
        </p>
      ))}
      {picture ?? (report.chart && <Bars table={report.table} chart={report.chart} />)}
      <NumbersExplained report={report} />
      <details className="mind">
        <summary>{words.answer.mind}</summary>
        <ul>
          {report.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </details>
    </section>
  );
}
