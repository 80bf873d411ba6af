import { areaAddress } from "../reading/address";
import type { Anchor, CellGrid, Restoration } from "./deed";

type Step<Kind extends Restoration["kind"]> = Extract<Restoration, { readonly kind: Kind }>;

/** Cells of a sheet as they were read before a write, from which any part of them can be put back. */
export type BeforeImage = {
  readonly sheetId: string;
  readonly anchor: Anchor;
  /** Where the grids begin, zero-based. */
  readonly row: number;
  readonly column: number;
  readonly formulas: CellGrid;
  readonly values: CellGrid;
  readonly numberFormat: CellGrid;
};

/** The step that puts back a rectangle of the image. */
export function restoreCells(
  image: BeforeImage,
  row: number,
  column: number,
  rowCount: number,
  columnCount: number,
): Step<"restoreCells"> {
  const part = <T>(read: (r: number, c: number) => T): T[][] =>
    Array.from({ length: rowCount }, (_, r) =>
      Array.from({ length: columnCount }, (_, c) => read(row + r - image.row, column + c - image.column)),
    );
  return {
    kind: "restoreCells",
    sheetId: image.sheetId,
    address: areaAddress(row, column, rowCount, columnCount),
    anchor: image.anchor,
    formulas: part((r, c) => asTyped(image.formulas[r]?.[c] ?? "", image.values[r]?.[c], image.numberFormat[r]?.[c])),
    numberFormat: part((r, c) => image.numberFormat[r]?.[c] ?? "General"),
  };
}

/**
 * What to write so that the cell holds the same again. Text that only an apostrophe kept from being read as a number,
 * a date or a formula comes back from the program without it.
 */
function asTyped(formula: unknown, value: unknown, format: unknown): unknown {
  const isText = typeof formula === "string" && formula === value && format !== "@";
  return isText && /^[=+\-@']|\d|^(true|false)$/i.test(formula) ? `'${formula}` : formula;
}
