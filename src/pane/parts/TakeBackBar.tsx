import { useState } from "react";
import { type TakenBack, takeBack } from "../../sheet/takeBack";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { HostTrouble } from "./HostTrouble";
import { Message } from "./Message";

/** The last thing we wrote, and the one press that puts back what was there before. */
export function TakeBackBar() {
  const { lastDeed, forget, refresh } = useWorkbook();
  const [outcome, setOutcome] = useState<TakenBack | null>(null);
  const [error, setError] = useState<unknown>(null);
  const [busy, setBusy] = useState(false);
  if (!lastDeed) return null;

  async function undo(anyway: boolean) {
    if (!lastDeed) return;
    setBusy(true);
    setError(null);
    try {
      const done = await takeBack(lastDeed, { anyway });
      setOutcome(done.kind === "changedSince" ? done : null);
      if (done.kind !== "changedSince") forget();
      refresh();
    } catch (trouble) {
      setError(trouble);
    } finally {
      setBusy(false);
    }
  }

  return (
    <aside className="take-back" aria-label={words.takeBack.label}>
      <p>
        <span className="quiet">{lastDeed.what}</span>{" "}
        <button type="button" className="link" disabled={busy} onClick={() => void undo(false)}>
          {busy ? words.takeBack.busy : words.takeBack.press}
        </button>
      </p>
      {outcome?.kind === "changedSince" && (
        <Message tone="trouble" title={words.takeBack.changed}>
          <p>{words.takeBack.changedText(outcome.cells)}</p>
          <button type="button" className="link" onClick={() => void undo(true)}>
            {words.takeBack.anyway}
          </button>
        </Message>
      )}
      {error !== null && <HostTrouble error={error} />}
    </aside>
  );
}
