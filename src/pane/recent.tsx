import { createContext, type ReactNode, useContext, useEffect, useMemo, useRef, useState } from "react";
import { areaAddress } from "../reading/address";
import type { Grid } from "../reading/grid";

/** Cells that a question was asked of. */
export type Recent = { readonly sheet: string; readonly address: string; readonly question: string };

export type RecentState = {
  /** The latest first. */
  readonly recent: readonly Recent[];
  readonly note: (asked: Recent) => void;
  /** Forgets what was asked on these sheets. */
  readonly drop: (sheets: readonly string[]) => void;
  readonly dropAll: () => void;
};

/** So many are remembered; a longer list would be looked through, not seen. */
const mostRecent = 4;

const Context = createContext<RecentState | null>(null);

export function useRecent(): RecentState {
  const recent = useContext(Context);
  if (!recent) throw new Error("useRecent stands outside of WorkbookProvider.");
  return recent;
}

/** Remembers what was asked of which cells, for as long as the pane is open: nothing of it is kept in the workbook. */
export function RecentProvider({ children }: { readonly children: ReactNode }) {
  const [recent, setRecent] = useState<readonly Recent[]>([]);
  const state = useMemo(
    (): RecentState => ({
      recent,
      note: (asked) => setRecent((before) => [asked, ...without(before, asked)].slice(0, mostRecent)),
      drop: (sheets) => setRecent((before) => before.filter(({ sheet }) => !sheets.includes(sheet))),
      dropAll: () => setRecent([]),
    }),
    [recent],
  );
  return <Context value={state}>{children}</Context>;
}

const without = (all: readonly Recent[], { sheet, address, question }: Recent): Recent[] =>
  all.filter((one) => one.sheet !== sheet || one.address !== address || one.question !== question);

/** Notes that a question is asked of cells; null where there is nothing in them to ask about. */
export function useNoteRecent(grid: Grid, question: string | null): void {
  const { note } = useRecent();
  const noteNow = useRef(note);
  noteNow.current = note;
  const { sheet } = grid;
  const address = areaAddress(grid.firstRow, grid.firstColumn, grid.cells.length, grid.cells[0]?.length ?? 0);
  useEffect(() => {
    if (question !== null) noteNow.current({ sheet, address, question });
  }, [sheet, address, question]);
}
