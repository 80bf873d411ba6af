import { splitAreas } from "../../engine/addresses";
import {
  type Area,
  bounding,
  cellCount,
  contains,
  intersection,
  isEntireColumn,
  isEntireRow,
  isUnbounded,
  sheetColumns,
  sheetRows,
} from "../../engine/area";
import { autoFill, type FillKind } from "../../engine/autoFill";
import { uniformMark } from "../../engine/cellMarks";
import {
  readFormats,
  readFormulas,
  readText,
  readTypes,
  readValues,
  writeStyle,
  writeValues,
} from "../../engine/cells";
import { clear } from "../../engine/clear";
import { copyCells } from "../../engine/copy";
import { dependents, precedents } from "../../engine/formulaReferences";
import { hyperlinkOf, setHyperlink } from "../../engine/hyperlinks";
import { heightOf, isColumnHidden, isRowHidden, offsetOf, setHidden, widthOf } from "../../engine/layout";
import { merge, mergedAreas, unmerge } from "../../engine/merges";
import { groupFault, type Lines, regroup, showDetails } from "../../engine/outline";
import { addressOf, resolveArea, sheetOf } from "../../engine/references";
import { rangeEdge, surroundingRegion } from "../../engine/region";
import { select } from "../../engine/selection";
import { insertCells, removeCells } from "../../engine/shift";
import { spillAnchor, spillArea } from "../../engine/spill";
import { insertTableRows, removeTableRows } from "../../engine/tableShape";
import { dataRows, type Table } from "../../engine/tables";
import { usedPart } from "../../engine/usedRange";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { enumerations } from "../published/enumerations";
import { cellGrid, oneOf, onSheet, text, wholeNumber } from "./arguments";
import { clearAreas, clearOrReset, setControl } from "./cellControl";
import { readCells, readColumns, readRows, writeCells, writeColumns, writeRows } from "./cellProperties";
import { ConditionalFormatCollection } from "./conditionalFormats";
import { DataValidation } from "./dataValidation";
import { formulasInR1C1, fromR1C1 } from "./r1c1";
import { areasTarget, RangeAreas } from "./rangeAreas";
import { RangeFormat } from "./rangeFormat";
import { RangeSort } from "./rangeSort";
import { RangeView } from "./rangeView";
import { RemoveDuplicatesResult, removeDuplicates } from "./removeDuplicates";
import { findIn, replaceIn, specialCells } from "./search";
import { cellStyle } from "./styles";
import { TableScopedCollection } from "./tableCollections";
import { WorkbookRangeAreas } from "./workbookAreas";
import { Worksheet } from "./worksheet";

/** A get of more cells than this gives null and no error (office/dev/add-ins/excel/performance). */
const mostCellsOfAGet = 5_000_000;

/** What single cells hold has no answer for a whole column or a range too large. */
const perCell =
  <T>(read: (area: Area) => T) =>
  (area: Area): T | null =>
    isUnbounded(area) || cellCount(area) > mostCellsOfAGet ? null : read(area);

/** One value of all rows or columns, null where they differ. */
function shared<T>(count: number, read: (index: number) => T): T | null {
  const first = read(0);
  for (let index = 1; index < Math.min(count, 100_000); index += 1) if (read(index) !== first) return null;
  return first;
}

const rowsHidden = (area: Area) => shared(area.rowCount, (index) => isRowHidden(area, area.row + index));
const columnsHidden = (area: Area) => shared(area.columnCount, (index) => isColumnHidden(area, area.column + index));

/** A range given as one or as an address on the same sheet. */
export function areaOf(given: unknown, on: Area): Area {
  if (typeof given === "object" && given !== null && "rowCount" in given) return given as Area;
  const found = resolveArea(on.book, text(given, "A range"), sheetOf(on));
  return found ?? refuse("InvalidArgument", `"${given}" is no range.`);
}

/** One range, several, or their addresses joined by commas. */
export const areasOf = (given: unknown, on: Area): readonly Area[] =>
  Array.isArray(given)
    ? (given as readonly Area[])
    : typeof given === "string"
      ? splitAreas(given).map((part) => areaOf(part, on))
      : [areaOf(given, on)];

