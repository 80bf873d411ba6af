import type { Area } from "./area";
import { intersection, isUnbounded } from "./area";
import type { Book } from "./book";
import { readFormulas } from "./cells";
import { resolveArea } from "./references";
import { spillArea } from "./spill";
import { dataRows } from "./tables";

const word = "[\\p{L}_\\\\][\\p{L}\\p{N}_.\\\\?]*";
const cell = "\\$?[A-Za-z]{1,3}\\$?[1-9]\\d{0,6}";
/** References, names and structured references, each perhaps of another sheet; texts in quotes match as such. */
const pieces = new RegExp(
  [
    '"(?:[^"]|"")*"',
    `(?:'(?:[^']|'')+'!|${word}!)?(?:${cell}(?::${cell})?(?![\\p{L}\\p{N}_.(\\[])#?|\\$?[A-Za-z]{1,3}:\\$?[A-Za-z]{1,3}(?![\\p{L}\\p{N}_.(])|\\$?[1-9]\\d{0,6}:\\$?[1-9]\\d{0,6})`,
    `(?:'(?:[^']|'')+'!|${word}!)?(?:${word})?\\[(?:'.|[^\\[\\]']|\\[(?:'.|[^\\[\\]'])*\\])*\\]`,
    `(?:'(?:[^']|'')+'!|${word}!)?${word}(?!\\()`,
  ].join("|"),
  "gu",
);

/** What "[@Load]" or "Table[[#This Row],[Load]]" stands for in a row of the table. */
function inThisRow(book: Book, reference: string, at: Area): Area | null {
  const [, name, inner = ""] = /^([^[]*)\[(.*)\]$/su.exec(reference) ?? [];
  const isOfRow = inner.startsWith("@") || /^\[#This Row\]/iu.test(inner);
  const table = name ? book.tables.named(name) : book.tables.at(at.sheetId, at.row, at.column);
  if (!table) return null;
  const columns = inner.replace(/^@/, "").replace(/^\[#This Row\],?/iu, "");
  const rest = columns.startsWith("[") || columns === "" ? columns : `[${columns}]`;
  const area = resolveArea(
    book,
    isOfRow ? `${table.name}[[#Data]${rest && `,${rest}`}]` : `${table.name}[${inner}]`,
    null,
  );
  if (!area || !isOfRow) return area;
  const rows = dataRows(table);
  const isInRows = rows !== null && at.row >= rows.row && at.row < rows.row + rows.rowCount;
  return isInRows ? { ...area, row: at.row, rowCount: 1 } : null;
}

/** The areas a formula names, in their order. A formula is as people write it; `at` is its cell. */
function areasIn(formula: string, at: Area): Area[] {
  const { book } = at;
  return [...formula.matchAll(pieces)].flatMap(([piece]) => {
    if (piece.startsWith('"')) return [];
    if (piece.endsWith("#")) {
      const anchor = resolveArea(book, piece.slice(0, -1), { book, id: at.sheetId });
      return anchor ? [spillArea(anchor) ?? anchor] : [];
    }
    if (piece.endsWith("]")) return inThisRow(book, piece, at) ?? [];
    return resolveArea(book, piece, { book, id: at.sheetId }) ?? [];
  });
}

/** Every formula of the workbook, or of an area, with what it names. */
function formulasOf(book: Book, within: Area | null): { readonly at: Area; readonly names: readonly Area[] }[] {
  const sheets = within ? [within.sheetId] : book.workbook.getSheets().map((sheet) => sheet.getSheetId());
  return sheets.flatMap((sheetId) => {
    const found: { at: Area; names: Area[] }[] = [];
    book
      .worksheet(sheetId)
      .getCellMatrix()
      .forValue((row, column, content) => {
        if (!content?.f && !content?.si) return;
        const at = { book, sheetId, row, column, rowCount: 1, columnCount: 1 };
        if (within && !intersection(within, at)) return;
        found.push({ at, names: areasIn(String(readFormulas(at)[0]![0]), at) });
      });
    return found;
  });
}

const touches = (a: Area, b: Area): boolean => a.sheetId === b.sheetId && intersection(a, b) !== null;

/** What the formulas of an area read; with `all` also what that depends on in its turn. */
export function precedents(area: Area, all: boolean): Area[] {
  const formulas = formulasOf(area.book, all ? null : area);
  const found: Area[] = [];
  let wanted: readonly Area[] = [area];
  const seen = new Set<object>();
  while (wanted.length > 0) {
    const next = formulas.filter((formula) => !seen.has(formula) && wanted.some((one) => touches(one, formula.at)));
    for (const formula of next) seen.add(formula);
    const named = next.flatMap(({ names }) => names);
    found.push(...named);
    wanted = all ? named : [];
  }
  return joined(found);
}

/** The cells whose formulas read the area; with `all` also those that read these in their turn. */
export function dependents(area: Area, all: boolean): Area[] {
  const formulas = formulasOf(area.book, null);
  const found: Area[] = [];
  let wanted: readonly Area[] = [area];
  const seen = new Set<object>();
  while (wanted.length > 0) {
    const next = formulas.filter(
      (formula) => !seen.has(formula) && formula.names.some((name) => wanted.some((one) => touches(name, one))),
    );
    for (const formula of next) seen.add(formula);
    found.push(...next.map(({ at }) => at));
    wanted = all ? next.map(({ at }) => at) : [];
  }
  return joined(found);
}

/** Joins areas that lie side by side to one, and leaves out what lies in another. */
function joined(areas: readonly Area[]): Area[] {
  const left: Area[] = [];
  for (const area of areas) {
    let grown = area;
    for (let index = 0; index < left.length; index += 1) {
      const together = union(left[index]!, grown);
      if (!together) continue;
      left.splice(index, 1);
      grown = together;
      index = -1;
    }
    left.push(grown);
  }
  return left;
}

/** One rectangle of two, where they make one. */
function union(a: Area, b: Area): Area | null {
  if (a.sheetId !== b.sheetId || isUnbounded(a) !== isUnbounded(b)) return null;
  const end = (area: Area) => ({ row: area.row + area.rowCount, column: area.column + area.columnCount });
  const inside = (outer: Area, inner: Area) =>
    outer.row <= inner.row &&
    outer.column <= inner.column &&
    end(outer).row >= end(inner).row &&
    end(outer).column >= end(inner).column;
  if (inside(a, b)) return a;
  if (inside(b, a)) return b;
  const row = Math.min(a.row, b.row);
  const column = Math.min(a.column, b.column);
  if (a.column === b.column && a.columnCount === b.columnCount && a.row <= end(b).row && b.row <= end(a).row) {
    return { ...a, row, rowCount: Math.max(end(a).row, end(b).row) - row };
  }
  if (a.row === b.row && a.rowCount === b.rowCount && a.column <= end(b).column && b.column <= end(a).column) {
    return { ...a, column, columnCount: Math.max(end(a).column, end(b).column) - column };
  }
  return null;
}
