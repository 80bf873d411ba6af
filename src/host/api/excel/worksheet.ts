import { BooleanNumber } from "@univerjs/core";
import {
  SetTabColorCommand,
  SetWorksheetHideCommand,
  SetWorksheetOrderMutation,
  SetWorksheetShowCommand,
  ToggleGridlinesCommand,
} from "@univerjs/sheets";
import { splitAreas } from "../../engine/addresses";
import type { Area } from "../../engine/area";
import type { Book } from "../../engine/book";
import { setColumnWidth, standardHeight, standardWidth } from "../../engine/layout";
import { showLevels } from "../../engine/outline";
import { resolveArea, wholeSheet } from "../../engine/references";
import { activate, activeSheetId } from "../../engine/selection";
import { markSheet, type SheetMarks, sheetMarks } from "../../engine/sheetMarks";
import {
  addSheet,
  copySheet,
  deleteSheet,
  freshSheetName,
  isHidden,
  nameOf,
  positionOf,
  renameSheet,
  type Sheet,
  sheetNamed,
  sheetNameFault,
  sheetsOf,
} from "../../engine/sheets";
import { hexColour } from "../../engine/styles";
import { usedPart } from "../../engine/usedRange";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass, type Scalar } from "../proxies/proxyClass";
import { oneOf, onSheet, text, wholeNumber } from "./arguments";
import { AutoFilter } from "./autoFilter";
import { ChartCollection } from "./charts";
import { namedColour } from "./colours";
import { CommentCollection } from "./comments";
import { WorksheetCustomPropertyCollection } from "./customProperties";
import { WorksheetFreezePanes } from "./freezePanes";
import { NamedItemCollection } from "./names";
import { NoteCollection } from "./notes";
import { PageBreakCollection } from "./pageBreaks";
import { PageLayout } from "./pageLayout";
import { WorksheetProtection } from "./protection";
import { Range } from "./range";
import { RangeAreas } from "./rangeAreas";
import { findIn, replaceIn } from "./search";
import { TableCollection } from "./tableCollections";
import { sheetEvent } from "./worksheetEvents";

/** Sheets hidden so that only a program shows them again; the engine knows one way of hiding. */
const veryHidden = new WeakMap<Book, Set<string>>();

function checkName(book: Book, given: unknown, own: string | null): string {
  const name = text(given, "A worksheet name");
  const fault = sheetNameFault(name);
  if (fault) refuse("InvalidArgument", fault);
  const holder = sheetNamed(book, name);
  if (holder && holder.id !== own) refuse("ItemAlreadyExists", "A worksheet of this name exists.");
  return name;
}

const visibleSheets = (book: Book): Sheet[] => sheetsOf(book).filter((sheet) => !isHidden(sheet));

/** The neighbour of a sheet, among all or among the visible ones. */
function neighbour(sheet: Sheet, step: 1 | -1, visibleOnly: boolean | undefined): Sheet | null {
  const sheets = sheetsOf(sheet.book);
  for (let at = positionOf(sheet) + step; at >= 0 && at < sheets.length; at += step) {
    const found = sheets[at]!;
    if (!visibleOnly || !isHidden(found)) return found;
  }
  return null;
}

/** The range of an address on this sheet; an address of another sheet is refused. */
function rangeOn(sheet: Sheet, address: unknown): Area {
  if (address === undefined || address === null || address === "") return wholeSheet(sheet);
  const found = resolveArea(sheet.book, text(address, "An address"), sheet);
  if (!found) return refuse("InvalidArgument", `"${address}" is no range.`);
  return found.sheetId === sheet.id ? found : refuse("InvalidArgument", "The range is on another worksheet.");
}

/** What a view shows unless the sheet says that it hides it. */
const shown = (hides: keyof SheetMarks): Scalar<Sheet, boolean> => ({
  get: (sheet) => sheetMarks(sheet)[hides] !== true,
  set: (sheet, isShown) => markSheet(sheet, { [hides]: !isShown }),
});