function writeChecked(area: Area, given: unknown): void {
  const grid = cellGrid(area, given);
  grid.forEach((row, r) => {
    row.forEach((value, c) => {
      if (typeof value === "object" && value !== null) {
        refuse("NotImplemented", "The embedded host does not offer data types as values.");
      }
      if (typeof value !== "string" || !/^[=@+-]./.test(value)) return;
      const place = { sheetId: area.sheetId, row: area.row + r, column: area.column + c };
      // ASSUMPTION: the API refuses with InvalidArgument what Excel's formula bar refuses, too few arguments among it.
      const fault = value.startsWith("=") ? area.book.formulas.faultOf(value, place) : null;
      if (fault) refuse("InvalidArgument", fault);
      if (value.length > 8192 && value.startsWith("="))
        refuse("InvalidArgument", "A formula has at most 8,192 letters.");
    });
  });
  writeValues(area, grid);
}

export const Range: ProxyClass<Excel.Range, Area> = proxyClass<Excel.Range, Area>("Range", {
  scalars: {
    address: { get: addressOf },
    addressLocal: { get: addressOf },
    cellCount: { get: (area) => (cellCount(area) > 2 ** 31 - 1 ? -1 : cellCount(area)) },
    columnCount: { get: (area) => area.columnCount },
    columnHidden: { get: columnsHidden, set: (area, hidden) => setHidden(area, "column", hidden) },
    columnIndex: { get: (area) => area.column },
    control: {
      // Cells without a control say null where they are asked for it, as cells with different ones do.
      get: (area) => {
        const type = uniformMark([area], "control", (control) => control ?? "Empty");
        return type === null ? null : ({ type } as Excel.CellControl);
      },
      set: (area, control) => setControl([area], control),
    },
    formulas: { get: perCell(readFormulas), set: writeChecked },
    formulasLocal: { get: perCell(readFormulas), set: writeChecked },
    formulasR1C1: {
      get: perCell(formulasInR1C1),
      set: (area, given) =>
        writeChecked(
          area,
          cellGrid(area, given).map((row, r) => row.map((f, c) => fromR1C1(f, area.row + r, area.column + c))),
        ),
    },
    hasSpill: {
      get: perCell((area) =>
        shared(cellCount(area), (i) => spillArea(cellAt(area, i)) !== null || spillAnchor(cellAt(area, i)) !== null),
      ),
    },
    height: { get: (area) => heightOf(area) },
    hidden: {
      get: (area) => {
        const rows = rowsHidden(area);
        const columns = columnsHidden(area);
        return rows === true || columns === true ? true : rows === null || columns === null ? null : false;
      },
    },
    hyperlink: {
      get: (area) => hyperlinkOf(area) as Excel.RangeHyperlink | null,
      set: (area, link) => {
        if (isUnbounded(area)) refuse("InvalidArgument", "Whole rows and columns have no link.");
        if (!link || (link.address === undefined && link.documentReference === undefined)) {
          return refuse("InvalidArgument", "A link has an address or a place in the document.");
        }
        setHyperlink(area, link);
      },
    },
    isEntireColumn: { get: isEntireColumn },
    isEntireRow: { get: isEntireRow },
    left: { get: (area) => offsetOf(area).left },
    numberFormat: {
      get: perCell(readFormats),
      set: (area, given) => {
        // Published samples give one format in brackets for a range of many cells.
        const single = Array.isArray(given) && given.length === 1 && given[0]?.length === 1;
        const formats = cellGrid(area, single ? given[0]![0] : given);
        writeStyle(area, (row, column) => {
          const pattern = formats[row - area.row]?.[column - area.column];
          return pattern === null ? null : { n: { pattern: text(pattern, "A number format") } };
        });
      },
    },
    numberFormatCategories: { get: perCell((area) => readFormats(area).map((row) => row.map(categoryOf))) },
    numberFormatLocal: { get: perCell(readFormats) },
    rowCount: { get: (area) => area.rowCount },
    rowHidden: { get: rowsHidden, set: (area, hidden) => setHidden(area, "row", hidden) },
    rowIndex: { get: (area) => area.row },
    style: {
      get: (area) => cellStyle.get([area]),
      set: (area, name) => cellStyle.set([area], name),
    },
    text: { get: perCell(readText) },
    top: { get: (area) => offsetOf(area).top },
    // The published type of the enumeration is nominal; its values are these words.
    valueTypes: { get: perCell((area) => readTypes(area) as unknown as Excel.RangeValueType[][]) },
    values: { get: perCell(readValues), set: writeChecked },
    width: { get: (area) => widthOf(area) },
  },
  objects: {
    conditionalFormats: { of: () => ConditionalFormatCollection, at: (area) => [area] },
    dataValidation: { of: () => DataValidation, at: (area) => [area] },
    format: { of: () => RangeFormat, at: (area) => [area] },
    sort: { of: () => RangeSort, at: (area) => area },
    worksheet: { of: () => Worksheet, at: sheetOf },
  },
  methods: {
    autoFill(area, given, type) {
      const kind = oneOf(
        (type ?? "FillDefault") as string,
        Object.values(enumerations.AutoFillType!) as string[],
        "The type",
      );
      if (!["FillDefault", "FillCopy", "FillSeries", "FillFormats", "FillValues"].includes(kind)) {
        refuse("NotImplemented", `The embedded host does not offer the fill ${kind}.`);
      }
      if (given === undefined || given === null)
        refuse("NotImplemented", "The embedded host fills a given destination only.");
      const destination = areaOf(given, area);
      const grows = destination.rowCount > area.rowCount !== destination.columnCount > area.columnCount;
      if (
        !contains(destination, area) ||
        !grows ||
        destination.row !== area.row ||
        destination.column !== area.column
      ) {
        refuse("InvalidArgument", "The destination begins with the range and is longer down or to the right.");
      }
      autoFill(area, destination, kind as FillKind);
    },
    removeDuplicates: {
      of: () => RemoveDuplicatesResult,
      reads: true,
      at: (area, columns, includesHeader) => removeDuplicates(area, columns, includesHeader),
    },
    calculate() {},
    clear: (area, applyTo) => clearAreas([area], applyTo),
    clearOrResetContents: (area) => clearOrReset([area]),
    copyFrom: {
      reads: true,
      act(area, source, copyType, skipBlanks, transpose) {
        copyCells(areaOf(source, area), area, {
          kind: oneOf(copyType ?? "All", ["All", "Values", "Formulas", "Formats"], "What to copy"),
          skipBlanks: skipBlanks ?? false,
          transpose: transpose ?? false,
        });
      },
    },
    delete: (area, shift) => deleteCells(area, oneOf(shift, ["Up", "Left"], "The shift")),
    findOrNullObject: {
      of: () => Range,
      reads: true,
      at: (area, what, criteria) => findIn([area], what, criteria)[0] ?? null,
    },
    find: { of: () => Range, reads: true, at: (area, what, criteria) => findIn([area], what, criteria)[0] ?? null },
    getAbsoluteResizedRange: {
      of: () => Range,
      at: (area, rows, columns) =>
        onSheet(area, {
          ...area,
          rowCount: wholeNumber(rows, "The number of rows", 1),
          columnCount: wholeNumber(columns, "The number of columns", 1),
        }),
    },
    getBoundingRect: {
      of: () => Range,
      at: (area, other) => {
        const second = areaOf(other, area);
        if (second.sheetId !== area.sheetId) refuse("InvalidArgument", "The ranges are on different worksheets.");
        return { ...area, ...bounding(area, second) };
      },
    },
    getCell: {
      of: () => Range,
      // The cell may lie outside the range, as long as it is on the sheet.
      at: (area, row, column) =>
        onSheet(area, {
          row: area.row + wholeNumber(row, "The row"),
          column: area.column + wholeNumber(column, "The column"),
          rowCount: 1,
          columnCount: 1,
        }),
    },
    getCellProperties: { answer: (area, tree) => readCells(area, tree as never) as Excel.CellProperties[][] },
    getColumnProperties: { answer: (area, tree) => readColumns(area, tree as never) as Excel.ColumnProperties[] },
    getRowProperties: { answer: (area, tree) => readRows(area, tree as never) as Excel.RowProperties[] },
    setCellProperties: writeCells,
    setColumnProperties: writeColumns,
    setRowProperties: writeRows,
    getColumn: {
      of: () => Range,
      at: (area, column) =>
        onSheet(area, { ...area, column: area.column + wholeNumber(column, "The column"), columnCount: 1 }),
    },
    getColumnsAfter: { of: () => Range, at: (area, count) => beside(area, "columns", count ?? 1, 1) },
    getColumnsBefore: { of: () => Range, at: (area, count) => beside(area, "columns", count ?? 1, -1) },
    getDependents: { of: () => WorkbookRangeAreas, reads: true, at: (area) => someOf(dependents(area, true)) },
    getDirectDependents: { of: () => WorkbookRangeAreas, reads: true, at: (area) => someOf(dependents(area, false)) },
    getDirectPrecedents: { of: () => WorkbookRangeAreas, reads: true, at: (area) => someOf(precedents(area, false)) },
    getPrecedents: { of: () => WorkbookRangeAreas, reads: true, at: (area) => someOf(precedents(area, true)) },
    getEntireColumn: { of: () => Range, at: (area) => ({ ...area, row: 0, rowCount: sheetRows }) },
    getEntireRow: { of: () => Range, at: (area) => ({ ...area, column: 0, columnCount: sheetColumns }) },
    getExtendedRange: {
      of: () => Range,
      reads: true,
      at: (area, direction, active) => {
        const edge = rangeEdge(active ? areaOf(active, area) : area, direction);
        return { ...area, ...bounding(area, edge) };
      },
    },
    getIntersection: { of: () => Range, at: (area, other) => overlap(area, other) },
    getIntersectionOrNullObject: { of: () => Range, at: (area, other) => overlap(area, other) },
    getLastCell: {
      of: () => Range,
      at: (area) => ({
        ...area,
        row: area.row + area.rowCount - 1,
        column: area.column + area.columnCount - 1,
        rowCount: 1,
        columnCount: 1,
      }),
    },
    getLastColumn: {
      of: () => Range,
      at: (area) => ({ ...area, column: area.column + area.columnCount - 1, columnCount: 1 }),
    },
    getLastRow: { of: () => Range, at: (area) => ({ ...area, row: area.row + area.rowCount - 1, rowCount: 1 }) },
    getMergedAreasOrNullObject: {
      of: () => RangeAreas,
      at: (area) => {
        const areas = mergedAreas(area);
        if (areas.length > 512) refuse("GeneralException", "More than 512 merged areas.");
        return areas.length ? areasTarget(areas) : null;
      },
    },
    getOffsetRange: {
      of: () => Range,
      at: (area, rows, columns) =>
        onSheet(area, {
          ...area,
          row: area.row + wholeNumber(rows, "The row offset"),
          column: area.column + wholeNumber(columns, "The column offset"),
        }),
    },
    getRangeEdge: {
      of: () => Range,
      reads: true,
      at: (area, direction, active) => rangeEdge(active ? areaOf(active, area) : area, direction),
    },
    getResizedRange: {
      of: () => Range,
      at: (area, rows, columns) =>
        onSheet(area, {
          ...area,
          rowCount: area.rowCount + wholeNumber(rows, "The change of rows"),
          columnCount: area.columnCount + wholeNumber(columns, "The change of columns"),
        }),
    },
    getRow: {
      of: () => Range,
      at: (area, row) => onSheet(area, { ...area, row: area.row + wholeNumber(row, "The row"), rowCount: 1 }),
    },
    getRowsAbove: { of: () => Range, at: (area, count) => beside(area, "rows", count ?? 1, -1) },
    getRowsBelow: { of: () => Range, at: (area, count) => beside(area, "rows", count ?? 1, 1) },
    getSpecialCells: { of: () => RangeAreas, reads: true, at: (area, kind, type) => special([area], kind, type) },
    getSpecialCellsOrNullObject: {
      of: () => RangeAreas,
      reads: true,
      at: (area, kind, type) => special([area], kind, type),
    },
    getSpillParent: { of: () => Range, reads: true, at: (area) => spillAnchor(area) },
    getSpillParentOrNullObject: { of: () => Range, reads: true, at: (area) => spillAnchor(area) },
    getSpillingToRange: { of: () => Range, reads: true, at: (area) => spillArea(area) },
    getSpillingToRangeOrNullObject: { of: () => Range, reads: true, at: (area) => spillArea(area) },
    getSurroundingRegion: { of: () => Range, reads: true, at: (area) => surroundingRegion(area) },
    getTables: {
      of: () => TableScopedCollection,
      at: (area, fullyContained) => ({ book: area.book, area, fullyContained: fullyContained ?? false }),
    },
    getUsedRange: {
      of: () => Range,
      reads: true,
      // A range without content answers with its first cell, as Worksheet.getUsedRange does.
      at: (area, valuesOnly) =>
        usedPart(area.book, area.sheetId, area, valuesOnly ?? false) ?? { ...area, rowCount: 1, columnCount: 1 },
    },
    getUsedRangeOrNullObject: {
      of: () => Range,
      reads: true,
      at: (area, valuesOnly) => usedPart(area.book, area.sheetId, area, valuesOnly ?? false),
    },
    getVisibleView: { of: () => RangeView, reads: true, at: (area) => area },
    group(area, option) {
      const lines = linesOf(option);
      const fault = groupFault(area, lines);
      if (fault) refuse("InvalidOperation", fault);
      regroup(area, lines, 1);
    },
    hideGroupDetails: (area, option) => showDetails(area, linesOf(option), false),
    insert: {
      of: () => Range,
      first: (area, shift) => insertIn(area, oneOf(shift, ["Down", "Right"], "The shift")),
      at: (area) => area,
    },
    merge: (area, across) => merge(area, across ?? false),
    moveTo(area, destination) {
      const target = areaOf(destination, area);
      copyCells(
        area,
        { ...target, rowCount: area.rowCount, columnCount: area.columnCount },
        { kind: "Move", skipBlanks: false, transpose: false },
      );
      clear(area, "All");
    },
    replaceAll: { answer: (area, what, replacement, criteria) => replaceIn(area, what, replacement, criteria) },
    select: (area) => select([area]),
    setDirty() {},
    showGroupDetails: (area, option) => showDetails(area, linesOf(option), true),
    ungroup: (area, option) => regroup(area, linesOf(option), -1),
    unmerge,
  },
});

