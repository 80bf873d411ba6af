import { useRef, useState } from "react";
import type { Page } from "../../programme/page";
import { goTo } from "../../sheet/goTo";
import type { Paper } from "../../sheet/printPage";
import { type PagesWritten, writePages } from "../../sheet/writePages";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import { Progress } from "../parts/Progress";
import { useDeed } from "../useDeed";
import { words } from "../words";

/** Writes pages to print, one sheet each, with progress; can be stopped between two of them. */
export function PagesBar(props: { readonly label: string; readonly pages: readonly Page[]; readonly paper?: Paper }) {
  const { label, pages, paper = "a4" } = props;
  const writing = useDeed<PagesWritten>();
  const [done, setDone] = useState(0);
  const stop = useRef<AbortController | null>(null);
  const start = () => {
    stop.current = new AbortController();
    setDone(0);
    void writing.run(() => writePages(pages, { paper, signal: stop.current!.signal, onProgress: setDone }));
  };
  const { outcome } = writing;
  return (
    <footer className="write-bar">
      {writing.error !== null && <HostTrouble error={writing.error} again={start} />}
      {outcome && (
        <Message
          tone={outcome.stopped === null ? "good" : "trouble"}
          title={words.pages.written(outcome.sheets.length, pages.length)}
        >
          {outcome.sheets[0] !== undefined && (
            <button type="button" className="link" onClick={() => void goTo(outcome.sheets[0]!, "A1")}>
              {words.write.show}
            </button>
          )}
        </Message>
      )}
      {writing.busy && (
        <Progress
          done={done}
          of={pages.length}
          words={words.pages.progress(done, pages.length)}
          stop={{ label: words.pages.stop, press: () => stop.current?.abort() }}
        />
      )}
      <button type="button" className="button primary" disabled={writing.busy || pages.length === 0} onClick={start}>
        {writing.busy ? words.write.writing : label}
      </button>
    </footer>
  );
}
