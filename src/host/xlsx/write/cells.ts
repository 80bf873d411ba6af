import { CellValueType, type ICellData, type IRange, type IStyleData } from "@univerjs/core";
import type { CellMarks } from "../../engine/cellMarks";
import { cellAddress, rangeReference } from "../addresses";
import { fileFormula } from "./fileFormula";
import { escaped, tag } from "./markup";
import type { SharedTexts } from "./sharedTexts";
import type { StyleSheet } from "./styles";

/** What a cell needs to know of the workbook around it. */
export type CellSurroundings = {
  readonly styles: StyleSheet;
  readonly texts: SharedTexts;
  readonly look: (style: ICellData["s"]) => IStyleData | undefined;
  /** A formula as people write it, of the engine's own form. */
  readonly shownFormula: (formula: string, row: number, column: number) => string;
  /** Where the formula of this cell spilt to, if it did. */
  readonly spillOf: (row: number, column: number) => IRange | undefined;
  /** Name of the table the cell is in. */
  readonly tableAt: (row: number, column: number) => string | undefined;
  /** The heading of a table column must be text, whatever the cell holds. */
  readonly headingAt: (row: number, column: number) => string | undefined;
};

const errors = new Set([
  "#NULL!",
  "#DIV/0!",
  "#VALUE!",
  "#REF!",
  "#NAME?",
  "#NUM!",
  "#N/A",
  "#GETTING_DATA",
  "#SPILL!",
  "#CALC!",
]);

const plain: IStyleData = {};

/** Number of the look of a cell, a row or a column; 0 where it looks like nothing. */
export function lookNumber(
  own: Pick<ICellData, "s" | "custom"> | undefined,
  { look, styles }: CellSurroundings,
): number {
  const style = look(own?.s);
  const marks = own?.custom as CellMarks | null | undefined;
  return style || marks ? styles.cell(style ?? plain, marks ?? undefined) : 0;
}

/** One cell, or nothing where it holds nothing and looks like nothing. */
export function cellTag(cell: ICellData, row: number, column: number, around: CellSurroundings): string {
  const s = lookNumber(cell, around);
  const heading = around.headingAt(row, column);
  const content = heading === undefined ? contentOf(cell, row, column, around) : textContent(heading, around);
  if (content.markup === "" && s === 0) return "";
  return tag("c", { r: cellAddress(row, column), s: s || undefined, t: content.type }, content.markup);
}

type Content = { readonly type: string | undefined; readonly markup: string };

function contentOf(cell: ICellData, row: number, column: number, around: CellSurroundings): Content {
  const value = plainContent(cell, around);
  if (!cell.f) return value;
  const shown = around.shownFormula(cell.f, row, column);
  const spill = around.spillOf(row, column);
  const formula = tag(
    "f",
    spill ? { t: "array", ref: rangeReference(spill) } : {},
    escaped(fileFormula(shown, around.tableAt(row, column))),
  );
  // The result of a formula is written out; only a text that stands in a cell by itself is shared.
  if (value.type !== "s") return { type: value.type, markup: formula + value.markup };
  return { type: "str", markup: formula + tag("v", {}, escaped(textOf(cell))) };
}

function plainContent(cell: ICellData, around: CellSurroundings): Content {
  const { v: value, t: type, p: richText } = cell;
  if (richText) return textContent(textOf(cell), around);
  if (value === undefined || value === null || value === "") return { type: undefined, markup: "" };
  if (type === CellValueType.BOOLEAN || typeof value === "boolean") {
    return { type: "b", markup: tag("v", {}, Number(value) ? "1" : "0") };
  }
  if (typeof value === "number" && type !== CellValueType.STRING && type !== CellValueType.FORCE_STRING) {
    // The shortest form that reads back as the very same number.
    return { type: undefined, markup: tag("v", {}, String(value)) };
  }
  if (errors.has(String(value)) && type !== CellValueType.FORCE_STRING)
    return { type: "e", markup: tag("v", {}, escaped(String(value))) };
  return textContent(String(value), around);
}

const textContent = (text: string, { texts }: CellSurroundings): Content => ({
  type: "s",
  markup: tag("v", {}, String(texts.place(text))),
});

/** Text typed with several looks in one cell lives in a small document of its own, closed by a line end. */
const textOf = ({ p, v }: ICellData): string =>
  p?.body ? p.body.dataStream.replace(/\r\n$/, "").replace(/\r/g, "\n") : String(v ?? "");
