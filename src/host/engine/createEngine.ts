import "./iteratorHelpers";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets-numfmt/facade";
import "@univerjs/sheets-table/facade";
import "@univerjs/sheets-note/facade";
import "@univerjs/sheets-conditional-formatting/facade";
import "@univerjs/sheets-data-validation/facade";
import "@univerjs/sheets-filter/facade";
import type { IWorkbookData } from "@univerjs/core";
import { LocaleType, LogLevel, mergeLocales, Univer, UniverInstanceType } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import sheetWords from "@univerjs/sheets/locale/en-US";
import { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import dataValidationWords from "@univerjs/sheets-data-validation/locale/en-US";
import { UniverSheetsFilterPlugin } from "@univerjs/sheets-filter";
import filterWords from "@univerjs/sheets-filter/locale/en-US";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import formulaWords from "@univerjs/sheets-formula/locale/en-US";
import { UniverSheetsNotePlugin } from "@univerjs/sheets-note";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import tableWords from "@univerjs/sheets-table/locale/en-US";
import { emptyWorkbook } from "./emptyWorkbook";

/** A running workbook engine, with or without a user interface around it. */
export type Engine = { readonly univer: Univer; readonly api: FUniver };

export type EngineOptions = {
  /** The workbook to open, as the engine's own snapshot. Without it: one empty sheet, "Sheet1". */
  readonly workbook?: Partial<IWorkbookData>;
};

/** The words the engine itself uses without a user interface, such as the names of generated columns. */
export const headlessWords = () => mergeLocales(sheetWords, formulaWords, tableWords, filterWords, dataValidationWords);

/** Starts an engine without a user interface. A page starts its own and hands it to `createHost`. */
export function createEngine(options: EngineOptions = {}): Engine {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: headlessWords() },
    logLevel: LogLevel.ERROR,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin);
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsFilterPlugin);
  univer.registerPlugin(UniverSheetsTablePlugin);
  univer.registerPlugin(UniverSheetsNotePlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  const api = FUniver.newAPI(univer);
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, options.workbook ?? emptyWorkbook());
  return { univer, api };
}
