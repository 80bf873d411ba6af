import { useEffect, useRef } from "react";
import { type WorkbookWatch, watchWorkbook } from "../sheet/watchWorkbook";

/** What is told while a screen stands; `onReady` once the workbook is being watched, `onFailure` where it cannot be. */
export type Watch = WorkbookWatch & {
  readonly onReady?: () => void;
  readonly onFailure: (error: unknown) => void;
};

/** Watches the workbook for as long as the screen stands. What is handed over at each drawing is what is called. */
export function useWatch(watch: Watch): void {
  const now = useRef(watch);
  now.current = watch;
  useEffect(() => {
    let stop: (() => Promise<void>) | undefined;
    let ended = false;
    watchWorkbook({ onSelect: () => now.current.onSelect(), onEdit: () => now.current.onEdit() }).then(
      (end) => {
        stop = end;
        if (ended) void end();
        else now.current.onReady?.();
      },
      (error) => now.current.onFailure(error),
    );
    return () => {
      ended = true;
      void stop?.();
    };
  }, []);
}

/** Calls after a burst of selections or edits, once it has been quiet for so long; the last of them is what is done. */
export function useWhenQuiet(milliseconds: number): (work: () => void) => void {
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  return (work) => {
    clearTimeout(timer.current);
    timer.current = setTimeout(work, milliseconds);
  };
}
