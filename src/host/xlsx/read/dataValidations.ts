import {
  DataValidationErrorStyle,
  type DataValidationOperator,
  DataValidationRenderMode,
  DataValidationType,
  type ISheetDataValidationRule,
} from "@univerjs/core";
import { rangesOf } from "../addresses";
import { plainFormula } from "../formulas";
import { childOf, childrenOf, truthOf, type XmlElement } from "../package/xml";

const errorStyles: { readonly [name: string]: DataValidationErrorStyle } = {
  stop: DataValidationErrorStyle.STOP,
  warning: DataValidationErrorStyle.WARNING,
  information: DataValidationErrorStyle.INFO,
};

export function readDataValidations(sheet: XmlElement): ISheetDataValidationRule[] {
  return childrenOf(childOf(sheet, "dataValidations"), "dataValidation").map((source, index) => {
    const { sqref = "A1", type = "any", operator = "between", errorStyle = "stop" } = source.attributes;
    const [formula1, formula2] = ["formula1", "formula2"].map((name) => childOf(source, name)?.text);
    const { error, errorTitle, prompt, promptTitle } = source.attributes;
    return {
      uid: `validation-${index + 1}`,
      ranges: rangesOf(sqref),
      type: type === "none" ? DataValidationType.ANY : type,
      operator: operator as DataValidationOperator,
      allowBlank: truthOf(source, "allowBlank"),
      ...(formula1 !== undefined && { formula1: criterion(type, formula1) }),
      ...(formula2 !== undefined && { formula2: criterion(type, formula2) }),
      // The file's "showDropDown" hides the arrow: a well-known slip of the format.
      showDropDown: !truthOf(source, "showDropDown"),
      // An arrow beside the cell, as other programs have it; the grid's own way is a pill over the cell.
      renderMode: DataValidationRenderMode.ARROW,
      showErrorMessage: truthOf(source, "showErrorMessage"),
      showInputMessage: truthOf(source, "showInputMessage"),
      errorStyle: errorStyles[errorStyle] ?? DataValidationErrorStyle.STOP,
      ...(error && { error }),
      ...(errorTitle && { errorTitle }),
      ...(prompt && { prompt }),
      ...(promptTitle && { promptTitle }),
    };
  });
}

/** A list of words stands in quotes in the file and bare in the engine; a number stands bare in both. */
function criterion(type: string, formula: string): string {
  const words = /^"(.*)"$/s.exec(formula);
  if (type === "list" && words) return (words[1] as string).replace(/""/g, '"');
  return Number.isNaN(Number(formula)) ? `=${plainFormula(formula)}` : formula;
}
