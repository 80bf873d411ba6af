import type { ICellData } from "@univerjs/core";
import type { Area } from "./area";
import { intersection } from "./area";
import { type CellMarks, lookMarks } from "./cellMarks";
import { type CellMatrix, writeCells } from "./cells";

export type WhatToClear = "All" | "Contents" | "Formats" | "Hyperlinks" | "RemoveHyperlinks";

/** What goes of the cells: their content, their look, their links. A comment stays, as it is no content of the cell. */
const cleared: Record<WhatToClear, { readonly content: boolean; readonly look: boolean; readonly link: boolean }> = {
  All: { content: true, look: true, link: true },
  Contents: { content: true, look: false, link: true },
  Formats: { content: false, look: true, link: false },
  Hyperlinks: { content: false, look: false, link: true },
  RemoveHyperlinks: { content: false, look: true, link: true },
};

const emptied: ICellData = { v: null, f: null, si: null, p: null, ref: null };

/** Empties what the cells of an area hold, as one undoable step. */
export function clear(area: Area, what: WhatToClear): void {
  const { content, look, link } = cleared[what];
  const cells: CellMatrix = {};
  area.book
    .worksheet(area.sheetId)
    .getCellMatrix()
    .forValue((row, column, cell) => {
      if (!cell || !intersection(area, { row, column, rowCount: 1, columnCount: 1 })) return;
      const marks = (cell.custom ?? {}) as CellMarks;
      if (what === "RemoveHyperlinks" && !marks.hyperlink) return;
      const inRow = cells[row] ?? {};
      inRow[column] = {
        ...(content ? emptied : {}),
        ...(look ? { s: null } : {}),
        ...(cell.custom ? { custom: remaining(marks, look, link, what === "All") } : {}),
      };
      cells[row] = inRow;
    });
  writeCells(area, cells);
}

function remaining(marks: CellMarks, look: boolean, link: boolean, control: boolean): CellMarks {
  const left = Object.entries(marks).filter(
    ([key]) =>
      !(look && lookMarks.includes(key as never)) && !(link && key === "hyperlink") && !(control && key === "control"),
  );
  return Object.fromEntries(left);
}
