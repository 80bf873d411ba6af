import type { Area } from "./area";
import { type Hyperlink, markAt } from "./cellMarks";
import { readText, writeValues } from "./cells";
import { mark } from "./markCells";

/** The link of the area's first cell, with the text it shows; null where there is none. */
export function hyperlinkOf(area: Area): Hyperlink | null {
  const link = markAt(area, area.row, area.column, "hyperlink");
  if (!link) return null;
  return { ...link, textToDisplay: readText({ ...area, rowCount: 1, columnCount: 1 })[0]![0]! };
}

/** Links the cells, shows the link's text in them where it has one, and gives them the look of links. */
export function setHyperlink(area: Area, link: Hyperlink): void {
  const { textToDisplay, ...target } = link;
  const { book, rowCount, columnCount } = area;
  const shown = textToDisplay ?? (isEmpty(area) ? (link.address ?? link.documentReference) : undefined);
  if (shown !== undefined) {
    const row = Array.from({ length: columnCount }, () => shown);
    writeValues(
      area,
      Array.from({ length: rowCount }, () => row),
    );
  }
  book.namedStyles.apply([area], book.namedStyles.named("Hyperlink")!);
  mark([area], { hyperlink: target });
}

const isEmpty = (area: Area): boolean => readText(area).every((row) => row.every((text) => text === ""));
