import { useEffect, useRef, useState } from "react";
import { useWorkbook } from "./workbook";

/** Reads something of the workbook once its own tables are read, and again after every edit. Null until then. */
export function useReading<Read>(read: () => Promise<Read>): { readonly value: Read | null; readonly error: unknown } {
  const { edition, state: known } = useWorkbook();
  const isWaiting = known === "reading";
  const [state, setState] = useState<{ readonly value: Read | null; readonly error: unknown }>({
    value: null,
    error: null,
  });
  const reader = useRef(read);
  reader.current = read;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the edition is the signal to read again, not an input
  useEffect(() => {
    if (isWaiting) return;
    let current = true;
    reader.current().then(
      (value) => current && setState({ value, error: null }),
      (error) => current && setState((before) => ({ ...before, error })),
    );
    return () => {
      current = false;
    };
  }, [edition, isWaiting]);
  return state;
}
