import type { IBorderStyleData, IStyleData, Nullable } from "@univerjs/core";
import { ColorKit, HorizontalAlign, VerticalAlign, WrapStrategy } from "@univerjs/core";
import { SetColDataCommand, SetRowDataCommand } from "@univerjs/sheets";
import type { Area } from "./area";
import { cellCount, isEntireColumn, isEntireRow } from "./area";
import { styleAt, writeStyle } from "./cells";
import { existingPart, uniformCells } from "./uniformCells";

/** "#1F4E79" of any colour the engine keeps ("#fff", "rgb(..)"); null for none. */
export function hexColour(colour: Nullable<string>): string | null {
  if (!colour) return null;
  const kit = new ColorKit(colour);
  return kit.isValid ? kit.toHexString().slice(0, 7).toUpperCase() : null;
}

/** What a style has in every cell of the areas, or null where they differ. */
export const uniform = <T>(areas: readonly Area[], read: (style: IStyleData) => T): T | null =>
  uniformCells(areas, (area, row, column) => read(styleAt(area, row, column)));

/** Merges a style into cells. Whole columns and rows get it themselves, and so do their cells that have their own. */
export function applyStyle(areas: readonly Area[], style: (row: number, column: number) => IStyleData | null): void {
  for (const area of areas) {
    const { book, sheetId } = area;
    const place = { unitId: book.id, subUnitId: sheetId };
    const sheet = book.worksheet(sheetId);
    const styles = book.workbook.getStyles();
    if (isEntireColumn(area) && !isEntireRow(area)) {
      const columnData: Record<number, { s: IStyleData }> = {};
      for (let column = area.column; column < area.column + area.columnCount; column += 1) {
        const own = sheet.getColumnManager().getColumn(column)?.s;
        columnData[column] = { s: { ...(own ? styles.get(own) : {}), ...style(0, column) } };
      }
      book.run(SetColDataCommand.id, { ...place, columnData });
    } else if (isEntireRow(area) && !isEntireColumn(area)) {
      const rowData: Record<number, { s: IStyleData }> = {};
      for (let row = area.row; row < area.row + area.rowCount; row += 1) {
        const own = sheet.getRowManager().getRow(row)?.s;
        rowData[row] = { s: { ...(own ? styles.get(own) : {}), ...style(row, 0) } };
      }
      book.run(SetRowDataCommand.id, { ...place, rowData });
    }
    const cells = cellCount(area) > 100_000 ? existingPart(area) : area;
    if (cells) writeStyle(cells, style);
  }
}

export const horizontalAlignments = {
  General: HorizontalAlign.UNSPECIFIED,
  Left: HorizontalAlign.LEFT,
  Center: HorizontalAlign.CENTER,
  Right: HorizontalAlign.RIGHT,
  Justify: HorizontalAlign.JUSTIFIED,
  Distributed: HorizontalAlign.DISTRIBUTED,
} as const;

export const verticalAlignments = {
  Top: VerticalAlign.TOP,
  Center: VerticalAlign.MIDDLE,
  Bottom: VerticalAlign.BOTTOM,
} as const;

/** Indentation of one level in the engine's pixels. */
export const indentLevel = 9;

export const isWrapped = (style: IStyleData): boolean => style.tb === WrapStrategy.WRAP;

export type Edge = "t" | "b" | "l" | "r";
export const edgeOf = (style: IStyleData, edge: Edge): Nullable<IBorderStyleData> => style.bd?.[edge];
