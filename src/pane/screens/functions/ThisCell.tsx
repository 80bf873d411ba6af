import { functionReference } from "../../../functions/reference";
import type { ActiveCall } from "../../../sheet/readActiveCall";
import { HostTrouble } from "../../parts/HostTrouble";
import { functionWords } from "../../words/functions";
import { useActiveCall } from "./useActiveCall";

/** What the formula in the active cell asks, part by part, and why it shows an error. */
export function ThisCell() {
  const { current, retry } = useActiveCall();
  if (current.state === "failed") return <HostTrouble error={current.error} again={retry} />;
  return (
    <section className="card" aria-labelledby="this-cell-title" aria-live="polite">
      <h2 id="this-cell-title">{functionWords.cell.title}</h2>
      {current.state === "call" ? (
        <Call call={current.call} why={current.why} />
      ) : (
        <p className="quiet">{functionWords.cell.none}</p>
      )}
    </section>
  );
}

function Call({ call, why }: { readonly call: ActiveCall; readonly why: readonly string[] }) {
  const words = functionWords.cell;
  const help = functionReference.find(({ id }) => id === call.id);
  return (
    <>
      <p>
        <span className="address">{words.asks(call.address, call.id)}</span>
      </p>
      {call.error !== null && (
        <div className="function-why">
          <h3>{words.why(call.error)}</h3>
          {why.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      )}
      {help && <p>{help.answers}</p>}
      <dl className="function-parts">
        {help?.parameters.map(({ name, help: says, optional }, index) => {
          const given = call.arguments[index]?.text ?? "";
          return (
            <div key={name}>
              <dt>
                {name}: <code>{given || (optional ? words.leftOut : words.missing)}</code>
              </dt>
              <dd>{says}</dd>
            </div>
          );
        })}
      </dl>
    </>
  );
}
