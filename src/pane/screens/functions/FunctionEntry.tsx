import { useState } from "react";
import { answerOf } from "../../../functions/answerOf";
import type { FunctionHelp } from "../../../functions/reference";
import type { Deed } from "../../../sheet/deed";
import { firstCall } from "../../../sheet/functionCalls";
import { type AnswerSize, type Inserted, insertExample } from "../../../sheet/insertExample";
import { constantOf } from "../../../sheet/readActiveCall";
import { HostTrouble } from "../../parts/HostTrouble";
import { functionWords } from "../../words/functions";

const words = functionWords.list;

/** One function of the reference: a line, and all about it when it is opened. */
export function FunctionEntry({
  help,
  onDeed,
}: {
  readonly help: FunctionHelp;
  readonly onDeed: (deed: Deed) => void;
}) {
  return (
    <details className="function">
      <summary>
        <code>{help.id}</code> <span>{help.answers}</span>
      </summary>
      {help.more && <p>{help.more}</p>}
      <dl className="function-parts">
        {help.parameters.map(({ name, help: says, optional }) => (
          <div key={name}>
            <dt>
              {name}
              {optional && <span className="quiet"> ({words.optional})</span>}
            </dt>
            <dd>{says}</dd>
          </div>
        ))}
        <div>
          <dt>{words.gives}</dt>
          <dd>{help.gives}</dd>
        </div>
        <div>
          <dt>{words.example}</dt>
          <dd>
            <code className="function-formula">{help.example}</code>
          </dd>
        </div>
        <div>
          <dt>{words.source}</dt>
          <dd>{help.source}</dd>
        </div>
      </dl>
      <InsertButton help={help} onDeed={onDeed} />
    </details>
  );
}

function InsertButton({ help, onDeed }: { readonly help: FunctionHelp; readonly onDeed: (deed: Deed) => void }) {
  const [outcome, setOutcome] = useState<Inserted | null>(null);
  const [error, setError] = useState<unknown>(null);

  async function insert() {
    setError(null);
    try {
      const inserted = await insertExample(help.example, await sizeOf(help));
      setOutcome(inserted);
      if (inserted.kind === "written") onDeed(inserted.deed);
    } catch (failure) {
      setError(failure);
    }
  }

  return (
    <>
      <button type="button" className="button" onClick={insert}>
        {words.insert}
      </button>
      <p className="quiet" role="status">
        {outcome &&
          (outcome.kind === "written"
            ? words.inserted(outcome.address)
            : words.inTheWay[outcome.what](outcome.address))}
      </p>
      {error !== null && <HostTrouble error={error} again={insert} />}
    </>
  );
}

/** How many cells the example's answer takes: told by its own code, since the sheet must be asked for room first. */
async function sizeOf({ id, example }: FunctionHelp): Promise<AnswerSize> {
  const given = firstCall(example)!.arguments.map((text) => constantOf(text)!);
  const answer = await answerOf(id, given);
  return { rows: answer.length, columns: answer[0]!.length };
}
