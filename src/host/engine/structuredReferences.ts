/*
 * The engine cannot read what Excel reads: table names with "_", columns with "(", ")" or "#", another letter case,
 * "[@Col]", and spill references "G1#". In the cells stands therefore a form it can read, with an alias for the table
 * and for each column ("TBLQ1[[#This Row],[C2]]"); what a coach types and sees is translated on the way in and out.
 * A reference to a sheet there is not would be taken for one to the formula's own; it stands there as a text.
 */

import { quotedSheet } from "./addresses";

/** A table as formulas know it. Aliases never change, so that a renamed column or table needs no new formulas. */
export type FormulaTable = {
  readonly alias: string;
  readonly name: string;
  readonly columns: readonly { readonly alias: string; readonly name: string }[];
};

/** Where a formula stands: the table around it, and whether it is in one of the table's rows of data. */
export type FormulaPlace = {
  readonly table: FormulaTable | null;
  isInRowsOf(table: FormulaTable): boolean;
  /** The name of the sheet as the workbook spells it, or null where it has none of this name. */
  sheetCalled(name: string): string | null;
};

/** Functions of ours that stand for operators the engine lacks. */
export const spillFunction = "ANCHORARRAY";
export const intersectionFunction = "SINGLE";
export const outsideFunction = "OUTSIDEOFTABLEROWS";
export const missingSheetFunction = "MISSINGSHEET";

const word = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*/u;
const cell = /^\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}(?![\p{L}\p{N}_.(])/u;

/** "Sheet!" or "'My sheet'!" and what follows: a cell, an area, whole columns or rows. */
const onSheet =
  /^('(?:[^']|'')+'|[\p{L}_\\][\p{L}\p{N}_.\\?]*)!(?:\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}(?::\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6})?|\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}|\$?[1-9]\d{0,6}:\$?[1-9]\d{0,6})(?![\p{L}\p{N}_.(])/u;

