import type { KeptOutcome } from "../../sheet/keepResults";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { words } from "../words";
import { keepWords } from "../words/keep";

/** What came of keeping results: what is new, what was renewed, and what contradicts the table. */
export function KeptMessage(props: { readonly outcome: KeptOutcome | null; readonly error: unknown }) {
  const { outcome, error } = props;
  if (error !== null) return <HostTrouble error={error} />;
  if (outcome === null) return null;
  if (outcome.inTheWay) {
    return (
      <Message tone="trouble" title={words.keep.nothingKept}>
        <p>{outcome.inTheWay.why}</p>
      </Message>
    );
  }
  if (outcome.cancelled) {
    return (
      <Message tone="plain" title={keepWords.cancelled}>
        <p>{keepWords.cancelledText}</p>
      </Message>
    );
  }
  return (
    <Message tone={outcome.clashes.length > 0 ? "trouble" : "good"} title={words.keep.kept(outcome.added)}>
      {outcome.changed > 0 && <p>{words.keep.changed(outcome.changed)}</p>}
      {outcome.same > 0 && <p>{words.keep.same(outcome.same)}</p>}
      {outcome.clashes.length > 0 && (
        <>
          <p>{words.keep.clashes(outcome.clashes.length)}</p>
          <ul>
            {outcome.clashes.slice(0, 5).map(({ standing, fresh }) => (
              <li key={`${fresh.source}`}>{words.keep.clash(fresh, standing)}</li>
            ))}
          </ul>
        </>
      )}
    </Message>
  );
}
