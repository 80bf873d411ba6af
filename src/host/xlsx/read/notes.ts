import type { ISheetNote } from "@univerjs/sheets-note";
import { cellPosition } from "../addresses";
import { childOf, childrenOf, textOf, type XmlElement } from "../package/xml";

/** Notes of a sheet by row and column. */
export function readNotes(comments: XmlElement): Record<number, Record<number, ISheetNote>> {
  const notes: Record<number, Record<number, ISheetNote>> = {};
  for (const comment of childrenOf(childOf(comments, "commentList"), "comment")) {
    const { row, column } = cellPosition(comment.attributes.ref ?? "A1");
    const note = textOf(childOf(comment, "text"));
    const lines = note.split("\n").reduce((count, line) => count + Math.ceil((line.length + 1) / 30), 0);
    const inRow = notes[row] ?? {};
    notes[row] = inRow;
    inRow[column] = {
      id: `note-${row}-${column}`,
      row,
      col: column,
      width: 220,
      height: Math.max(60, 24 + 18 * lines),
      note,
    };
  }
  return notes;
}
