import { type ReactNode, useEffect, useRef, useState } from "react";
import { goTo } from "../../sheet/goTo";
import { findTrySample, removeTrySample, type StandingSample } from "../../sheet/trySample";
import { HostTrouble } from "../parts/HostTrouble";
import { useRecent } from "../recent";
import { home, type Screen } from "../screen";
import { useReading } from "../useReading";
import { tryItWords } from "../words/tryIt";
import { useWorkbook } from "../workbook";

type Guided = { readonly screen: Screen; readonly go: (screen: Screen) => void };

/** While the sample squad stands: the next step of the try, on whichever screen, and the way to be rid of it. */
export default function TryGuide(guided: Guided) {
  const { value: sample } = useReading(findTrySample);
  return sample && <Guide sample={sample} {...guided} />;
}

const steps = ["select", "read", "written", "last"] as const;
type Step = (typeof steps)[number];

function Guide({ sample, screen, go }: Guided & { readonly sample: StandingSample }) {
  const [isSeen, setSeen] = useState(false);
  const guide = useRef<HTMLElement>(null);
  // Who asked for it goes on from here; nobody who works in the sheet is called away.
  useEffect(() => {
    if (document.hasFocus()) guide.current?.focus();
  }, []);
  const step = stepOf(sample, screen, isSeen);
  const answer = sample.answers[0] ?? "";
  const ask = () => void goTo(sample.sheet, sample.address).then(() => go({ kind: "question", id: "asymmetry" }));
  const told: Record<Step, ReactNode> = {
    select: (
      <>
        <p>{tryItWords.select.text}</p>
        <Press words={tryItWords.select.press} press={ask} />
      </>
    ),
    read: <p>{tryItWords.read}</p>,
    written: (
      <>
        <p>{tryItWords.written(answer)}</p>
        <Press words={tryItWords.show} press={() => void goTo(answer, "A1")} />{" "}
        <Press words={tryItWords.goOn} press={() => setSeen(true)} />
      </>
    ),
    last: (
      <>
        <p>{tryItWords.last.text}</p>
        {screen.kind !== "home" && <Press words={tryItWords.last.press} press={() => go(home)} />}
      </>
    ),
  };
  return (
    <aside className="try-guide" aria-label={tryItWords.label} ref={guide} tabIndex={-1}>
      <p className="quiet">{tryItWords.step(steps.indexOf(step) + 1, steps.length)}</p>
      <div role="status">{told[step]}</div>
      <Remove sample={sample} go={go} />
    </aside>
  );
}

function stepOf({ answers }: StandingSample, screen: Screen, isSeen: boolean): Step {
  if (answers.length > 0) return isSeen ? "last" : "written";
  return screen.kind === "question" ? "read" : "select";
}

function Remove({ sample, go }: { readonly sample: StandingSample; readonly go: (screen: Screen) => void }) {
  const { refresh, forgetSheets } = useWorkbook();
  const { drop } = useRecent();
  const sheets = [sample.sheet, ...sample.answers];
  const [busy, setBusy] = useState(false);
  const [error, setError] = useState<unknown>(null);
  async function remove() {
    setBusy(true);
    setError(null);
    try {
      forgetSheets(await removeTrySample());
      drop(sheets);
      go(home);
      refresh();
    } catch (failure) {
      setBusy(false);
      setError(failure);
    }
  }
  return (
    <>
      <button type="button" className="link" disabled={busy} onClick={() => void remove()}>
        {busy ? tryItWords.removing : tryItWords.remove(sheets)}
      </button>
      {error !== null && <HostTrouble error={error} again={() => void remove()} />}
    </>
  );
}

const Press = ({ words, press }: { readonly words: string; readonly press: () => void }) => (
  <button type="button" className="button" onClick={press}>
    {words}
  </button>
);