export const Worksheet: ProxyClass<Excel.Worksheet, Sheet> = proxyClass<Excel.Worksheet, Sheet>("Worksheet", {
  scalars: {
    id: { get: ({ id }) => id },
    name: {
      get: nameOf,
      set: (sheet, name) => renameSheet(sheet, checkName(sheet.book, name, sheet.id)),
    },
    position: {
      get: positionOf,
      set: (sheet, position) => {
        const toOrder = wholeNumber(position, "The position", 0);
        if (toOrder >= sheetsOf(sheet.book).length)
          refuse("InvalidArgument", "The position is beyond the last worksheet.");
        sheet.book.run(SetWorksheetOrderMutation.id, {
          unitId: sheet.book.id,
          subUnitId: sheet.id,
          fromOrder: positionOf(sheet),
          toOrder,
        });
      },
    },
    enableCalculation: {
      get: () => true,
      set: (_sheet, enabled) => {
        if (!enabled) refuse("NotImplemented", "The embedded host always calculates (Worksheet.enableCalculation).");
      },
    },
    showDataTypeIcons: shown("hidesDataTypeIcons"),
    showHeadings: shown("hidesHeadings"),
    // The number the sheet has in the file we write.
    tabId: { get: (sheet) => positionOf(sheet) + 1 },
    showGridlines: {
      get: ({ book, id }) => book.worksheet(id).getConfig().showGridlines !== BooleanNumber.FALSE,
      set: ({ book, id }, show) => {
        book.commands.syncExecuteCommand(ToggleGridlinesCommand.id, {
          unitId: book.id,
          subUnitId: id,
          showGridlines: show ? BooleanNumber.TRUE : BooleanNumber.FALSE,
        });
      },
    },
    standardHeight: { get: ({ book, id }) => standardHeight({ book, sheetId: id }) },
    standardWidth: {
      get: ({ book, id }) => standardWidth({ book, sheetId: id }),
      set: (sheet, points) => setColumnWidth(wholeSheet(sheet), points),
    },
    tabColor: {
      get: ({ book, id }) => hexColour(book.worksheet(id).getTabColor() || null) ?? "",
      set: ({ book, id }, colour) =>
        book.run(SetTabColorCommand.id, {
          unitId: book.id,
          subUnitId: id,
          value: colour === "" ? "" : namedColour(colour),
        }),
    },
    visibility: {
      get: (sheet) =>
        (isHidden(sheet)
          ? veryHidden.get(sheet.book)?.has(sheet.id)
            ? "VeryHidden"
            : "Hidden"
          : "Visible") as Excel.SheetVisibility,
      set: (sheet, value) => {
        const visibility = oneOf(value as string, ["Visible", "Hidden", "VeryHidden"], "The visibility");
        const { book, id } = sheet;
        const others = visibleSheets(book).filter((other) => other.id !== id);
        if (visibility !== "Visible" && others.length === 0) {
          refuse("InvalidOperation", "A workbook has at least one visible worksheet.");
        }
        const very = veryHidden.get(book) ?? new Set<string>();
        veryHidden.set(book, very);
        very.delete(id);
        if (visibility === "VeryHidden") very.add(id);
        if (visibility !== "Visible" && activeSheetId(book) === id) activate(book, others[0]!.id);
        if ((visibility !== "Visible") !== isHidden(sheet)) {
          const command = visibility === "Visible" ? SetWorksheetShowCommand : SetWorksheetHideCommand;
          const active = activeSheetId(book);
          book.commands.syncExecuteCommand(command.id, { unitId: book.id, subUnitId: id });
          activate(book, active);
        }
      },
    },
  },
  objects: {
    autoFilter: { of: () => AutoFilter, at: (sheet) => sheet },
    charts: { of: () => ChartCollection, at: (sheet) => sheet },
    comments: { of: () => CommentCollection, at: ({ book, id }) => ({ book, sheetId: id }) },
    customProperties: { of: () => WorksheetCustomPropertyCollection, at: (sheet) => sheet },
    freezePanes: { of: () => WorksheetFreezePanes, at: (sheet) => sheet },
    horizontalPageBreaks: { of: () => PageBreakCollection, at: (sheet) => ({ sheet, between: "rows" }) },
    names: { of: () => NamedItemCollection, at: ({ book, id }) => ({ book, sheetId: id }) },
    notes: { of: () => NoteCollection, at: ({ book, id }) => ({ book, sheetId: id }) },
    pageLayout: { of: () => PageLayout, at: (sheet) => sheet },
    protection: { of: () => WorksheetProtection, at: (sheet) => sheet },
    tables: { of: () => TableCollection, at: ({ book, id }) => ({ book, sheetId: id }) },
    verticalPageBreaks: { of: () => PageBreakCollection, at: (sheet) => ({ sheet, between: "columns" }) },
  },
  methods: {
    activate(sheet) {
      if (isHidden(sheet)) refuse("InvalidOperation", "A hidden worksheet cannot be activated.");
      activate(sheet.book, sheet.id);
    },
    calculate() {},
    copy: {
      of: () => Worksheet,
      first: async (sheet, position, relativeTo) => {
        await copySheet(sheet, {
          position: oneOf(
            (position ?? "End") as string,
            ["None", "Before", "After", "Beginning", "End"],
            "The position",
          ),
          relativeTo: (relativeTo as Sheet | undefined) ?? null,
        });
      },
      at: (sheet) => lastCopy(sheet),
    },
    delete(sheet) {
      if (visibleSheets(sheet.book).every((other) => other.id === sheet.id)) {
        refuse("InvalidOperation", "A workbook has at least one visible worksheet.");
      }
      deleteSheet(sheet);
    },
    findAll: { of: () => RangeAreas, reads: true, at: (sheet, what, criteria) => found(sheet, what, criteria) },
    findAllOrNullObject: {
      of: () => RangeAreas,
      reads: true,
      at: (sheet, what, criteria) => found(sheet, what, criteria),
    },
    getCell: {
      of: () => Range,
      at: (sheet, row, column) =>
        onSheet(wholeSheet(sheet), {
          row: wholeNumber(row, "The row", 0),
          column: wholeNumber(column, "The column", 0),
          rowCount: 1,
          columnCount: 1,
        }),
    },
    getNext: { of: () => Worksheet, at: (sheet, visibleOnly) => neighbour(sheet, 1, visibleOnly) },
    getNextOrNullObject: { of: () => Worksheet, at: (sheet, visibleOnly) => neighbour(sheet, 1, visibleOnly) },
    getPrevious: { of: () => Worksheet, at: (sheet, visibleOnly) => neighbour(sheet, -1, visibleOnly) },
    getPreviousOrNullObject: { of: () => Worksheet, at: (sheet, visibleOnly) => neighbour(sheet, -1, visibleOnly) },
    getRange: { of: () => Range, at: rangeOn },
    getRangeByIndexes: {
      of: () => Range,
      at: (sheet, row, column, rowCount, columnCount) =>
        onSheet(wholeSheet(sheet), {
          row: wholeNumber(row, "The row", 0),
          column: wholeNumber(column, "The column", 0),
          rowCount: wholeNumber(rowCount, "The number of rows", 1),
          columnCount: wholeNumber(columnCount, "The number of columns", 1),
        }),
    },
    getRanges: {
      of: () => RangeAreas,
      at: (sheet, address) =>
        address === undefined ? [wholeSheet(sheet)] : splitAreas(address).map((part) => rangeOn(sheet, part)),
    },
    getUsedRange: {
      of: () => Range,
      reads: true,
      // An empty sheet answers with its first cell (Worksheet.getUsedRange in the reference).
      at: (sheet, valuesOnly) =>
        usedPart(sheet.book, sheet.id, wholeSheet(sheet), valuesOnly ?? false) ??
        onSheet(wholeSheet(sheet), { row: 0, column: 0, rowCount: 1, columnCount: 1 }),
    },
    getUsedRangeOrNullObject: {
      of: () => Range,
      reads: true,
      at: (sheet, valuesOnly) => usedPart(sheet.book, sheet.id, wholeSheet(sheet), valuesOnly ?? false),
    },
    showOutlineLevels(sheet, rowLevels, columnLevels) {
      // 0 leaves rows or columns as they are (Worksheet.showOutlineLevels in the reference).
      const [rows, columns] = [wholeNumber(rowLevels, "The levels", 0), wholeNumber(columnLevels, "The levels", 0)];
      if (rows > 0) showLevels(sheet, "row", rows);
      if (columns > 0) showLevels(sheet, "column", columns);
    },
    replaceAll: {
      answer: (sheet, what, replacement, criteria) => replaceIn(wholeSheet(sheet), what, replacement, criteria),
    },
  },
  events: {
    onActivated: sheetEvent("activated", ({ id }) => id),
    onCalculated: sheetEvent("calculated", ({ id }) => id),
    onChanged: sheetEvent("changed", ({ id }) => id),
    onDeactivated: sheetEvent("deactivated", ({ id }) => id),
    onFormatChanged: sheetEvent("formatChanged", ({ id }) => id),
    onFormulaChanged: sheetEvent("formulaChanged", ({ id }) => id),
    onNameChanged: sheetEvent("nameChanged", ({ id }) => id),
    onColumnSorted: sheetEvent("columnSorted", ({ id }) => id),
    onRowHiddenChanged: sheetEvent("rowHiddenChanged", ({ id }) => id),
    onRowSorted: sheetEvent("rowSorted", ({ id }) => id),
    onProtectionChanged: ({ book, id }, tell) => protectionChanged(book, id, tell),
    onSelectionChanged: sheetEvent("selectionChanged", ({ id }) => id),
    onSingleClicked: sheetEvent("singleClicked", ({ id }) => id),
    onVisibilityChanged: sheetEvent("visibilityChanged", ({ id }) => id),
  },
});