const linesOf = (option: unknown): Lines =>
  oneOf(String(option), ["ByRows", "ByColumns"], "The option") === "ByRows" ? "row" : "column";

/** Areas, of which there must be one (excel/excel-add-ins-ranges-precedents-dependents). */
const someOf = (areas: readonly Area[]): readonly Area[] => (areas.length ? areas : refuse("ItemNotFound"));

const cellAt = (area: Area, index: number): Area => ({
  ...area,
  row: area.row + Math.floor(index / area.columnCount),
  column: area.column + (index % area.columnCount),
  rowCount: 1,
  columnCount: 1,
});

function overlap(area: Area, other: unknown): Area | null {
  const second = areaOf(other, area);
  const shared = second.sheetId === area.sheetId ? intersection(area, second) : null;
  return shared && { ...area, ...shared };
}

/** The table whose rows of data the area spans from edge to edge: these rows come and go as the table's own. */
function tableSpanned(area: Area): Table | null {
  return (
    area.book.tables.list(area.sheetId).find((table) => {
      const rows = dataRows(table);
      return (
        rows !== null &&
        rows.column === area.column &&
        rows.columnCount === area.columnCount &&
        contains(rows, area) &&
        area.rowCount < rows.rowCount
      );
    }) ?? null
  );
}

async function deleteCells(area: Area, shift: "Up" | "Left"): Promise<void> {
  const table = shift === "Up" ? tableSpanned(area) : null;
  if (table) await removeTableRows(area.book, table, area.row, area.rowCount);
  else await removeCells(area, shift);
}

