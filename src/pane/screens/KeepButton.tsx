import { useRef, useState } from "react";
import { type KeptOutcome, keepResults } from "../../sheet/keepResults";
import type { KeptResult } from "../../store/keptResults";
import { Progress } from "../parts/Progress";
import { useDeed } from "../useDeed";
import { words } from "../words";
import { keepWords } from "../words/keep";
import { KeptMessage } from "./KeptMessage";

/** Puts results into the table of results, tells how far it is where they are many, and what came of it. */
export function KeepButton(props: { readonly kept: readonly KeptResult[]; readonly primary?: boolean }) {
  const { kept, primary = false } = props;
  const keeping = useDeed<KeptOutcome>();
  const [progress, setProgress] = useState<{ readonly done: number; readonly of: number } | null>(null);
  const stop = useRef<AbortController | null>(null);
  const keep = () => {
    stop.current = new AbortController();
    setProgress(null);
    const onProgress = (done: number, of: number) => setProgress({ done, of });
    void keeping.run(() => keepResults(kept, { signal: stop.current!.signal, onProgress }));
  };
  return (
    <>
      <KeptMessage outcome={keeping.outcome} error={keeping.error} />
      {keeping.busy && progress && (
        <Progress
          {...progress}
          words={keepWords.progress(progress.done, progress.of)}
          stop={{ label: keepWords.stop, press: () => stop.current?.abort() }}
        />
      )}
      <button
        type="button"
        className={primary ? "button primary" : "button"}
        disabled={kept.length === 0 || keeping.busy}
        onClick={keep}
      >
        {keeping.busy ? words.write.writing : words.keep.keep(kept.length)}
      </button>
    </>
  );
}