const lastCopy = ({ book }: Sheet): Sheet => ({ book, id: book.lastCopiedSheet });

function found(sheet: Sheet, what: unknown, criteria: Excel.WorksheetSearchCriteria | undefined) {
  const cells = findIn([wholeSheet(sheet)], what, criteria ?? {});
  return cells.length ? cells : null;
}

export const WorksheetCollection: ProxyClass<Excel.WorksheetCollection, Book> = proxyClass<
  Excel.WorksheetCollection,
  Book
>("WorksheetCollection", {
  items: { of: () => Worksheet, list: sheetsOf },
  methods: {
    add: {
      of: () => Worksheet,
      at: (book, name) =>
        addSheet(book, name === undefined || name === null ? freshSheetName(book) : checkName(book, name, null)),
    },
    getActiveWorksheet: { of: () => Worksheet, at: (book) => ({ book, id: activeSheetId(book) }) },
    getCount: { answer: (book, visibleOnly) => (visibleOnly ? visibleSheets(book) : sheetsOf(book)).length },
    getFirst: {
      of: () => Worksheet,
      at: (book, visibleOnly) => (visibleOnly ? visibleSheets(book) : sheetsOf(book))[0]!,
    },
    getItem: { of: () => Worksheet, at: (book, key) => byKey(book, key) },
    getItemOrNullObject: { of: () => Worksheet, at: (book, key) => byKey(book, key) },
    getLast: {
      of: () => Worksheet,
      at: (book, visibleOnly) => (visibleOnly ? visibleSheets(book) : sheetsOf(book)).at(-1)!,
    },
  },
  events: {
    onActivated: sheetEvent("activated", null),
    onAdded: sheetEvent("added", null),
    onCalculated: sheetEvent("calculated", null),
    onChanged: sheetEvent("changed", null),
    onDeactivated: sheetEvent("deactivated", null),
    onDeleted: sheetEvent("deleted", null),
    onFormatChanged: sheetEvent("formatChanged", null),
    onFormulaChanged: sheetEvent("formulaChanged", null),
    onMoved: sheetEvent("moved", null),
    onNameChanged: sheetEvent("nameChanged", null),
    onColumnSorted: sheetEvent("columnSorted", null),
    onRowHiddenChanged: sheetEvent("rowHiddenChanged", null),
    onRowSorted: sheetEvent("rowSorted", null),
    onProtectionChanged: (book, tell) => protectionChanged(book, null, tell),
    onSelectionChanged: sheetEvent("selectionChanged", null),
    onSingleClicked: sheetEvent("singleClicked", null),
    onVisibilityChanged: sheetEvent("visibilityChanged", null),
  },
});

function protectionChanged<Arguments>(book: Book, own: string | null, tell: (args: Arguments) => void): () => void {
  return book.protection.listen((worksheetId, isProtected) => {
    if (!book.changes.enabled || (own !== null && own !== worksheetId)) return;
    tell({ type: "WorksheetProtectionChanged", worksheetId, isProtected, source: "Local" } as Arguments);
  });
}

/** A worksheet by its name or id. */
function byKey(book: Book, key: unknown): Sheet | null {
  const wanted = text(key, "A worksheet's name or id");
  return sheetNamed(book, wanted) ?? sheetsOf(book).find(({ id }) => id === wanted) ?? null;
}
