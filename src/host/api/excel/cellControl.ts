import type { Area } from "../../engine/area";
import { intersection } from "../../engine/area";
import { ownMarks } from "../../engine/cellMarks";
import { contentOf, writeValues } from "../../engine/cells";
import { clear } from "../../engine/clear";
import { mark } from "../../engine/markCells";
import { refuse } from "../errors";
import { oneOf } from "./arguments";
import type { Areas } from "./rangeAreas";

/** `Range.control`: a tick box for truth values, or none (excel/excel-add-ins-ranges-checkboxes). */
export function setControl(areas: Areas, control: unknown): void {
  const type = (control as { type?: unknown } | null)?.type;
  const wanted = oneOf(String(type), ["Checkbox", "Empty", "Unknown", "Mixed"], "The control");
  if (wanted === "Unknown" || wanted === "Mixed") {
    refuse("InvalidArgument", `The control ${wanted} is told of cells and cannot be set.`);
  }
  mark(areas, { control: wanted === "Checkbox" ? "Checkbox" : null });
}

/**
 * Where only unticked boxes and empty cells are left, the boxes go; else boxes are unticked and other cells emptied
 * (Range.clearOrResetContents in the reference).
 */
export function clearOrReset(areas: Areas): void {
  const boxes: { readonly cell: Area; readonly ticked: boolean }[] = [];
  let holdsMore = false;
  for (const area of areas) {
    area.book
      .worksheet(area.sheetId)
      .getCellMatrix()
      .forValue((row, column, content) => {
        const cell = { ...area, row, column, rowCount: 1, columnCount: 1 };
        if (!intersection(area, cell)) return;
        if (!ownMarks(area, row, column).control) holdsMore ||= contentOf(content) !== "" || Boolean(content?.f);
        else boxes.push({ cell, ticked: contentOf(content) !== false && contentOf(content) !== "" });
      });
  }
  const resets = holdsMore || boxes.some(({ ticked }) => ticked);
  for (const area of areas) clear(area, "Contents");
  for (const { cell } of boxes) {
    if (resets) writeValues(cell, [[false]]);
    else mark([cell], { control: null });
  }
}

/** `Range.clear` in its kinds. */
export function clearAreas(areas: Areas, given: unknown): void {
  const kinds = ["All", "Contents", "Formats", "Hyperlinks", "RemoveHyperlinks", "ResetContents"] as const;
  const what = oneOf(String(given ?? "All"), kinds, "What to clear");
  if (what === "ResetContents") clearOrReset(areas);
  else for (const area of areas) clear(area, what);
}
