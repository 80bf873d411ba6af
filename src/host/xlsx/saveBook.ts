import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Book } from "../engine/book";
import { type SavedXlsx, saveXlsx } from "./write";

/** The open workbook as an .xlsx file, with a sentence for each thing that did not fit into it. */
export function saveBook(book: Book): SavedXlsx {
  const spills = book.injector.get(FormulaDataModel).getArrayFormulaRange()[book.id];
  return saveXlsx({
    snapshot: book.api.getActiveWorkbook()!.save(),
    activeSheetId: book.workbook.getActiveSheet().getSheetId(),
    shownFormula: (formula, place) => book.formulas.shown(formula, place),
    spillOf: (sheetId, row, column) => spills?.[sheetId]?.[row]?.[column] ?? undefined,
    charts: book.charts.list().map((chart) => ({ chart, data: book.charts.dataOf(chart) })),
    state: book.state.save(),
    pageSetups: book.pageSetups.list(),
    lockOf: (sheetId) => book.protection.sheet(sheetId),
    structure: book.protection.structure,
  });
}
