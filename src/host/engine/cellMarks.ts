import type { Area } from "./area";
import { uniformCells } from "./uniformCells";

/** A link as `Range.hyperlink` has it: to an address, or to a place of the workbook such as "Squad!A1". */
export type Hyperlink = {
  readonly address?: string;
  readonly documentReference?: string;
  readonly screenTip?: string;
  readonly textToDisplay?: string;
};

/**
 * What Excel keeps of a cell that the engine has no place for. It stands in the engine's `custom` of the cell, the row,
 * the column or the sheet, so that it moves with them, is undone with them and is part of the workbook's snapshot.
 */
export type CellMarks = {
  /** Name of the cell style. */
  style?: string;
  hyperlink?: Hyperlink;
  /** A tick box shows the cell's truth value. */
  control?: "Checkbox";
  /** Id of the comment that stands at the cell. */
  comment?: string;
  /** Locked unless said otherwise. */
  locked?: boolean;
  formulaHidden?: boolean;
  shrinkToFit?: boolean;
  autoIndent?: boolean;
  readingOrder?: string;
  /** Alignments of the API that the engine draws as its nearest. */
  horizontalAlignment?: string;
  verticalAlignment?: string;
  fillPattern?: string;
  fillPatternColor?: string;
  fillPatternTint?: number;
  fillTint?: number;
  fontTint?: number;
  borderTint?: number;
};

/** Marks that are part of how a cell looks: formats are copied and cleared with them. */
export const lookMarks = [
  "style",
  "locked",
  "formulaHidden",
  "shrinkToFit",
  "autoIndent",
  "readingOrder",
  "horizontalAlignment",
  "verticalAlignment",
  "fillPattern",
  "fillPatternColor",
  "fillPatternTint",
  "fillTint",
  "fontTint",
  "borderTint",
] as const satisfies readonly (keyof CellMarks)[];

type Place = Pick<Area, "book" | "sheetId">;

/** The marks a cell has of its own. */
export const ownMarks = ({ book, sheetId }: Place, row: number, column: number): CellMarks =>
  (book.worksheet(sheetId).getCellMatrix().getValue(row, column)?.custom ?? {}) as CellMarks;

/** One mark of a cell: its own, or that of its row, its column or the sheet. */
export function markAt<Key extends keyof CellMarks>(
  place: Place,
  row: number,
  column: number,
  key: Key,
): CellMarks[Key] | undefined {
  const sheet = place.book.worksheet(place.sheetId);
  const layers = [
    ownMarks(place, row, column),
    sheet.getRowManager().getRow(row)?.custom,
    sheet.getColumnManager().getColumn(column)?.custom,
    sheet.getConfig().custom,
  ] as (CellMarks | null | undefined)[];
  for (const layer of layers) {
    const value = layer?.[key];
    if (value !== undefined && value !== null) return value;
  }
  return undefined;
}

/** What a mark is in all cells of the areas, or null where it differs. */
export const uniformMark = <Key extends keyof CellMarks, Value>(
  areas: readonly Area[],
  key: Key,
  read: (mark: CellMarks[Key] | undefined) => Value,
): Value | null => uniformCells(areas, (area, row, column) => read(markAt(area, row, column, key)));
