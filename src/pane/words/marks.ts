import { many } from "../words";
import { listed } from "./functions";

/** What the pane says of marks on the coach's own sheets. */
export const marksWords = {
  mark: (count: number) => `Mark ${many(count, "cell")} on the sheet`,
  clear: "Clear all marks",
  marked: (count: number, missing: readonly string[]) =>
    `${many(count, "cell")} marked${missing.length > 0 ? `; not found: ${missing.join(", ")}` : ""}.`,
  cleared: (count: number) => (count === 0 ? "There are no marks." : `${many(count, "mark")} cleared.`),
  keptNotes: (cells: readonly string[]) => `You have rewritten the note there, so it stays: ${listed(cells)}.`,
  lost: (cells: readonly string[]) =>
    `No mark stands any more at ${listed(cells)}. If rows were sorted since, it may have moved: look for notes that begin with “Check:” and for dashed frames, and take them off by hand.`,
} as const;
