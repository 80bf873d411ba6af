import { useState } from "react";
import type { Deed } from "../sheet/deed";
import { useWorkbook } from "./workbook";

/** One press that writes: whether it is under way, what came of it, and what went wrong. */
export type Doing<Outcome> = {
  readonly busy: boolean;
  readonly outcome: Outcome | null;
  readonly error: unknown;
  readonly run: (work: () => Promise<Outcome>) => Promise<void>;
};

/** Remembers the deed of what was written, so that it can be taken back, and has the workbook read anew. */
export function useDeed<Outcome extends { readonly deed: Deed }>(): Doing<Outcome> {
  const { remember, refresh } = useWorkbook();
  const [state, setState] = useState<Omit<Doing<Outcome>, "run">>({ busy: false, outcome: null, error: null });
  const run = async (work: () => Promise<Outcome>) => {
    setState({ busy: true, outcome: null, error: null });
    try {
      const outcome = await work();
      if (outcome.deed.steps.length > 0) remember(outcome.deed);
      setState({ busy: false, outcome, error: null });
      refresh();
    } catch (error) {
      setState({ busy: false, outcome: null, error });
    }
  };
  return { ...state, run };
}
