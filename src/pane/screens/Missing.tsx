import { Message } from "../parts/Message";
import { words } from "../words";

const shownAtFirst = 6;

/** What nothing can be said of, or planned for, and what is missing. */
export function Missing({ missing }: { readonly missing: readonly string[] }) {
  if (missing.length === 0) return null;
  return (
    <Message tone="plain" title={words.programme.missing(missing.length)}>
      <ul>
        {missing.slice(0, shownAtFirst).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {missing.length > shownAtFirst && <p>{words.programme.more(missing.length - shownAtFirst)}</p>}
    </Message>
  );
}
