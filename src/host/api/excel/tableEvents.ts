import { rectangleAddress } from "../../engine/addresses";
import { intersection } from "../../engine/area";
import type { Book } from "../../engine/book";
import { activeSheetId, selectedAreas } from "../../engine/selection";
import type { Table } from "../../engine/tables";

type Unsubscribe = () => void;

/** Tells of edited cells in tables that `wanted` picks, with what the reference says of Excel.TableChangedEventArgs. */
export function tableChanged<Arguments>(
  book: Book,
  wanted: (table: Table) => boolean,
  tell: (args: Arguments) => void,
): Unsubscribe {
  return book.changes.listen((change) => {
    if (change.kind !== "cells" || !change.content) return;
    for (const table of book.tables.list(change.sheetId)) {
      const part = intersection(table.rectangle, change.rectangle);
      if (!part || !wanted(table)) continue;
      const { before, after } = change;
      tell({
        type: "TableChanged",
        changeType: "RangeEdited",
        tableId: table.id,
        worksheetId: table.sheetId,
        address: rectangleAddress(part),
        source: "Local",
        triggerSource: book.changes.actor === "addin" ? "ThisLocalAddin" : "Unknown",
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
      } as Arguments);
    }
  });
}

/** Tells when the selection touches the table, and once when it leaves it. */
export function tableSelected<Arguments>(book: Book, tableId: string, tell: (args: Arguments) => void): Unsubscribe {
  let inside = false;
  return book.changes.listen((change) => {
    if (change.kind !== "selection") return;
    const table = book.tables.get(tableId);
    if (!table) return;
    const parts =
      activeSheetId(book) === table.sheetId
        ? selectedAreas(book).flatMap((area) => intersection(area, table.rectangle) ?? [])
        : [];
    if (parts.length === 0 && !inside) return;
    inside = parts.length > 0;
    tell({
      type: "TableSelectionChanged",
      tableId,
      worksheetId: table.sheetId,
      address: parts.map(rectangleAddress).join(","),
      isInsideTable: inside,
    } as Arguments);
  });
}
