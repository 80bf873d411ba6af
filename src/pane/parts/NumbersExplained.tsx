import type { Report } from "../../analyses/report";
import { numbersWords } from "../words/numbers";

/** "What is this?" of every number of an answer: what each means with its unit, the formula, and its source. */
export function NumbersExplained({ report }: { readonly report: Report }) {
  const columns = report.table.columns.filter(({ quiet }) => !quiet);
  return (
    <details className="mind">
      <summary>{numbersWords.title}</summary>
      <dl className="numbers">
        {columns.map(({ key, heading, meaning }) => (
          <div key={key}>
            <dt>{heading}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
        <div>
          <dt>{numbersWords.method}</dt>
          <dd>{report.provenance.method}</dd>
        </div>
      </dl>
    </details>
  );
}
