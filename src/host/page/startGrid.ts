import "../engine/iteratorHelpers";
import "./gridStyles";
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/ui/facade";
import "@univerjs/docs-ui/facade";
import "@univerjs/sheets-ui/facade";
import "@univerjs/sheets-formula/facade";
import "@univerjs/sheets-formula-ui/facade";
import "@univerjs/sheets-numfmt/facade";
import "@univerjs/sheets-filter/facade";
import "@univerjs/sheets-table/facade";
import "@univerjs/sheets-note/facade";
import "@univerjs/sheets-conditional-formatting/facade";
import "@univerjs/sheets-data-validation/facade";
import type { IWorkbookData } from "@univerjs/core";
import { LocaleType, LogLevel, mergeLocales, Univer, UniverInstanceType } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import designWords from "@univerjs/design/locale/en-US";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import docsWords from "@univerjs/docs-ui/locale/en-US";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRenderEnginePlugin } from "@univerjs/engine-render";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsConditionalFormattingPlugin } from "@univerjs/sheets-conditional-formatting";
import { UniverSheetsConditionalFormattingUIPlugin } from "@univerjs/sheets-conditional-formatting-ui";
import conditionalFormattingWords from "@univerjs/sheets-conditional-formatting-ui/locale/en-US";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { UniverSheetsDataValidationUIPlugin } from "@univerjs/sheets-data-validation-ui";
import dataValidationWords from "@univerjs/sheets-data-validation-ui/locale/en-US";
import { UniverSheetsFilterPlugin } from "@univerjs/sheets-filter";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import formulaWords from "@univerjs/sheets-formula-ui/locale/en-US";
import { UniverSheetsNotePlugin } from "@univerjs/sheets-note";
import { UniverSheetsNoteUIPlugin } from "@univerjs/sheets-note-ui";
import noteWords from "@univerjs/sheets-note-ui/locale/en-US";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsNumfmtUIPlugin } from "@univerjs/sheets-numfmt-ui";
import numberFormatWords from "@univerjs/sheets-numfmt-ui/locale/en-US";
import { UniverSheetsTablePlugin } from "@univerjs/sheets-table";
import { UniverSheetsTableUIPlugin } from "@univerjs/sheets-table-ui";
import tableWords from "@univerjs/sheets-table-ui/locale/en-US";
import { UniverSheetsUIPlugin } from "@univerjs/sheets-ui";
import sheetsWords from "@univerjs/sheets-ui/locale/en-US";
import { UniverUIPlugin } from "@univerjs/ui";
import uiWords from "@univerjs/ui/locale/en-US";
import { type Engine, headlessWords } from "../engine/createEngine";
import { hiddenMenuItems } from "./hiddenMenuItems";
import { gridTheme } from "./palette";
import { tableLook } from "./tableLook";

const words = () =>
  mergeLocales(
    headlessWords(),
    designWords,
    uiWords,
    docsWords,
    sheetsWords,
    formulaWords,
    numberFormatWords,
    tableWords,
    noteWords,
    conditionalFormattingWords,
    dataValidationWords,
  );

/** Starts the workbook engine with a visible grid inside `container`. */
export function startGrid(container: HTMLElement, workbook: Partial<IWorkbookData>): Engine {
  const univer = new Univer({
    theme: gridTheme,
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: words() },
    logLevel: LogLevel.ERROR,
  });
  univer.registerPlugin(UniverDocsPlugin);
  univer.registerPlugin(UniverRenderEnginePlugin);
  univer.registerPlugin(UniverUIPlugin, {
    container,
    ribbonType: "simple",
    header: true,
    disableAutoFocus: true,
    menu: hiddenMenuItems,
  });
  univer.registerPlugin(UniverDocsUIPlugin);
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsUIPlugin, { menu: hiddenMenuItems });
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsNumfmtUIPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin);
  univer.registerPlugin(UniverSheetsFormulaUIPlugin);
  univer.registerPlugin(UniverSheetsFilterPlugin);
  univer.registerPlugin(UniverSheetsTablePlugin, tableLook);
  univer.registerPlugin(UniverSheetsTableUIPlugin, { hideAnchor: true });
  univer.registerPlugin(UniverSheetsNotePlugin);
  univer.registerPlugin(UniverSheetsNoteUIPlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingUIPlugin);
  univer.registerPlugin(UniverSheetsDataValidationPlugin);
  univer.registerPlugin(UniverSheetsDataValidationUIPlugin);
  const api = FUniver.newAPI(univer);
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, workbook);
  return { univer, api };
}
