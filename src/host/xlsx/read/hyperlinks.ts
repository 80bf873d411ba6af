import type { ICellData, IWorksheetData } from "@univerjs/core";
import type { Hyperlink } from "../../engine/cellMarks";
import { rangeOf } from "../addresses";
import type { Relationship } from "../package/workbookPackage";
import { childOf, childrenOf, type XmlElement } from "../package/xml";

/** A link over more cells than this is kept in its first one alone. */
const mostCells = 1000;

/** Puts the links of a sheet into its cells, where the engine keeps what it has no place for. */
export function placeHyperlinks(
  sheet: XmlElement,
  links: readonly Relationship[],
  { cellData = {} }: Partial<IWorksheetData>,
): void {
  const cells = cellData as Record<number, Record<number, ICellData>>;
  for (const source of childrenOf(childOf(sheet, "hyperlinks"), "hyperlink")) {
    const { ref, id, location, tooltip } = source.attributes;
    const address = links.find((link) => link.id === id)?.target;
    const hyperlink: Hyperlink = {
      ...(address && { address }),
      ...(location && { documentReference: location }),
      ...(tooltip && { screenTip: tooltip }),
    };
    if (!ref || (!address && !location)) continue;
    const area = rangeOf(ref);
    const few = (area.endRow - area.startRow + 1) * (area.endColumn - area.startColumn + 1) <= mostCells;
    for (let row = area.startRow; row <= (few ? area.endRow : area.startRow); row += 1) {
      const line = cells[row] ?? {};
      cells[row] = line;
      for (let column = area.startColumn; column <= (few ? area.endColumn : area.startColumn); column += 1) {
        const cell = line[column];
        line[column] = { ...cell, custom: { ...cell?.custom, hyperlink } };
      }
    }
  }
}