const unescaped = (name: string): string => name.replace(/'(['#@[\]])/g, "$1");
const escaped = (name: string): string => name.replace(/(['#@[\]])/g, "'$1");
const sameName = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

/** End (exclusive) of the text in quotes that begins at `start`; a doubled quote is one of the text. */
function quotedEnd(formula: string, start: number): number {
  const quote = formula[start];
  let end = start + 1;
  while (end < formula.length) {
    if (formula[end] === quote) {
      if (formula[end + 1] !== quote) return end + 1;
      end += 1;
    }
    end += 1;
  }
  return end;
}

/** End (exclusive) of the bracket that opens at `start`; an apostrophe inside escapes the next letter. */
function bracketEnd(formula: string, start: number): number {
  const open = formula[start];
  const close = open === "(" ? ")" : "]";
  let depth = 0;
  for (let at = start; at < formula.length; at += 1) {
    const letter = formula[at];
    if (open === "[" && letter === "'") at += 1;
    else if (open === "(" && (letter === '"' || letter === "'")) at = quotedEnd(formula, at) - 1;
    else if (letter === open) depth += 1;
    else if (letter === close) {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return -1;
}

type Piece = { readonly text: string; readonly end: number };

/** Goes through the code of a formula, text apart; `read` may take over from a position. */
function translate(formula: string, read: (at: number) => Piece | null): string {
  let out = "";
  let at = 0;
  while (at < formula.length) {
    const letter = formula[at]!;
    const piece = letter === '"' ? null : read(at);
    if (piece) {
      out += piece.text;
      at = piece.end;
      continue;
    }
    if (letter === '"' || letter === "'") {
      const end = quotedEnd(formula, at);
      out += formula.slice(at, end);
      at = end;
      continue;
    }
    const name = word.exec(formula.slice(at))?.[0];
    out += name ?? letter;
    at += name?.length ?? 1;
  }
  return out;
}

/** The inner of "[@...]" or "[[#Headers],[A]:[B]]" with the names of columns replaced. */
function translateColumns(inner: string, rename: (name: string) => string): string {
  return inner.replace(/\[((?:'.|[^[\]'])*)\]/g, (_whole, name: string) =>
    name.trim().startsWith("#") ? `[${name.trim()}]` : `[${rename(name)}]`,
  );
}

/** "[@A]", "[@[A]:[B]]", "[A]", "[[#This Row],[A]]" -> what stands between the alias' brackets. */
function engineSpecifier(inner: string, table: FormulaTable): { text: string; thisRow: boolean } {
  const alias = (name: string) =>
    table.columns.find((column) => sameName(column.name, unescaped(name.trim())))?.alias ?? "NOSUCHCOLUMN";
  const trimmed = inner.trim();
  if (trimmed.startsWith("@")) {
    const rest = trimmed.slice(1).trim();
    const all = `[${table.columns[0]!.alias}]:[${table.columns.at(-1)!.alias}]`;
    const columns = rest === "" ? all : rest.startsWith("[") ? translateColumns(rest, alias) : `[${alias(rest)}]`;
    return { text: `[#This Row],${columns}`, thisRow: true };
  }
  if (trimmed === "" || trimmed.startsWith("#")) {
    return { text: trimmed, thisRow: sameName(trimmed, "#This Row") };
  }
  if (!trimmed.startsWith("[")) return { text: alias(trimmed), thisRow: false };
  const text = translateColumns(trimmed, alias).replace(/^\[(C\d+)\]$/, "$1");
  return { text, thisRow: /^\[#This Row\]/i.test(text) };
}

/** From what a coach types to what the engine can read. Giving it an engine form again changes nothing. */
export function toEngine(typed: string, tables: readonly FormulaTable[], place: FormulaPlace): string {
  const formula = typed.replace(/_xlfn\.(_xlws\.)?/gi, "");
  return translate(formula, (at) => {
    const rest = formula.slice(at);
    if (rest[0] === "@") {
      const operandEnd = endOfOperand(formula, at + 1);
      return operandEnd
        ? {
            text: `${intersectionFunction}(${toEngine(formula.slice(at + 1, operandEnd), tables, place)})`,
            end: operandEnd,
          }
        : { text: "", end: at + 1 };
    }
    const [elsewhere, sheet = ""] = onSheet.exec(rest) ?? [];
    if (elsewhere) {
      const end = at + elsewhere.length;
      const named = sheet.startsWith("'") ? sheet.slice(1, -1).replaceAll("''", "'") : sheet;
      const spelt = place.sheetCalled(named);
      if (spelt === null) return { text: `${missingSheetFunction}("${elsewhere.replaceAll('"', '""')}")`, end };
      // The engine tells capitals from small letters. The reference behind the name is read in its turn.
      return { text: `${spelt === named ? sheet : quotedSheet(spelt)}!`, end: at + sheet.length + 1 };
    }
    const reference = cell.exec(rest)?.[0];
    if (reference) {
      const end = at + reference.length;
      return formula[end] === "#"
        ? { text: `${spillFunction}(${reference.toUpperCase()})`, end: end + 1 }
        : { text: reference.toUpperCase(), end };
    }
    const name = word.exec(rest)?.[0] ?? "";
    const end = at + name.length;
    if (name && formula[end] === "(") return { text: name.toUpperCase(), end };
    if (!name && rest[0] !== "[") return null;
    const table = name ? tables.find((candidate) => sameName(candidate.name, name)) : place.table;
    if (!table && formula[end] === "[") {
      // An alias, or a table there is not: its brackets are no table's of the place.
      const unknownEnd = bracketEnd(formula, end);
      return unknownEnd < 0 ? null : { text: formula.slice(at, unknownEnd), end: unknownEnd };
    }
    if (!table) return null;
    if (formula[end] !== "[") return { text: table.alias, end };
    const close = bracketEnd(formula, end);
    if (close < 0) return null;
    const specifier = engineSpecifier(formula.slice(end + 1, close - 1), table);
    const text = `${table.alias}[${specifier.text}]`;
    return {
      text: specifier.thisRow && !place.isInRowsOf(table) ? `${outsideFunction}(${text})` : text,
      end: close,
    };
  });
}

/** End of the call, structured reference or cell reference after an "@". */
function endOfOperand(formula: string, start: number): number | null {
  const reference = /^\$?[A-Za-z]{1,3}\$?[1-9]\d*(:\$?[A-Za-z]{1,3}\$?[1-9]\d*)?(?![\p{L}\p{N}_.(])/u.exec(
    formula.slice(start),
  )?.[0];
  if (reference) return start + reference.length;
  const name = word.exec(formula.slice(start))?.[0] ?? "";
  const after = start + name.length;
  if (name && (formula[after] === "(" || formula[after] === "[")) {
    const end = bracketEnd(formula, after);
    return end < 0 ? null : end;
  }
  return name ? after : null;
}

const plainColumn = /^[\p{L}\p{N}_]+$/u;

/** "C2" or "[#This Row],[C2]" -> "Load (kg)" or "@[Load (kg)]". */
function shownSpecifier(inner: string, table: FormulaTable): string {
  const nameOf = (alias: string) => table.columns.find((column) => column.alias === alias)?.name;
  const shown = (alias: string) => {
    const name = nameOf(alias);
    return name === undefined ? "#REF!" : escaped(name);
  };
  const row = /^\[#This Row\],(.*)$/.exec(inner);
  if (row) {
    const columns = row[1]!;
    if (columns === `[${table.columns[0]?.alias}]:[${table.columns.at(-1)?.alias}]`) return "@";
    const single = /^\[(C\d+)\]$/.exec(columns);
    const name = single && nameOf(single[1]!);
    return `@${name && plainColumn.test(name) ? name : translateColumns(columns, shown)}`;
  }
  return inner.startsWith("[") ? translateColumns(inner, shown) : inner.replace(/^C\d+$/, shown);
}

/** From the engine's form to what a coach sees: inside a table, its own name is left out before "[@". */
export function toShown(formula: string, tables: readonly FormulaTable[], place: FormulaPlace): string {
  return translate(formula, (at) => {
    const name = word.exec(formula.slice(at))?.[0];
    if (!name) return null;
    const end = at + name.length;
    if (name === missingSheetFunction && formula.startsWith('("', end)) {
      const close = quotedEnd(formula, end + 1);
      return { text: formula.slice(end + 2, close - 1).replaceAll('""', '"'), end: close + 1 };
    }
    if (formula[end] === "(" && [spillFunction, intersectionFunction, outsideFunction].includes(name)) {
      const close = bracketEnd(formula, end);
      if (close < 0) return null;
      const operand = toShown(formula.slice(end + 1, close - 1), tables, place);
      if (name === spillFunction) return { text: `${operand}#`, end: close };
      return { text: name === intersectionFunction ? `@${operand}` : operand, end: close };
    }
    const table = tables.find((candidate) => candidate.alias === name);
    if (!table) return null;
    if (formula[end] !== "[") return { text: table.name, end };
    const close = bracketEnd(formula, end);
    const specifier = shownSpecifier(formula.slice(end + 1, close - 1), table);
    const own = specifier.startsWith("@") && place.table?.alias === table.alias && place.isInRowsOf(table);
    return { text: `${own ? "" : table.name}[${specifier}]`, end: close };
  });
}
