import { useCallback, useRef, useState } from "react";
import { type ActiveCall, readActiveCall } from "../../../sheet/readActiveCall";
import { useWatch, useWhenQuiet } from "../../useWatch";
import { reasonOf } from "./reasonOf";

export type ThisCall =
  | { readonly state: "reading" }
  | { readonly state: "none" }
  | { readonly state: "call"; readonly call: ActiveCall; readonly why: readonly string[] }
  | { readonly state: "failed"; readonly error: unknown };

/** Waiting this long after the last of a burst of selections or edits keeps the sheet quick while the coach works. */
const quietMilliseconds = 150;

/** The call of one of our functions in the active cell, with the reason of its error; follows selections and edits. */
export function useActiveCall(): { readonly current: ThisCall; readonly retry: () => void } {
  const [current, setCurrent] = useState<ThisCall>({ state: "reading" });
  const latest = useRef(0);

  const read = useCallback(async () => {
    const turn = ++latest.current;
    const tell = (found: ThisCall) => turn === latest.current && setCurrent(found);
    try {
      const call = await readActiveCall();
      tell(call ? { state: "call", call, why: await reasonOf(call) } : { state: "none" });
    } catch (error) {
      tell({ state: "failed", error });
    }
  }, []);

  const whenQuiet = useWhenQuiet(quietMilliseconds);
  const soon = () => whenQuiet(read);
  useWatch({
    onSelect: soon,
    onEdit: soon,
    onReady: read,
    onFailure: (error) => setCurrent({ state: "failed", error }),
  });

  return { current, retry: read };
}
