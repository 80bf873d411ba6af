import type { Nullable } from "@univerjs/core";
import { SheetInterceptorService, VALIDATE_CELL } from "@univerjs/sheets";
import type { CellPlace } from "../engine/formulas";
import type { Book } from "../index";
import { ask } from "./message";

/** A formula typed with a fault is not taken, as in Excel: the cell keeps what it held, and the message says why. */
export const refuseFaultyFormulas = (book: Book) =>
  book.injector.get(SheetInterceptorService).writeCellInterceptor.intercept(VALIDATE_CELL, {
    priority: 100,
    handler: (before, { subUnitId: sheetId, row, col: column }, next) =>
      next(verdict(book, before, { sheetId, row, column })),
  });

async function verdict(book: Book, before: Nullable<Promise<boolean>>, place: CellPlace): Promise<boolean> {
  if ((await before) === false) return false;
  const held = book.worksheet(place.sheetId).getCellRaw(place.row, place.column)?.f;
  const typed = held && book.formulas.shown(held, place);
  const fault = typed && book.formulas.faultOf(typed, place);
  if (!fault) return true;
  void ask({ title: "This formula was not taken", text: fault, items: [typed], goOn: "Go back" });
  return false;
}
