import type { ReactNode } from "react";
import type { Reading } from "../../reading/readResults";
import { words } from "../words";

/** What the workbook's own table of results holds. */
export function UnderstoodKept(props: { readonly reading: Reading; readonly children: ReactNode }) {
  const { athletes, results, tests } = props.reading;
  return (
    <section className="card" aria-labelledby="source-title">
      <h2 id="source-title">{words.source.keptTitle}</h2>
      <p>{words.source.kept(athletes.length, results.length, tests.length)}</p>
      {props.children}
    </section>
  );
}
