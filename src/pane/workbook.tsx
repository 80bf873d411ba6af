import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from "react";
import type { Deed } from "../sheet/deed";
import { readBackground } from "../sheet/readBackground";
import { type Background, noBackground } from "../store/background";
import type { StoreRemark, StoreTableId } from "../store/storeTable";
import { RecentProvider } from "./recent";
import { useWatch, useWhenQuiet } from "./useWatch";

/** What the pane knows of the workbook beside the selection, and what it has done to it. */
export type WorkbookState = {
  readonly state: "reading" | "read" | "failed";
  readonly error: unknown;
  /** The same object for as long as it says the same: an answer need not be computed anew for an edit elsewhere. */
  readonly background: Background;
  /** How often the workbook has been read: grows after every edit, for what is to be read anew with it. */
  readonly edition: number;
  readonly remarks: readonly StoreRemark[];
  /** Which of our own tables stand in the workbook. */
  readonly present: ReadonlySet<StoreTableId>;
  readonly refresh: () => void;
  /** The last thing we wrote, if it can still be taken back. */
  readonly lastDeed: Deed | null;
  readonly remember: (deed: Deed) => void;
  /** Something else may have been written since it was taken back: that stays. */
  readonly forget: (deed: Deed) => void;
  /** What was done on sheets that are gone for good (by their identities) cannot be taken back. */
  readonly forgetSheets: (gone: ReadonlySet<string>) => void;
};

type Known = Pick<WorkbookState, "state" | "error" | "background" | "edition" | "remarks" | "present">;

const nothingKnown: Known = {
  state: "reading",
  error: null,
  background: noBackground,
  edition: 0,
  remarks: [],
  present: new Set(),
};

const Context = createContext<WorkbookState | null>(null);

export function useWorkbook(): WorkbookState {
  const workbook = useContext(Context);
  if (!workbook) throw new Error("useWorkbook stands outside of WorkbookProvider.");
  return workbook;
}

/** A burst of edits (a coach typing results) is read once, when it has been quiet for so long. */
const quietMilliseconds = 600;

/** Reads squad, battery and weights, and again whenever something in the workbook has changed. */
export function WorkbookProvider({ children }: { readonly children: ReactNode }) {
  const [known, setKnown] = useState<Known>(nothingKnown);
  const [deeds, setDeeds] = useState<readonly Deed[]>([]);
  const latest = useRef(0);

  const refresh = useCallback(() => {
    const turn = ++latest.current;
    readBackground().then(
      ({ background, remarks, present }) => {
        if (turn !== latest.current) return;
        setKnown((before) => ({
          ...{ state: "read", error: null, remarks, present, edition: before.edition + 1 },
          background: JSON.stringify(background) === JSON.stringify(before.background) ? before.background : background,
        }));
      },
      (error) => {
        if (turn === latest.current) setKnown((before) => ({ ...before, state: "failed", error }));
      },
    );
  }, []);

  useEffect(refresh, [refresh]);
  const whenQuiet = useWhenQuiet(quietMilliseconds);
  useWatch({
    onSelect: () => {},
    onEdit: () => whenQuiet(refresh),
    onFailure: (error) => setKnown((before) => ({ ...before, state: "failed", error })),
  });

  const workbook = useMemo(
    (): WorkbookState => ({
      ...known,
      refresh,
      lastDeed: deeds.at(-1) ?? null,
      remember: (deed) => setDeeds((before) => [...before, deed]),
      forget: (deed) => setDeeds((before) => before.filter((one) => one !== deed)),
      forgetSheets: (gone) =>
        setDeeds((before) =>
          before.filter(({ steps }) => !steps.some((step) => "sheetId" in step && gone.has(step.sheetId))),
        ),
    }),
    [known, refresh, deeds],
  );
  return (
    <Context value={workbook}>
      <RecentProvider>{children}</RecentProvider>
    </Context>
  );
}
