import { say } from "../../language/say";
import { listed } from "./functions";
import { many } from "./many";

/** What the pane says of marks on the coach's own sheets. */
export const marksWords = {
  mark: (count: number) => say`Mark ${many(count, "cell")} on the sheet`,
  clear: say`Clear all marks`,
  marked: (count: number, missing: readonly string[]) =>
    say`${many(count, "cell")} marked${missing.length > 0 ? say`; not found: ${missing.join(", ")}` : ""}.`,
  cleared: (count: number) => (count === 0 ? say`There are no marks.` : say`${many(count, "mark")} cleared.`),
  keptNotes: (cells: readonly string[]) => say`You have rewritten the note there, so it stays: ${listed(cells)}.`,
  lost: (cells: readonly string[]) =>
    say`No mark stands any more at ${listed(cells)}. If rows were sorted since, it may have moved: look for notes that begin with “Check:” and for dashed frames, and take them off by hand.`,
} as const;
