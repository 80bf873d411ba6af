import { CellValueType, type ICellData, type IRange } from "@univerjs/core";
import type { CellMarks } from "../../engine/cellMarks";
import { cellPosition, rangeOf } from "../addresses";
import { movedFormula, plainFormula } from "../formulas";
import { childOf, numberOf, textOf, type XmlElement } from "../package/xml";

/** Turns the cells of one sheet, in their order, into the engine's. */
export type CellReader = (cell: XmlElement, row: number, column: number) => ICellData | undefined;

export function cellReader(
  texts: readonly string[],
  styleId: (index: number) => string | undefined,
  marksOf: (index: number) => CellMarks | undefined,
): CellReader {
  const shared = new Map<string, { formula: string; row: number; column: number }>();
  const spills: IRange[] = [];

  const formulaOf = (source: XmlElement, row: number, column: number): string | undefined => {
    const { t: kind, si: group = "", ref } = source.attributes;
    if (kind === "dataTable") return undefined;
    if (kind === "array" && ref) spills.push(rangeOf(ref));
    if (kind !== "shared") return plainFormula(source.text);
    if (source.text) shared.set(group, { formula: source.text, row, column });
    const first = shared.get(group);
    return first && plainFormula(movedFormula(first.formula, row - first.row, column - first.column));
  };

  return (cell, row, column) => {
    const look = numberOf(cell, "s") ?? 0;
    const style = styleId(look);
    const marks = marksOf(look);
    const source = childOf(cell, "f");
    const formula = source && formulaOf(source, row, column);
    // What an array formula spilt is its result, not content: kept, it would stand in the formula's own way.
    const spilt = formula === undefined && spills.some((area) => contains(area, row, column));
    const content = spilt ? {} : contentOf(cell, texts);
    if (!style && !marks && formula === undefined && content.v === undefined) return undefined;
    return {
      ...content,
      ...(formula !== undefined && { f: `=${formula}` }),
      ...(style && { s: style }),
      ...(marks && { custom: { ...marks } }),
    };
  };
}

function contentOf(cell: XmlElement, texts: readonly string[]): Pick<ICellData, "v" | "t"> {
  const kind = cell.attributes.t ?? "n";
  if (kind === "inlineStr") return text(textOf(childOf(cell, "is")));
  const value = childOf(cell, "v")?.text;
  if (value === undefined || value === "") return kind === "str" && childOf(cell, "v") ? text("") : {};
  switch (kind) {
    case "s":
      return text(texts[Number(value)] ?? "");
    case "b":
      return { v: Number(value), t: CellValueType.BOOLEAN };
    case "n":
      return Number.isNaN(Number(value)) ? text(value) : { v: Number(value), t: CellValueType.NUMBER };
    case "d":
      return { v: serialOf(value), t: CellValueType.NUMBER };
    default:
      return text(value);
  }
}

const text = (value: string) => ({ v: value, t: CellValueType.STRING });

/** Days since 30 December 1899 of a date such as 2026-08-11T10:00:00 (dates of the stricter file form). */
const serialOf = (date: string) => Date.parse(`${date}${/T/.test(date) ? "" : "T00:00"}Z`) / 86400000 + 25569;

const contains = ({ startRow, endRow, startColumn, endColumn }: IRange, row: number, column: number) =>
  row >= startRow && row <= endRow && column >= startColumn && column <= endColumn;

/** Where a cell stands; cells without an address follow the one before. */
export function positionOf(cell: XmlElement, row: number, column: number): { row: number; column: number } {
  return cell.attributes.r ? cellPosition(cell.attributes.r) : { row, column };
}
