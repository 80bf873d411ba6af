import { lazy, Suspense } from "react";
import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { tasks } from "../tasks";
import { words } from "../words";
import { RecentList } from "./RecentList";
import { Search } from "./Search";

/** They read the workbook, and may come a moment later than the list. */
const NextStep = lazy(() => import("./NextStep"));
const TryIt = lazy(() => import("./TryIt"));

/** What a coach can do here, in the order of the cycle, and the one next step. */
export function Home({ go }: { readonly go: (screen: Screen) => void }) {
  return (
    <Page title={words.home.title} text={words.home.text}>
      <Search go={go} />
      <Suspense fallback={null}>
        <NextStep go={go} />
      </Suspense>
      <Suspense fallback={null}>
        <TryIt />
      </Suspense>
      <RecentList go={go} />
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
