import { useState } from "react";
import type { Deed } from "../../sheet/deed";
import { type TakenBack, takeBack } from "../../sheet/takeBack";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { HostTrouble } from "./HostTrouble";
import { Message } from "./Message";

/** What came of taking back a deed: it holds for that deed alone, never for one done since. */
type Told = { readonly deed: Deed; readonly outcome: TakenBack | null; readonly error: unknown };

/** The last thing we wrote, and the one press that puts back what was there before. */
export function TakeBackBar() {
  const { lastDeed, forget, refresh } = useWorkbook();
  const [told, setTold] = useState<Told | null>(null);
  const [busy, setBusy] = useState(false);
  if (!lastDeed) return null;
  const { outcome, error } = told?.deed === lastDeed ? told : { outcome: null, error: null };

  async function undo(deed: Deed, anyway: boolean) {
    setBusy(true);
    setTold(null);
    try {
      const done = await takeBack(deed, { anyway });
      if (done.kind === "changedSince") setTold({ deed, outcome: done, error: null });
      else forget(deed);
      refresh();
    } catch (trouble) {
      setTold({ deed, outcome: null, error: trouble });
    } finally {
      setBusy(false);
    }
  }

  return (
    <aside className="take-back" aria-label={words.takeBack.label}>
      <p>
        <span className="quiet">{lastDeed.what}</span>{" "}
        <button type="button" className="link" disabled={busy} onClick={() => void undo(lastDeed, false)}>
          {busy ? words.takeBack.busy : words.takeBack.press}
        </button>
      </p>
      {outcome?.kind === "changedSince" && (
        <Message tone="trouble" title={words.takeBack.changed}>
          <p>{words.takeBack.changedText(outcome.cells)}</p>
          <button type="button" className="link" onClick={() => void undo(lastDeed, true)}>
            {words.takeBack.anyway}
          </button>
        </Message>
      )}
      {error !== null && <HostTrouble error={error} />}
    </aside>
  );
}
