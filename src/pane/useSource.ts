import { useCallback, useRef, useState } from "react";
import { placeOf } from "../reading/address";
import { readAgain, readSelection, type Selection } from "../sheet/readSelection";
import { useWatch, useWhenQuiet } from "./useWatch";

export type Source =
  | { readonly state: "reading" }
  | { readonly state: "read"; readonly selection: Selection }
  | { readonly state: "failed"; readonly error: unknown };

type Cells = Selection & { readonly kind: "cells" };

/** Waiting this long after the last of a burst of selections or edits keeps the sheet quick while the coach works. */
const quietMilliseconds = 150;

/**
 * The cells to work on: they follow the coach's selection, and are read again when one of them is edited. A cell
 * selected inside them (to look at it, to mend it) does not change them; nor does a visit to the sheet `apart`, where
 * the results were written.
 */
export function useSource(apart: string | null): { readonly source: Source; readonly retry: () => void } {
  const [source, setSource] = useState<Source>({ state: "reading" });
  const current = useRef<Cells | null>(null);
  const apartNow = useRef(apart);
  apartNow.current = apart;
  const latest = useRef(0);

  const read = useCallback(async (how: () => Promise<Selection>) => {
    const turn = ++latest.current;
    try {
      const selection = await how();
      if (turn !== latest.current || staysWith(selection, current.current, apartNow.current)) return;
      // An edit elsewhere (our own table, say) gives the same cells again: no news, and nothing to draw anew.
      if (current.current && JSON.stringify(current.current) === JSON.stringify(selection)) return;
      current.current = selection.kind === "cells" ? selection : null;
      setSource({ state: "read", selection });
    } catch (error) {
      if (turn === latest.current) setSource({ state: "failed", error });
    }
  }, []);

  const whenQuiet = useWhenQuiet(quietMilliseconds);
  const soon = (how: () => Promise<Selection>) => whenQuiet(() => void read(how));
  useWatch({
    onSelect: () => soon(readSelection),
    onEdit: () => {
      const cells = current.current;
      soon(cells ? () => readAgain(cells) : readSelection);
    },
    onReady: () => void read(readSelection),
    onFailure: (error) => setSource({ state: "failed", error }),
  });

  return { source, retry: () => read(readSelection) };
}

/** Whether what is selected now leaves the cells at hand as they are. */
function staysWith(selection: Selection, current: Cells | null, apart: string | null): boolean {
  if (!current) return false;
  const sheet = selection.kind === "cells" ? selection.grid.sheet : selection.sheet;
  if (sheet === apart && sheet !== current.grid.sheet) return true;
  if (selection.kind !== "cells" || selection.grownFrom === null || sheet !== current.grid.sheet) return false;
  if (selection.grownFrom === current.grownFrom) return false;
  const { grid } = current;
  const { row, column } = placeOf(selection.grownFrom);
  return (
    row >= grid.firstRow &&
    row < grid.firstRow + grid.cells.length &&
    column >= grid.firstColumn &&
    column < grid.firstColumn + grid.cells[0]!.length
  );
}
