import {
  DataValidationErrorStyle,
  DataValidationOperator,
  DataValidationType,
  type ISheetDataValidationRule,
} from "@univerjs/core";
import {
  AddSheetDataValidationCommand,
  ClearRangeDataValidationCommand,
  SheetDataValidationModel,
} from "@univerjs/sheets-data-validation";
import type { Area } from "./area";
import { toEngineRange } from "./tables";

/** What may be entered into cells, in the API's words. */
export type Validation = {
  /** "WholeNumber", "Decimal", "List", "Date", "Time", "TextLength" or "Custom". */
  readonly type: string;
  readonly operator: string;
  readonly formula1: string;
  readonly formula2: string;
  readonly inCellDropDown: boolean;
  readonly ignoreBlanks: boolean;
  readonly alert: { readonly show: boolean; readonly style: string; readonly title: string; readonly message: string };
  readonly prompt: { readonly show: boolean; readonly title: string; readonly message: string };
};

const types: Record<string, DataValidationType> = {
  WholeNumber: DataValidationType.WHOLE,
  Decimal: DataValidationType.DECIMAL,
  List: DataValidationType.LIST,
  Date: DataValidationType.DATE,
  Time: DataValidationType.TIME,
  TextLength: DataValidationType.TEXT_LENGTH,
  Custom: DataValidationType.CUSTOM,
};

const operators: Record<string, DataValidationOperator> = {
  Between: DataValidationOperator.BETWEEN,
  NotBetween: DataValidationOperator.NOT_BETWEEN,
  EqualTo: DataValidationOperator.EQUAL,
  NotEqualTo: DataValidationOperator.NOT_EQUAL,
  GreaterThan: DataValidationOperator.GREATER_THAN,
  LessThan: DataValidationOperator.LESS_THAN,
  GreaterThanOrEqualTo: DataValidationOperator.GREATER_THAN_OR_EQUAL,
  LessThanOrEqualTo: DataValidationOperator.LESS_THAN_OR_EQUAL,
};

const styles: Record<string, DataValidationErrorStyle> = {
  Stop: DataValidationErrorStyle.STOP,
  Warning: DataValidationErrorStyle.WARNING,
  Information: DataValidationErrorStyle.INFO,
};

const wordFor = <T>(words: Record<string, T>, value: T | undefined, standard: string): string =>
  Object.keys(words).find((word) => words[word] === value) ?? standard;

const modelOf = ({ book }: Area) => book.injector.get(SheetDataValidationModel);

/** The rule of a cell, or null where anything goes. */
export function validationAt(area: Area, row: number, column: number): Validation | null {
  const rule = modelOf(area).getRuleByLocation(area.book.id, area.sheetId, row, column);
  if (!rule) return null;
  return {
    type: wordFor(types, rule.type as DataValidationType, "None"),
    operator: wordFor(operators, rule.operator, "Between"),
    formula1: rule.formula1 ?? "",
    formula2: rule.formula2 ?? "",
    inCellDropDown: rule.showDropDown !== false,
    ignoreBlanks: rule.allowBlank !== false,
    alert: {
      show: rule.showErrorMessage !== false,
      style: wordFor(styles, rule.errorStyle, "Stop"),
      title: rule.errorTitle ?? "",
      message: rule.error ?? "",
    },
    prompt: { show: rule.showInputMessage !== false, title: rule.promptTitle ?? "", message: rule.prompt ?? "" },
  };
}

export function clearValidation(areas: readonly Area[]): void {
  const { book, sheetId } = areas[0]!;
  book.run(ClearRangeDataValidationCommand.id, {
    unitId: book.id,
    subUnitId: sheetId,
    ranges: areas.map(toEngineRange),
  });
}

let count = 0;

export function setValidation(areas: readonly Area[], validation: Validation): void {
  const { book, sheetId } = areas[0]!;
  clearValidation(areas);
  count += 1;
  const rule: ISheetDataValidationRule = {
    uid: `validation-${count}-${Date.now().toString(36)}`,
    type: types[validation.type]!,
    operator: operators[validation.operator] ?? DataValidationOperator.BETWEEN,
    formula1: validation.formula1,
    formula2: validation.formula2,
    ranges: areas.map(toEngineRange),
    showDropDown: validation.inCellDropDown,
    allowBlank: validation.ignoreBlanks,
    showErrorMessage: validation.alert.show,
    errorStyle: styles[validation.alert.style] ?? DataValidationErrorStyle.STOP,
    errorTitle: validation.alert.title,
    error: validation.alert.message,
    showInputMessage: validation.prompt.show,
    promptTitle: validation.prompt.title,
    prompt: validation.prompt.message,
  };
  book.run(AddSheetDataValidationCommand.id, { unitId: book.id, subUnitId: sheetId, rule });
}
