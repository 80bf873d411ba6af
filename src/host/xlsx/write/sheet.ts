import {
  BooleanNumber,
  type ICellData,
  type IColumnData,
  type IRange,
  type IRowData,
  type IWorksheetData,
} from "@univerjs/core";
import type { PageSetup } from "../../engine/pageSetup";
import { cellAddress, rangeReference } from "../addresses";
import { heightOfPixels, widthOfPixels } from "../measures";
import { type CellSurroundings, cellTag, lookNumber } from "./cells";
import { fileColour } from "./colours";
import { identityAttributes, main, relationships, tag } from "./markup";
import { fitMarkup, pageMarkup } from "./pageSetup";

/** Markup that comes from other parts of the workbook, already written, in the places the format prescribes. */
export type SheetExtras = {
  readonly autoFilter: string;
  readonly conditionalFormats: string;
  readonly dataValidations: string;
  readonly hyperlinks: string;
  readonly protection: string;
  readonly drawing: string;
  readonly legacyDrawing: string;
  readonly tableParts: string;
  readonly page: PageSetup | undefined;
  /** Rows that a filter keeps out of sight. */
  readonly filteredRows: ReadonlySet<number>;
};

export function sheetMarkup(
  sheet: Partial<IWorksheetData>,
  around: CellSurroundings,
  extras: SheetExtras,
  isActive: boolean,
): string {
  const tab = fileColour(sheet.tabColor);
  const properties = (tab ? tag("tabColor", { rgb: tab }) : "") + fitMarkup(extras.page);
  const { area, rows } = rowsMarkup(sheet, around, extras.filteredRows);
  const merges = (sheet.mergeData ?? []).map((merge) => tag("mergeCell", { ref: rangeReference(merge) }));
  return tag("worksheet", { xmlns: main, "xmlns:r": relationships, ...identityAttributes(sheet.id) }, [
    properties === "" ? "" : tag("sheetPr", {}, properties),
    tag("dimension", { ref: rangeReference(area) }),
    tag("sheetViews", {}, viewMarkup(sheet, isActive)),
    tag("sheetFormatPr", {
      defaultColWidth: sheet.defaultColumnWidth === undefined ? undefined : widthOfPixels(sheet.defaultColumnWidth),
      defaultRowHeight: heightOfPixels(sheet.defaultRowHeight ?? 20),
    }),
    columnsMarkup(sheet, around),
    tag("sheetData", {}, rows),
    extras.protection,
    extras.autoFilter,
    merges.length > 0 ? tag("mergeCells", { count: merges.length }, merges) : "",
    extras.conditionalFormats,
    extras.dataValidations,
    extras.hyperlinks,
    pageMarkup(extras.page),
    extras.drawing,
    extras.legacyDrawing,
    extras.tableParts,
  ]);
}

function rowsMarkup(sheet: Partial<IWorksheetData>, around: CellSurroundings, filtered: ReadonlySet<number>) {
  const cellRows = (sheet.cellData ?? {}) as Record<number, Record<number, ICellData>>;
  const rowData = (sheet.rowData ?? {}) as Record<number, Partial<IRowData>>;
  const columnData = (sheet.columnData ?? {}) as Record<number, Partial<IColumnData>>;
  const numbers = [...new Set([...Object.keys(cellRows), ...Object.keys(rowData), ...filtered].map(Number))].sort(
    ascending,
  );
  const area: IRange = { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 };
  const rows = numbers.map((row) => {
    const cells = Object.entries(cellRows[row] ?? {})
      .map(([column, cell]) => [Number(column), cell] as const)
      .sort(([one], [other]) => one - other)
      .map(([column, cell]) => {
        const markup = cell
          ? cellTag(inItsLines(cell, rowData[row], columnData[column], around), row, column, around)
          : "";
        if (markup !== "") {
          area.endRow = Math.max(area.endRow, row);
          area.endColumn = Math.max(area.endColumn, column);
        }
        return markup;
      });
    const attributes = rowAttributes(rowData[row], filtered.has(row), around);
    if (cells.join("") === "" && Object.keys(attributes).length === 0) return "";
    return tag("row", { r: row + 1, ...attributes }, cells);
  });
  return { area, rows };
}

type Line = Pick<Partial<IRowData>, "s" | "custom"> | undefined;

/** A cell looks as its column and its row do, where it has no look of its own; the file has all of it in the cell. */
function inItsLines(cell: ICellData, row: Line, column: Line, { look }: CellSurroundings): ICellData {
  const lines = [column, row].filter((line) => line?.s || line?.custom);
  if (lines.length === 0) return cell;
  return {
    ...cell,
    s: Object.assign({}, ...[...lines, cell].map((each) => look(each?.s))),
    custom: Object.assign({}, ...[...lines, cell].map((each) => each?.custom)),
  };
}

function rowAttributes(row: Partial<IRowData> | undefined, isFiltered: boolean, around: CellSurroundings) {
  const byHand = row?.h !== undefined && row.ia === BooleanNumber.FALSE;
  const height = byHand ? row.h : (row?.ah ?? row?.h);
  const number = lookNumber(row, around);
  return {
    ...(number !== 0 && { s: number, customFormat: true }),
    ...(height !== undefined && { ht: heightOfPixels(height) }),
    ...(byHand && { customHeight: true }),
    ...((isFiltered || row?.hd === BooleanNumber.TRUE) && { hidden: true }),
    ...(row?.custom?.outline && { outlineLevel: Number(row.custom.outline) }),
  };
}

function columnsMarkup(sheet: Partial<IWorksheetData>, around: CellSurroundings): string {
  const columns = Object.entries(sheet.columnData ?? {})
    .filter(
      ([, column]) =>
        column &&
        (column.w !== undefined ||
          column.hd === BooleanNumber.TRUE ||
          column.custom?.outline ||
          lookNumber(column, around) !== 0),
    )
    .map(([index, column]) =>
      tag("col", {
        min: Number(index) + 1,
        max: Number(index) + 1,
        width: widthOfPixels(column.w ?? sheet.defaultColumnWidth ?? 64),
        style: lookNumber(column, around) || undefined,
        hidden: column.hd === BooleanNumber.TRUE,
        outlineLevel: Number(column.custom?.outline) || undefined,
        customWidth: true,
      }),
    );
  return columns.length > 0 ? tag("cols", {}, columns) : "";
}

function viewMarkup(sheet: Partial<IWorksheetData>, isActive: boolean): string {
  const { xSplit = 0, ySplit = 0, startRow = 0, startColumn = 0 } = sheet.freeze ?? {};
  const pane = ySplit > 0 ? (xSplit > 0 ? "bottomRight" : "bottomLeft") : "topRight";
  const frozen =
    xSplit > 0 || ySplit > 0
      ? tag("pane", {
          xSplit: xSplit || undefined,
          ySplit: ySplit || undefined,
          topLeftCell: cellAddress(Math.max(startRow, ySplit), Math.max(startColumn, xSplit)),
          activePane: pane,
          state: "frozen",
        }) + tag("selection", { pane })
      : "";
  const zoom = Math.round((sheet.zoomRatio ?? 1) * 100);
  return tag(
    "sheetView",
    {
      showGridLines: sheet.showGridlines === BooleanNumber.FALSE ? 0 : undefined,
      rightToLeft: sheet.rightToLeft === BooleanNumber.TRUE,
      tabSelected: isActive,
      zoomScale: zoom === 100 ? undefined : zoom,
      workbookViewId: 0,
    },
    frozen,
  );
}

const ascending = (one: number, other: number) => one - other;
