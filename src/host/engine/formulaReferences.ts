import type { Area } from "./area";
import { bounding, cellCount, intersection, isUnbounded } from "./area";
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

type Formula = ReturnType<typeof formulasOf>[number];

/** From an area on, what formulas lead to: those of which `from` touches it; with `all` also from there on. */
function followed(
  formulas: readonly Formula[],
  area: Area,
  all: boolean,
  from: (formula: Formula) => readonly Area[],
  to: (formula: Formula) => readonly Area[],
): Area[] {
  const found: Area[] = [];
  let wanted: readonly Area[] = [area];
  const seen = new Set<Formula>();
  while (wanted.length > 0) {
    const next = formulas.filter(
      (formula) => !seen.has(formula) && from(formula).some((own) => wanted.some((one) => touches(own, one))),
    );
    for (const formula of next) seen.add(formula);
    const reached = next.flatMap(to);
    found.push(...reached);
    wanted = all ? reached : [];
  }
  return joined(found);
}

const cellOf = ({ at }: Formula): readonly Area[] => [at];
const namesOf = ({ names }: Formula): readonly Area[] => names;

/** What the formulas of an area read; with `all` also what that depends on in its turn. */
export const precedents = (area: Area, all: boolean): Area[] =>
  followed(formulasOf(area.book, all ? null : area), area, all, cellOf, namesOf);

/** The cells whose formulas read the area; with `all` also those that read these in their turn. */
export const dependents = (area: Area, all: boolean): Area[] =>
  followed(formulasOf(area.book, null), area, all, namesOf, cellOf);

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

/** One rectangle of two, where they make one: where the one around them holds no other cell. */
function union(a: Area, b: Area): Area | null {
  if (a.sheetId !== b.sheetId || isUnbounded(a) !== isUnbounded(b)) return null;
  const around = bounding(a, b);
  const shared = intersection(a, b);
  const covered = cellCount(a) + cellCount(b) - (shared ? cellCount(shared) : 0);
  return cellCount(around) === covered ? { ...a, ...around } : null;
}
