import { BooleanNumber, type ICellData, type IColumnData, type IRowData, type IWorksheetData } from "@univerjs/core";
import type { CellMarks } from "../../engine/cellMarks";
import { cellPosition, lastColumn, lastRow, rangeOf } from "../addresses";
import { pixelsOfHeight, pixelsOfWidth } from "../measures";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";
import { XlsxRefusal } from "../refusal";
import { type CellReader, positionOf } from "./cells";
import type { Colours } from "./colours";

/** A sheet as the engine keeps it, and what is left of its XML for the readers of tables, formats and rules. */
export type ReadSheet = { readonly data: Partial<IWorksheetData>; readonly xml: XmlElement };

/** More filled or dressed cells than this are no squad's workbook; they would make the page unusable. */
const mostCells = 2_000_000;

/** What a number in the file says of the look of a cell, a row or a column. */
export type Looks = {
  readonly styleId: (index: number) => string | undefined;
  readonly marksOf: (index: number) => CellMarks | undefined;
};

type Grown = { lastRow: number; lastColumn: number; cells: number };

export function readSheet(
  parse: (consumers: { row: (row: XmlElement) => void }) => XmlElement,
  listed: { name: string; hidden: boolean },
  readCell: CellReader,
  looks: Looks,
  colours: Colours,
): ReadSheet {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, Partial<IRowData>> = {};
  const grown: Grown = { lastRow: 0, lastColumn: 0, cells: 0 };
  let nextRow = 0;

  const takeRow = (source: XmlElement) => {
    const row = (numberOf(source, "r") ?? nextRow + 1) - 1;
    if (row < 0 || row > lastRow) throw beyondTheGrid();
    nextRow = row + 1;
    const line = readRow(source, looks);
    if (line) rowData[row] = line;
    let column = 0;
    for (const cell of source.children) {
      const position = positionOf(cell, row, column);
      column = position.column + 1;
      const data = readCell(cell, position.row, position.column);
      if (!data) continue;
      const cells = cellData[position.row] ?? {};
      cellData[position.row] = cells;
      cells[position.column] = data;
      grown.lastRow = Math.max(grown.lastRow, position.row);
      grown.lastColumn = Math.max(grown.lastColumn, position.column);
      grown.cells += 1;
      if (grown.cells > mostCells) throw beyondTheGrid();
    }
  };

  const xml = parse({ row: takeRow });
  const format = childOf(xml, "sheetFormatPr");
  const tab = colours(childOf(childOf(xml, "sheetPr"), "tabColor"));
  const view = childOf(childOf(xml, "sheetViews"), "sheetView");
  const merges = childrenOf(childOf(xml, "mergeCells"), "mergeCell").map((merge) =>
    rangeOf(merge.attributes.ref ?? "A1"),
  );
  for (const merge of merges) {
    grown.lastRow = Math.max(grown.lastRow, merge.endRow);
    grown.lastColumn = Math.max(grown.lastColumn, merge.endColumn);
  }
  const data: Partial<IWorksheetData> = {
    name: listed.name,
    hidden: listed.hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    ...(tab && { tabColor: tab }),
    // Room to work beyond what is filled, within the grid of the format.
    rowCount: Math.min(lastRow + 1, Math.max(1000, grown.lastRow + 200)),
    columnCount: Math.min(lastColumn + 1, Math.max(40, grown.lastColumn + 15)),
    defaultColumnWidth: pixelsOfWidth(numberOf(format, "defaultColWidth") ?? 9.14),
    defaultRowHeight: pixelsOfHeight(numberOf(format, "defaultRowHeight") ?? 15),
    showGridlines: truthOf(view, "showGridLines", true) ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    rightToLeft: truthOf(view, "rightToLeft") ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    zoomRatio: (numberOf(view, "zoomScale") ?? 100) / 100,
    freeze: readFreeze(view),
    mergeData: merges,
    cellData,
    rowData,
    columnData: readColumns(xml, looks),
  };
  return { data, xml };
}

function readRow(row: XmlElement, looks: Looks): Partial<IRowData> | undefined {
  const height = numberOf(row, "ht");
  const hidden = truthOf(row, "hidden");
  const look = truthOf(row, "customFormat") ? lookOf(numberOf(row, "s"), looks) : {};
  const grouped = outlineOf(row);
  if (height === undefined && !hidden && !grouped && Object.keys(look).length === 0) return undefined;
  const pixels = height && pixelsOfHeight(height);
  const byHand = truthOf(row, "customHeight");
  return {
    ...(pixels && { h: pixels, ia: byHand ? BooleanNumber.FALSE : BooleanNumber.TRUE }),
    ...(pixels && !byHand && { ah: pixels }),
    ...(hidden && { hd: BooleanNumber.TRUE }),
    ...look,
    ...(grouped && { custom: { ...look.custom, ...grouped } }),
  };
}

/** How many groups a row or column is in: kept with it, as the host keeps it. */
function outlineOf(line: XmlElement): { outline: number } | undefined {
  const outline = numberOf(line, "outlineLevel") ?? 0;
  return outline > 0 ? { outline } : undefined;
}

function lookOf(index: number | undefined, { styleId, marksOf }: Looks): { s?: string; custom?: CellMarks } {
  const [style, marks] = [styleId(index ?? 0), marksOf(index ?? 0)];
  return { ...(style && { s: style }), ...(marks && { custom: { ...marks } }) };
}

/** Columns are listed in runs; a run to the end of the sheet stands for the default and is kept to the working area. */
function readColumns(sheet: XmlElement, looks: Looks) {
  const columns: Record<number, Partial<IColumnData>> = {};
  for (const run of childrenOf(childOf(sheet, "cols"), "col")) {
    const [first, last] = [numberOf(run, "min") ?? 1, numberOf(run, "max") ?? 1];
    const width = numberOf(run, "width");
    const look = lookOf(numberOf(run, "style"), looks);
    const grouped = outlineOf(run);
    for (let column = first - 1; column < Math.min(last, first + 1000, lastColumn + 1); column += 1) {
      columns[column] = {
        ...(width !== undefined && { w: pixelsOfWidth(width) }),
        ...(truthOf(run, "hidden") && { hd: BooleanNumber.TRUE }),
        ...look,
        ...(grouped && { custom: { ...look.custom, ...grouped } }),
      };
    }
  }
  return columns;
}

function readFreeze(view: XmlElement | undefined) {
  const pane = childOf(view, "pane");
  const frozen = pane?.attributes.state === "frozen" || pane?.attributes.state === "frozenSplit";
  if (!pane || !frozen) return { xSplit: 0, ySplit: 0, startRow: -1, startColumn: -1 };
  const [xSplit, ySplit] = [numberOf(pane, "xSplit") ?? 0, numberOf(pane, "ySplit") ?? 0];
  const top = pane.attributes.topLeftCell ? cellPosition(pane.attributes.topLeftCell) : { row: ySplit, column: xSplit };
  return { xSplit, ySplit, startRow: ySplit ? top.row : -1, startColumn: xSplit ? top.column : -1 };
}

const beyondTheGrid = () =>
  new XlsxRefusal("This file claims more cells than a sheet can sensibly hold. It was not opened.");
