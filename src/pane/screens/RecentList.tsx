import { useState } from "react";
import { questions } from "../../analyses/questions";
import { goTo } from "../../sheet/goTo";
import { type Recent, useRecent } from "../recent";
import type { Screen } from "../screen";
import { recentWords } from "../words/recent";

/** The cells that questions were asked of since the pane was opened; a press selects them and asks again. */
export function RecentList({ go }: { readonly go: (screen: Screen) => void }) {
  const { recent, drop, dropAll } = useRecent();
  const [gone, setGone] = useState<string | null>(null);
  if (recent.length === 0 && gone === null) return null;

  const ask = (asked: Recent) =>
    goTo(asked.sheet, asked.address).then(
      () => go({ kind: "question", id: asked.question }),
      () => {
        drop([asked.sheet]);
        setGone(asked.sheet);
      },
    );

  return (
    <section aria-labelledby="recent-title">
      <h2 className="part" id="recent-title">
        {recentWords.title}
      </h2>
      <p className="quiet" role="status">
        {gone !== null && recentWords.gone(gone)}
      </p>
      <ul className="recent">
        {recent.map((asked) => (
          <li key={JSON.stringify(asked)}>
            <button type="button" className="link" onClick={() => void ask(asked)}>
              {questions.find(({ id }) => id === asked.question)?.title}
            </button>{" "}
            <span className="quiet">
              {asked.sheet} {asked.address}
            </span>
          </li>
        ))}
      </ul>
      {recent.length > 0 && (
        <button type="button" className="link" onClick={dropAll}>
          {recentWords.forget}
        </button>
      )}
    </section>
  );
}