async function insertIn(area: Area, shift: "Down" | "Right"): Promise<void> {
  const table = shift === "Down" ? tableSpanned(area) : null;
  if (table) await insertTableRows(area.book, table, area.row, area.rowCount);
  else await insertCells(area, shift);
}

/** Rows or columns next to the area; a negative count counts from the other side. */
function beside(area: Area, what: "rows" | "columns", given: number, direction: 1 | -1): Area {
  const count = wholeNumber(given, "The count");
  if (count === 0) refuse("InvalidArgument", "The count is not 0.");
  const after = direction * Math.sign(count) > 0;
  const size = Math.abs(count);
  return what === "rows"
    ? onSheet(area, { ...area, row: after ? area.row + area.rowCount : area.row - size, rowCount: size })
    : onSheet(area, {
        ...area,
        column: after ? area.column + area.columnCount : area.column - size,
        columnCount: size,
      });
}

function special(areas: readonly Area[], kind: unknown, type: unknown) {
  const found = specialCells(areas, String(kind), type === undefined ? null : String(type));
  return found.length ? areasTarget(found) : null;
}

/** The category a number format belongs to, in the words of Excel.NumberFormatCategory. */
function categoryOf(format: string): Excel.NumberFormatCategory {
  const bare = format.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, "");
  const category =
    format === "General"
      ? "General"
      : format === "@"
        ? "Text"
        : /%/.test(bare)
          ? "Percentage"
          : /E[+-]/i.test(bare)
            ? "Scientific"
            : /[ymd]/i.test(bare) && /[yd]/i.test(bare)
              ? "Date"
              : /[hs]/i.test(bare)
                ? "Time"
                : /[$€£¥]/.test(format)
                  ? "Currency"
                  : /\?\/\?|\/\d/.test(bare)
                    ? "Fraction"
                    : /^[#0,.;\-() _]+$/.test(bare)
                      ? "Number"
                      : "Custom";
  return category as Excel.NumberFormatCategory;
}
