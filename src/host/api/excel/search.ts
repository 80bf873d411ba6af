import type { Area } from "../../engine/area";
import { cellCount, sheetColumns, sheetRows } from "../../engine/area";
import { readFormulas, readText, readTypes, readValues, writeValues } from "../../engine/cells";
import { isColumnHidden, isRowHidden } from "../../engine/layout";
import { usedPart } from "../../engine/usedRange";
import { refuse } from "../errors";
import { text } from "./arguments";

const cell = (area: Area, row: number, column: number): Area => ({ ...area, row, column, rowCount: 1, columnCount: 1 });

type Criteria = { completeMatch?: boolean; matchCase?: boolean; searchDirection?: unknown };

/** Cells whose text or formula holds the wanted text, row by row. */
export function findIn(areas: readonly Area[], wanted: unknown, criteria: Criteria = {}): Area[] {
  const sought = text(wanted, "What is sought");
  if (sought === "") refuse("InvalidArgument", "What is sought is not empty.");
  const plain = (value: string) => (criteria.matchCase ? value : value.toLowerCase());
  const found = areas.flatMap((area) => {
    const used = usedPart(area.book, area.sheetId, area, true);
    if (!used) return [];
    const shown = readText(used);
    const formulas = readFormulas(used);
    return shown.flatMap((row, r) =>
      row.flatMap((value, c) => {
        const texts = [value, String(formulas[r]![c])].map(plain);
        const fits = criteria.completeMatch
          ? texts.includes(plain(sought))
          : texts.some((t) => t.includes(plain(sought)));
        return fits ? [cell(used, used.row + r, used.column + c)] : [];
      }),
    );
  });
  return criteria.searchDirection === "Backwards" ? found.reverse() : found;
}

/** Replaces text in the cells and answers how often. */
export function replaceIn(area: Area, wanted: unknown, replacement: unknown, criteria: Criteria = {}): number {
  const sought = text(wanted, "What is sought");
  const put = text(replacement, "The replacement");
  const escaped = sought.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const pattern = new RegExp(criteria.completeMatch ? `^${escaped}$` : escaped, criteria.matchCase ? "g" : "gi");
  let count = 0;
  for (const found of findIn([area], sought, criteria)) {
    const content = readFormulas(found)[0]![0]!;
    const replaced = String(content).replace(pattern, () => {
      count += 1;
      return put;
    });
    if (replaced !== String(content)) writeValues(found, [[replaced]]);
  }
  return count;
}

/** Joins cells that stand side by side, then equal stretches below each other, to few rectangles. */
function joined(area: Area, picked: (row: number, column: number) => boolean): Area[] {
  const rectangles: Area[] = [];
  let open: Area[] = [];
  for (let row = area.row; row < area.row + area.rowCount; row += 1) {
    const stretches: Area[] = [];
    for (let column = area.column; column < area.column + area.columnCount; column += 1) {
      if (!picked(row, column)) continue;
      const last = stretches.at(-1);
      if (last && last.column + last.columnCount === column) {
        stretches[stretches.length - 1] = { ...last, columnCount: last.columnCount + 1 };
      } else stretches.push(cell(area, row, column));
    }
    const continued = stretches.map((stretch) => {
      const above = open.find(
        ({ column, columnCount }) => column === stretch.column && columnCount === stretch.columnCount,
      );
      return above ? { ...above, rowCount: above.rowCount + 1 } : stretch;
    });
    rectangles.push(...open.filter((o) => !continued.some((c) => c.row === o.row && c.column === o.column)));
    open = continued;
  }
  return [...rectangles, ...open];
}

/** Cells of a kind: Visible, Blanks, Constants, Formulas; the latter two also by the type of their values. */
export function specialCells(areas: readonly Area[], kind: string, type: string | null): Area[] {
  return areas.flatMap((area) => {
    if (kind === "Visible") return visibleCells(area);
    const used = usedPart(area.book, area.sheetId, area, kind !== "Blanks");
    if (!used) return [];
    const seen = kind === "Blanks" && cellCount(area) < 1_000_000 ? area : used;
    const types = readTypes(seen);
    const formulas = readFormulas(seen);
    const values = readValues(seen);
    const fitsType = (r: number, c: number) => {
      const name = { Double: "Numbers", String: "Text", Boolean: "Logical", Error: "Errors", Empty: "" }[types[r]![c]!];
      return type === null || type === "All" || (name !== "" && type.includes(name));
    };
    const isFormula = (r: number, c: number) =>
      formulas[r]![c] !== values[r]![c] && String(formulas[r]![c]).startsWith("=");
    const picked = (row: number, column: number): boolean => {
      const [r, c] = [row - seen.row, column - seen.column];
      switch (kind) {
        case "Blanks":
          return types[r]![c] === "Empty";
        case "Constants":
          return types[r]![c] !== "Empty" && !isFormula(r, c) && fitsType(r, c);
        case "Formulas":
          return isFormula(r, c) && fitsType(r, c);
        default:
          return refuse("NotImplemented", `The embedded host does not offer special cells of the kind ${kind}.`);
      }
    };
    return joined(seen, picked);
  });
}

/** Rows and columns beyond the engine's sheet are visible: the rest is one stretch. */
function visibleCells(area: Area): Area[] {
  const sheet = area.book.worksheet(area.sheetId);
  const lines = (from: number, count: number, known: number, hidden: (index: number) => boolean) => {
    const stretches: { start: number; count: number }[] = [];
    for (let index = from; index < Math.min(from + count, known); index += 1) {
      const last = stretches.at(-1);
      if (hidden(index)) continue;
      if (last && last.start + last.count === index) last.count += 1;
      else stretches.push({ start: index, count: 1 });
    }
    const rest = from + count - Math.max(known, from);
    const last = stretches.at(-1);
    if (rest > 0 && last && last.start + last.count === Math.max(known, from)) last.count += rest;
    else if (rest > 0) stretches.push({ start: Math.max(known, from), count: rest });
    return stretches;
  };
  const rows = lines(area.row, area.rowCount, Math.min(sheet.getRowCount(), sheetRows), (row) =>
    isRowHidden(area, row),
  );
  const columns = lines(area.column, area.columnCount, Math.min(sheet.getColumnCount(), sheetColumns), (column) =>
    isColumnHidden(area, column),
  );
  return rows.flatMap((row) =>
    columns.map((column) => ({
      ...area,
      row: row.start,
      rowCount: row.count,
      column: column.start,
      columnCount: column.count,
    })),
  );
}
