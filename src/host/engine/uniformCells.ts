import type { Area } from "./area";
import { cellCount, intersection } from "./area";

/** Part of an area that holds cells of the engine's sheet; the rest is as its row and column. */
export function existingPart(area: Area): Area | null {
  const sheet = area.book.worksheet(area.sheetId);
  const part = intersection(area, {
    row: 0,
    column: 0,
    rowCount: Math.max(1, sheet.getLastRowWithContent() + 2),
    columnCount: Math.max(1, sheet.getLastColumnWithContent() + 2),
  });
  return part ? { ...area, ...part } : null;
}

/** What is the same in every cell of the areas, or null where they differ. */
export function uniformCells<T>(
  areas: readonly Area[],
  read: (area: Area, row: number, column: number) => T,
): T | null {
  let found: { readonly value: T } | undefined;
  for (const area of areas) {
    const seen = cellCount(area) > 100_000 ? (existingPart(area) ?? { ...area, rowCount: 1, columnCount: 1 }) : area;
    for (let row = seen.row; row < seen.row + seen.rowCount; row += 1) {
      for (let column = seen.column; column < seen.column + seen.columnCount; column += 1) {
        const value = read(area, row, column);
        if (!found) found = { value };
        else if (found.value !== value) return null;
      }
    }
  }
  return found ? found.value : null;
}
