import type { ReactNode } from "react";
import type { Screen } from "../screen";
import { type ProgrammeFacts, useProgramme } from "../useProgramme";
import { words } from "../words";
import { HostTrouble } from "./HostTrouble";
import { Message } from "./Message";

/** What rests on kept results: shown once they are there, else what is missing and the way to it. */
export function NeedsResults(props: {
  readonly go: (screen: Screen) => void;
  readonly children: (facts: ProgrammeFacts) => ReactNode;
}) {
  const { value: facts, error } = useProgramme();
  if (error !== null) return <HostTrouble error={error} />;
  if (!facts) {
    return (
      <p className="quiet" role="status">
        {words.reading}
      </p>
    );
  }
  if (facts.kept.length > 0) return props.children(facts);
  return (
    <Message tone="plain" title={words.programme.noResults}>
      <p>{words.programme.noResultsText}</p>
      <button type="button" className="button" onClick={() => props.go({ kind: "keep" })}>
        {words.tasks.keep.title}
      </button>
    </Message>
  );
}
