import type { ICellData, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { Book } from "./book";

type Cells = Record<number, Record<number, ICellData | null>>;

/** The engine's bookkeeping of formulas, partly private (pinned version; `innards.test.ts` fails if it moves). */
type Model = {
  _getSheetFormulaIdMap(unitId: string, sheetId: string): Record<string, unknown>;
  updateFormulaData(unitId: string, sheetId: string, cells: Cells): Record<string, unknown>;
};

/**
 * At each write the engine goes through all cells for formulas, and again for formulas that cells share, which makes a
 * thousand small writes take seconds. A sheet that never held any is not searched. Answers how to undo this.
 */
export function skipSearchForFormulas(book: Book): () => void {
  const model = book.injector.get(FormulaDataModel) as unknown as Model;
  const search = model._getSheetFormulaIdMap.bind(model);
  const update = model.updateFormulaData.bind(model);
  const withFormulas = new Set<string>();
  const withShared = new Set<string>();
  const known = new Set(book.workbook.getSheets().map((sheet) => sheet.getSheetId()));
  const note = (sheetId: string, cell: Nullable<ICellData>) => {
    if (cell?.f || cell?.si) withFormulas.add(sheetId);
    if (cell?.si) withShared.add(sheetId);
  };
  for (const sheet of book.workbook.getSheets()) {
    sheet.getCellMatrix().forValue((_row, _column, cell) => note(sheet.getSheetId(), cell));
  }
  const lacks = (sheets: ReadonlySet<string>, unitId: string, sheetId: string) =>
    unitId === book.id && known.has(sheetId) && !sheets.has(sheetId);
  model._getSheetFormulaIdMap = (unitId, sheetId) =>
    lacks(withShared, unitId, sheetId) ? {} : search(unitId, sheetId);
  model.updateFormulaData = (unitId, sheetId, cells) =>
    lacks(withFormulas, unitId, sheetId) ? {} : update(unitId, sheetId, cells);
  const watching = book.commands.beforeCommandExecuted((command) => {
    if (command.id !== SetRangeValuesMutation.id) return;
    const { subUnitId, cellValue } = command.params as { subUnitId: string; cellValue?: Cells };
    if (withShared.has(subUnitId)) return;
    for (const row of Object.values(cellValue ?? {}))
      for (const cell of Object.values(row ?? {})) note(subUnitId, cell);
  });
  return () => {
    watching.dispose();
    model._getSheetFormulaIdMap = search;
    model.updateFormulaData = update;
  };
}
