import { areaAddress, quotedSheet } from "../reading/address";
import { firstCall } from "./functionCalls";
import { trapHost } from "./hostRefusal";

/** The active cell, where a formula of it, or one that spilt into it, calls a function of ours. */
export type ActiveCall = {
  /** E.g. "'Hop test'!J4". */
  readonly address: string;
  /** Id of the function, as in the reference. */
  readonly id: string;
  readonly arguments: readonly CallArgument[];
  /** Which cell of the answer it shows, from the cell of the formula on. */
  readonly offset: { readonly row: number; readonly column: number };
  /** What the cell shows, where that is an error, e.g. "#N/A"; null where it is none. */
  readonly error: string | null;
};

export type CallArgument = {
  /** As it stands in the formula; "" where it is left out. */
  readonly text: string;
  /** What it holds: rows of cells (empty ones null), or null where it could not be read here. */
  readonly cells: readonly (readonly unknown[])[] | null;
};

/** Reads the call in the active cell with the values of its arguments, in two round trips; null where there is none. */
export const readActiveCall = (): Promise<ActiveCall | null> =>
  trapHost(() =>
    Excel.run(async (context): Promise<ActiveCall | null> => {
      const cell = context.workbook.getActiveCell();
      cell.load("formulas,values,valueTypes,rowIndex,columnIndex");
      const parent = cell.getSpillParentOrNullObject();
      parent.load("formulas,rowIndex,columnIndex");
      cell.worksheet.load("name");
      await context.sync();
      const anchor = parent.isNullObject ? cell : parent;
      const call = firstCall(anchor.formulas[0]![0]);
      if (!call) return null;

      const read = call.arguments.map((text) => {
        const range = rangeOf(context, cell.worksheet, text);
        range?.load("values,valueTypes");
        return { text, range };
      });
      await context.sync();
      return {
        address: `${quotedSheet(cell.worksheet.name)}!${areaAddress(cell.rowIndex, cell.columnIndex, 1, 1)}`,
        id: call.id,
        arguments: read.map(({ text, range }) => ({
          text,
          cells: range ? (range.isNullObject ? null : cellsOf(range)) : constantOf(text),
        })),
        offset: { row: cell.rowIndex - anchor.rowIndex, column: cell.columnIndex - anchor.columnIndex },
        error: (cell.valueTypes[0]![0] as string) === "Error" ? String(cell.values[0]![0]) : null,
      };
    }),
  );

const reference =
  /^(?:(?:'((?:[^']|'')*)'|([^\s"'!(){}[\],;:+&*/^=<>-]+))!)?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)$/i;
const wholeColumns = /^(?:(?:'((?:[^']|'')*)'|([^\s"'!(){}[\],;:+&*/^=<>-]+))!)?(\$?[A-Z]{1,3}:\$?[A-Z]{1,3})$/i;

/** The range an argument names by its address; undefined where it is no address. Of whole columns, the used part. */
function rangeOf(context: Excel.RequestContext, own: Excel.Worksheet, text: string): Excel.Range | undefined {
  const [, quotedName, plainName, address] = reference.exec(text) ?? wholeColumns.exec(text) ?? [];
  if (address === undefined) return undefined;
  const name = quotedName?.replaceAll("''", "'") ?? plainName;
  const sheet = name === undefined ? own : context.workbook.worksheets.getItemOrNullObject(name);
  const range = sheet.getRange(address);
  return wholeColumns.test(text) ? range.getUsedRangeOrNullObject(true) : range;
}

function cellsOf({ values, valueTypes }: Excel.Range): unknown[][] {
  return values.map((row, r) =>
    row.map((value, c) => {
      const type = valueTypes[r]![c] as string;
      if (type === "Empty") return null;
      // As functions get an error: an object of the data types.
      return type === "Error" ? { type: "Error", basicType: "Error", basicValue: value } : value;
    }),
  );
}

/** A number, text, truth value or array as it stands in a formula; null where it is anything else. */
export function constantOf(text: string): unknown[][] | null {
  if (text === "") return [[null]];
  const array = /^\{(.*)\}$/s.exec(text);
  const rows = array ? split(array[1]!, ";").map((row) => split(row, ",").map(single)) : [[single(text)]];
  return rows.every((row) => row.every((value) => value !== undefined)) ? rows : null;
}

function single(text: string): number | string | boolean | undefined {
  const plain = text.trim();
  if (/^"(?:[^"]|"")*"$/.test(plain)) return plain.slice(1, -1).replaceAll('""', '"');
  if (/^(true|false)$/i.test(plain)) return plain.toLowerCase() === "true";
  const number = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)(%?)$/i.exec(plain);
  return number ? Number(number[1]) / (number[2] ? 100 : 1) : undefined;
}

/** Parts between the signs that stand outside quotes. */
const split = (text: string, sign: "," | ";"): string[] =>
  text.match(new RegExp(`(?:"(?:[^"]|"")*"|[^"${sign}])+`, "g")) ?? [];
