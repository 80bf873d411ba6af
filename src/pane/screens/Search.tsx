import { type KeyboardEvent, useEffect, useId, useMemo, useState } from "react";
import type { Screen } from "../screen";
import { found, type Searchable } from "../search";
import { tasks as tasksOfCycle } from "../tasks";
import { searchWords } from "../words/search";

type Item = Searchable & { readonly screen: Screen };

/** More than these are not looked through: another word is typed. */
const shownAtMost = 8;

/**
 * A field that finds what can be done, and the functions for formulas. Arrows choose among what was found, Enter goes
 * there, Escape clears (the combobox pattern of the ARIA Authoring Practices Guide).
 */
export function Search({ go }: { readonly go: (screen: Screen) => void }) {
  const id = useId();
  const [query, setQuery] = useState("");
  const [chosen, choose] = useState(0);
  const functions = useFunctions(query !== "");
  const items = useMemo(() => found([...capabilities, ...functions], query).slice(0, shownAtMost), [functions, query]);
  const isOpen = query.trim() !== "";
  const current = Math.min(chosen, items.length - 1);

  const look = (text: string) => {
    setQuery(text);
    choose(0);
  };
  const press = (event: KeyboardEvent) => {
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    const item = items[current];
    if (event.key === "Escape") look("");
    else if (event.key === "Enter" && item) go(item.screen);
    else if (step && item) choose((current + step + items.length) % items.length);
    else return;
    event.preventDefault();
  };

  return (
    <div className="search">
      <input
        type="search"
        role="combobox"
        aria-label={searchWords.label}
        placeholder={searchWords.label}
        aria-expanded={isOpen}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={isOpen && items.length > 0 ? `${id}-${current}` : undefined}
        autoComplete="off"
        value={query}
        onChange={(event) => look(event.target.value)}
        onKeyDown={press}
      />
      <p className="quiet" role="status">
        {isOpen && searchWords.found(items.length)}
      </p>
      <div
        className="found"
        role="listbox"
        id={`${id}-list`}
        aria-label={searchWords.results}
        hidden={items.length === 0}
      >
        {items.map(({ title, text, screen }, index) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the field, which keeps the focus
          // biome-ignore lint/a11y/useFocusableInteractive: as above
          <div
            key={title}
            id={`${id}-${index}`}
            role="option"
            aria-selected={index === current}
            onClick={() => go(screen)}
          >
            <span className="question-title">{title}</span> <span>{text}</span>
          </div>
        ))}
      </div>
    </div>
  );
}

const capabilities: readonly Item[] = tasksOfCycle.flatMap(({ list }) =>
  list.map(({ title, question, screen }) => {
    const others: Readonly<Record<string, string>> = searchWords.alsoFoundBy;
    return { title, text: question, alsoFoundBy: others[nameOf(screen)] ?? "", screen };
  }),
);

function nameOf(screen: Screen): string {
  return screen.kind === "question" ? screen.id : screen.kind;
}

/** The functions for formulas; their reference is fetched when first something is looked for. */
function useFunctions(isWanted: boolean): readonly Item[] {
  const [functions, setFunctions] = useState<readonly Item[]>([]);
  useEffect(() => {
    if (!isWanted) return;
    let current = true;
    import("../../functions/reference").then(
      ({ functionReference }) =>
        current &&
        setFunctions(
          functionReference.map(({ id, answers, alsoFoundBy }) => ({
            ...{ title: `TAPELINE.${id}`, text: answers, alsoFoundBy: `${alsoFoundBy} ${searchWords.isFunction}` },
            screen: { kind: "functions", wished: id },
          })),
        ),
      // Not to be fetched (no connection): what can be done is found all the same.
      () => {},
    );
    return () => {
      current = false;
    };
  }, [isWanted]);
  return functions;
}
