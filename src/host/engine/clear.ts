import type { ICellData } from "@univerjs/core";
import type { Area } from "./area";
import { intersection } from "./area";
import { type CellMatrix, writeCells } from "./cells";

export type WhatToClear = "All" | "Contents" | "Formats" | "Hyperlinks" | "RemoveHyperlinks";

/** Empties what the cells of an area hold, as one undoable step. The host keeps no hyperlinks, so there are none to clear. */
export function clear(area: Area, what: WhatToClear): void {
  if (what === "Hyperlinks" || what === "RemoveHyperlinks") return;
  const contents: ICellData = { v: null, f: null, si: null, p: null, ref: null, custom: null };
  const emptied: ICellData =
    what === "Formats" ? { s: null } : what === "Contents" ? contents : { ...contents, s: null };
  const cells: CellMatrix = {};
  const matrix = area.book.worksheet(area.sheetId).getCellMatrix().getMatrix() as CellMatrix;
  for (const [row, inRow] of Object.entries(matrix)) {
    for (const column of Object.keys(inRow ?? {})) {
      const cell = { row: Number(row), column: Number(column), rowCount: 1, columnCount: 1 };
      if (!intersection(area, cell)) continue;
      const cleared = cells[cell.row] ?? {};
      cleared[cell.column] = { ...emptied };
      cells[cell.row] = cleared;
    }
  }
  writeCells(area, cells);
}
