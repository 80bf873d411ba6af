import { addressOf } from "./address";
import { type ColumnMap, layoutOf, offsetOf } from "./columns";
import { type Grid, isCellError, textOf } from "./grid";
import { mergedCells } from "./mergedCells";
import { shorten } from "./readNumber";
import type { Remark } from "./readResults";

/**
 * The athlete of each row. Blanks around a name are trimmed, and told. Names that differ in more than that are kept
 * apart: two people may be called alike. In a wide sheet the same name on two rows gives two athletes, told apart by
 * their rows. A name merged down over several rows of a long sheet counts for each of them.
 */
export function readNames(grid: Grid, map: ColumnMap, rows: readonly number[], remarks: Remark[]): Map<number, string> {
  const column = offsetOf(map, "athlete");
  const names = new Map<number, string>();
  if (column === null) return names;
  const mergedAt = mergedCells(grid);
  const repeats = layoutOf(map) === "long";
  const firstRowOf = new Map<string, number>();
  const firstSpelling = new Map<string, string>();
  for (const row of rows) {
    const cell = addressOf(grid, row, column);
    const raw = grid.cells[row]![column]!;
    let name = textOf(raw);
    if (name === "") {
      const area = mergedAt(row, column);
      if (area && area.firstColumn === column) name = textOf(grid.cells[area.firstRow]?.[column] ?? null);
    }
    if (name === "") {
      const why = isCellError(raw)
        ? `The cell shows the error ${raw.error}; a name is needed.`
        : "No name stands here; the row was left out.";
      remarks.push({ cell, code: "noAthlete", leftOut: true, why });
      continue;
    }
    if (typeof raw === "string" && raw !== name && raw.trim() !== "") {
      remarks.push({
        cell,
        code: "converted",
        leftOut: false,
        why: `The name has a blank before or after it; read as “${shorten(name)}”.`,
      });
    }
    const alike = firstSpelling.get(likeness(name));
    if (alike === undefined) firstSpelling.set(likeness(name), name);
    else if (alike !== name && !firstRowOf.has(name)) {
      const first = addressOf(grid, firstRowOf.get(alike)!, column);
      const why = `“${shorten(name)}” looks like “${shorten(alike)}” in ${first}. They were kept apart; give them one spelling if they are one person.`;
      remarks.push({ cell, code: "nearDuplicate", leftOut: false, why });
    }
    const first = firstRowOf.get(name);
    if (first === undefined) firstRowOf.set(name, row);
    else if (!repeats) {
      const why = `“${shorten(name)}” also stands in ${addressOf(grid, first, column)}. The two rows were kept apart.`;
      remarks.push({ cell, code: "duplicate", leftOut: false, why });
      name = `${name} (row ${grid.firstRow + row + 1})`;
    }
    names.set(row, name);
  }
  return names;
}

/** Names that share a likeness differ at most in case, dots, commas, hyphens and inner blanks. */
const likeness = (name: string): string =>
  name
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[\s.,'’-]+/g, "");
