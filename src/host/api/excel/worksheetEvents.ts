import { rectangleAddress } from "../../engine/addresses";
import type { Book } from "../../engine/book";
import type { Change } from "../../engine/changes";
import { addressOf } from "../../engine/references";
import { selectedAreas } from "../../engine/selection";
import type { EventSource } from "../proxies/eventHandlers";

type EventName =
  | "activated"
  | "added"
  | "calculated"
  | "changed"
  | "deactivated"
  | "deleted"
  | "formatChanged"
  | "formulaChanged"
  | "moved"
  | "nameChanged"
  | "columnSorted"
  | "rowHiddenChanged"
  | "rowSorted"
  | "selectionChanged"
  | "singleClicked"
  | "visibilityChanged";

/** What tells of who acted: in one program every change is local (Excel.EventSource). */
const origin = (book: Book) => ({
  source: "Local",
  triggerSource: book.changes.actor === "addin" ? "ThisLocalAddin" : "Unknown",
});

/** The areas a person selected, as an event tells them: without the sheet, several joined by a comma. */
export const selectionAddress = (book: Book): string => selectedAreas(book).map(rectangleAddress).join(",");

function changedArguments(book: Book, change: Change): object | null {
  if (change.kind === "cells" && change.content) {
    const { before, after, rectangle, sheetId } = change;
    return {
      type: "WorksheetChanged",
      changeType: "RangeEdited",
      worksheetId: sheetId,
      address: rectangleAddress(rectangle),
      changeDirectionState: {},
      ...origin(book),
      ...(before && after
        ? {
            details: {
              valueBefore: before.content,
              valueAfter: after.content,
              valueTypeBefore: before.type,
              valueTypeAfter: after.type,
            },
          }
        : {}),
    };
  }
  if (change.kind in shiftChanges && "rectangle" in change) {
    const shift = "shift" in change ? change.shift : shiftChanges[change.kind as "RowInserted"];
    return {
      type: "WorksheetChanged",
      changeType: change.kind,
      worksheetId: change.sheetId,
      address: rectangleAddress(change.rectangle),
      changeDirectionState: change.kind.endsWith("Inserted")
        ? { insertShiftDirection: shift }
        : { deleteShiftDirection: shift },
      ...origin(book),
    };
  }
  return null;
}

/** Cells that came or went, and which way whole rows and columns push those behind them. */
const shiftChanges = {
  RowInserted: "Down",
  RowDeleted: "Up",
  ColumnInserted: "Right",
  ColumnDeleted: "Left",
  CellInserted: "",
  CellDeleted: "",
} as const;

const sortedArguments = (change: Change, kind: "rowsSorted" | "columnsSorted", type: string): object | null =>
  change.kind === kind
    ? { type, worksheetId: change.sheetId, address: rectangleAddress(change.rectangle), source: "Local" }
    : null;

const tellers: Record<EventName, (book: Book, change: Change) => object | null> = {
  activated: (_book, change) =>
    change.kind === "sheetActivated" ? { type: "WorksheetActivated", worksheetId: change.sheetId } : null,
  deactivated: (_book, change) =>
    change.kind === "sheetActivated" ? { type: "WorksheetDeactivated", worksheetId: change.left } : null,
  added: (_book, change) =>
    change.kind === "sheetAdded" ? { type: "WorksheetAdded", worksheetId: change.sheetId, source: "Local" } : null,
  deleted: (_book, change) =>
    change.kind === "sheetDeleted" ? { type: "WorksheetDeleted", worksheetId: change.sheetId, source: "Local" } : null,
  calculated: (_book, change) =>
    change.kind === "calculated"
      ? { type: "WorksheetCalculated", worksheetId: change.sheetId, address: change.address }
      : null,
  changed: changedArguments,
  formatChanged: (book, change) =>
    change.kind === "cells" && !change.content
      ? {
          type: "WorksheetFormatChanged",
          worksheetId: change.sheetId,
          address: rectangleAddress(change.rectangle),
          ...origin(book),
        }
      : null,
  formulaChanged: (book, change) =>
    change.kind === "cells" && change.formulas.length > 0
      ? {
          type: "WorksheetFormulaChanged",
          worksheetId: change.sheetId,
          source: "Local",
          formulaDetails: change.formulas.map(({ address, before }) => ({
            cellAddress: address,
            previousFormula: before,
          })),
          address: addressOf({ book, sheetId: change.sheetId, ...change.rectangle }),
        }
      : null,
  moved: (book, change) =>
    change.kind === "sheetMoved"
      ? {
          type: "WorksheetMoved",
          worksheetId: change.sheetId,
          positionAfter: book.workbook.getSheets().findIndex((sheet) => sheet.getSheetId() === change.sheetId),
          source: "Local",
        }
      : null,
  nameChanged: (_book, change) =>
    change.kind === "sheetRenamed"
      ? {
          type: "WorksheetNameChanged",
          worksheetId: change.sheetId,
          nameBefore: change.before,
          nameAfter: change.after,
          source: "Local",
        }
      : null,
  columnSorted: (_book, change) => sortedArguments(change, "columnsSorted", "WorksheetColumnSorted"),
  rowSorted: (_book, change) => sortedArguments(change, "rowsSorted", "WorksheetRowSorted"),
  rowHiddenChanged: (_book, change) =>
    change.kind === "RowsHidden" || change.kind === "RowsShown"
      ? {
          type: "WorksheetRowHiddenChanged",
          worksheetId: change.sheetId,
          address: change.rectangles.map(rectangleAddress).join(","),
          changeType: change.kind === "RowsHidden" ? "Hidden" : "Unhidden",
          source: "Local",
        }
      : null,
  selectionChanged: (book, change) =>
    change.kind === "selection"
      ? { type: "WorksheetSelectionChanged", worksheetId: change.sheetId, address: selectionAddress(book) }
      : null,
  singleClicked: (_book, change) =>
    change.kind === "clicked"
      ? {
          type: "WorksheetSingleClicked",
          worksheetId: change.sheetId,
          address: change.address,
          offsetX: change.offset.x,
          offsetY: change.offset.y,
        }
      : null,
  visibilityChanged: (book, change) =>
    change.kind === "sheetVisibility"
      ? {
          type: "WorksheetVisibilityChanged",
          worksheetId: change.sheetId,
          visibilityAfter: book.worksheet(change.sheetId).isSheetHidden() ? "Hidden" : "Visible",
          visibilityBefore: book.worksheet(change.sheetId).isSheetHidden() ? "Visible" : "Hidden",
          source: "Local",
        }
      : null,
};

/** An event of one sheet (`sheetOf` tells its id) or, with null, of all sheets. */
export function sheetEvent<Target, Arguments>(
  name: EventName,
  sheetOf: ((target: Target) => string) | null,
): EventSource<Target, Arguments> {
  return (target, tell) => {
    const book = (target as { book?: Book }).book ?? (target as unknown as Book);
    const own = sheetOf?.(target) ?? null;
    return book.changes.listen((change) => {
      const args = tellers[name](book, change) as { worksheetId?: string } | null;
      if (args && (own === null || args.worksheetId === own)) tell(args as Arguments);
    });
  };
}
