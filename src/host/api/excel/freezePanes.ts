import { CancelFrozenCommand, SetFrozenCommand } from "@univerjs/sheets";
import type { Area } from "../../engine/area";
import { isEntireColumn, isEntireRow } from "../../engine/area";
import { wholeSheet } from "../../engine/references";
import type { Sheet } from "../../engine/sheets";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { wholeNumber } from "./arguments";
import { areaOf, Range } from "./range";

function freeze({ book, id }: Sheet, rows: number, columns: number): void {
  book.growTo(id, rows + 1, columns + 1);
  book.run(SetFrozenCommand.id, {
    unitId: book.id,
    subUnitId: id,
    startRow: rows || -1,
    startColumn: columns || -1,
    ySplit: rows,
    xSplit: columns,
  });
}

/** What is frozen: whole rows, whole columns, or the corner of both. */
function frozen(sheet: Sheet): Area | null {
  const { xSplit, ySplit } = sheet.book.worksheet(sheet.id).getConfig().freeze;
  if (xSplit <= 0 && ySplit <= 0) return null;
  const all = wholeSheet(sheet);
  return {
    ...all,
    rowCount: ySplit > 0 ? ySplit : all.rowCount,
    columnCount: xSplit > 0 ? xSplit : all.columnCount,
  };
}

export const WorksheetFreezePanes: ProxyClass<Excel.WorksheetFreezePanes, Sheet> = proxyClass<
  Excel.WorksheetFreezePanes,
  Sheet
>("WorksheetFreezePanes", {
  methods: {
    freezeAt(sheet, given) {
      const area = areaOf(given, wholeSheet(sheet));
      if (area.sheetId !== sheet.id) refuse("InvalidArgument", "The range is on another worksheet.");
      const rows = isEntireColumn(area) ? 0 : area.row + area.rowCount;
      const columns = isEntireRow(area) ? 0 : area.column + area.columnCount;
      freeze(sheet, rows, columns);
    },
    freezeColumns: (sheet, count) => freeze(sheet, 0, wholeNumber(count ?? 1, "The number of columns", 1)),
    freezeRows: (sheet, count) => freeze(sheet, wholeNumber(count ?? 1, "The number of rows", 1), 0),
    getLocation: { of: () => Range, at: frozen },
    getLocationOrNullObject: { of: () => Range, at: frozen },
    unfreeze({ book, id }) {
      if (frozen({ book, id })) book.run(CancelFrozenCommand.id, { unitId: book.id, subUnitId: id });
    },
  },
});
