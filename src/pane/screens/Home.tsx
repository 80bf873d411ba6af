import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { tasks } from "../tasks";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { NextStep } from "./NextStep";

/** What a coach can do here, in the order of the cycle, and the one next step. */
export function Home({ go }: { readonly go: (screen: Screen) => void }) {
  const workbook = useWorkbook();
  return (
    <Page title={words.home.title} text={words.home.text}>
      <NextStep workbook={workbook} go={go} />
      {tasks.map(({ part, list }) => (
        <section key={part} aria-labelledby={`part-${part}`}>
          <h2 className="part" id={`part-${part}`}>
            {words.home.parts[part]}
          </h2>
          <ul className="questions">
            {list.map(({ title, question, screen }) => (
              <li key={title}>
                <button type="button" className="question" onClick={() => go(screen)}>
                  <span className="question-title">{title}</span>
                  <span>{question}</span>
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </Page>
  );
}
