import { ALL_IMPLEMENTED_FUNCTIONS_SET } from "@univerjs/engine-formula";
import type { Book } from "./book";
import { errorValues } from "./entry";

/** Whether formulas of this workbook know a function by this name. */
export const isWorksheetFunction = (name: string): boolean => ALL_IMPLEMENTED_FUNCTIONS_SET.has(name);

/** What a formula gives outside any cell: a value, the first of several, or the error it ends with. */
export type Outcome = { readonly value: unknown; readonly error: string };

/** Calculates a formula that stands in no cell. All its references name their sheets. */
export async function calculateFormula(book: Book, formula: string): Promise<Outcome> {
  const sheetId = book.workbook.getSheets()[0]!.getSheetId();
  const entered = book.formulas.entered(formula, { sheetId, row: 0, column: 0 });
  const results = await book.api.getFormula().executeFormulas({ [book.id]: { [sheetId]: { 0: { 0: [entered] } } } });
  const given = results[book.id]?.[sheetId]?.[0]?.[0]?.[0]?.value ?? null;
  const value: unknown = Array.isArray(given) ? (given[0]?.[0] ?? null) : given;
  return typeof value === "string" && errorValues.has(value) ? { value: null, error: value } : { value, error: "" };
}
