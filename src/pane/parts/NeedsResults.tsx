import type { ReactNode } from "react";
import type { Screen } from "../screen";
import type { ProgrammeFacts } from "../useProgramme";
import { words } from "../words";
import { Message } from "./Message";
import { ReadsProgramme } from "./ReadsProgramme";

/** What rests on kept results: shown once they are there, else what is missing and the way to it. */
export function NeedsResults(props: {
  readonly go: (screen: Screen) => void;
  readonly children: (facts: ProgrammeFacts) => ReactNode;
}) {
  const { go, children } = props;
  return (
    <ReadsProgramme>
      {(facts) =>
        facts.kept.length > 0 ? (
          children(facts)
        ) : (
          <Message tone="plain" title={words.programme.noResults}>
            <p>{words.programme.noResultsText}</p>
            <button type="button" className="button" onClick={() => go({ kind: "keep" })}>
              {words.tasks.keep.title}
            </button>
          </Message>
        )
      }
    </ReadsProgramme>
  );
}
