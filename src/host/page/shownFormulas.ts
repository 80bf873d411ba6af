import { BEFORE_CELL_EDIT, SheetInterceptorService } from "@univerjs/sheets";
import type { Book } from "../index";

/** The formula bar and the cell being edited show what a coach typed, not the form in which the engine keeps it. */
export const showFormulasAsTyped = (book: Book) =>
  book.injector.get(SheetInterceptorService).writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: 100,
    handler: (cell, { subUnitId, row, col }, next) =>
      next(cell?.f ? { ...cell, f: book.formulas.shown(cell.f, { sheetId: subUnitId, row, column: col }) } : cell),
  });
