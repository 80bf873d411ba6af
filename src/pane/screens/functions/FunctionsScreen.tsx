import { useMemo, useState } from "react";
import { functionReference } from "../../../functions/reference";
import type { Deed } from "../../../sheet/deed";
import { functionWords } from "../../words/functions";
import { FunctionEntry } from "./FunctionEntry";
import "./functions.css";
import { RepairAndShare } from "./RepairAndShare";
import { searchFunctions } from "./searchFunctions";
import { ThisCell } from "./ThisCell";

const words = functionWords.list;

/** The functions in cells: what the active one says, a reference of all, and how to repair and share them. */
export function FunctionsScreen(props: {
  readonly wished?: string | undefined;
  readonly onDeed: (deed: Deed) => void;
}) {
  const { wished = "", onDeed } = props;
  const [query, setQuery] = useState(wished);
  const groups = useMemo(() => searchFunctions(functionReference, query), [query]);
  const isSearch = query.trim() !== "";
  const count = groups.reduce((sum, { functions }) => sum + functions.length, 0);
  return (
    <>
      <ThisCell />
      <section className="card" aria-labelledby="functions-title">
        <h2 id="functions-title">{words.title}</h2>
        <input
          type="search"
          aria-label={words.search}
          placeholder={words.search}
          value={query}
          onChange={(event) => setQuery(event.target.value)}
        />
        <p className="quiet" role="status">
          {isSearch && words.found(count)}
        </p>
        {groups.map(({ subject, functions }) => (
          <details key={`${subject}${isSearch}`} className="function-subject" open={isSearch}>
            <summary>{subject}</summary>
            {functions.map((help) => (
              <FunctionEntry key={help.id} help={help} onDeed={onDeed} />
            ))}
          </details>
        ))}
        <p className="quiet">{words.separators}</p>
      </section>
      <RepairAndShare onDeed={onDeed} />
    </>
  );
}
