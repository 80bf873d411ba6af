import { DataValidationErrorStyle, type ISheetDataValidationRule } from "@univerjs/core";
import { rangeReference } from "../addresses";
import { fileFormula } from "./fileFormula";
import { counted, escaped, tag } from "./markup";

const errorStyles = {
  [DataValidationErrorStyle.STOP]: undefined,
  [DataValidationErrorStyle.WARNING]: "warning",
  [DataValidationErrorStyle.INFO]: "information",
};

const typesOfTheFile = new Set(["any", "list", "textLength", "date", "time", "whole", "decimal", "custom"]);

/** The rules of a sheet; `left` counts those of a kind only the grid has (tick boxes, several choices). */
export function dataValidationsMarkup(rules: readonly ISheetDataValidationRule[]) {
  const known = rules.filter(({ type }) => typesOfTheFile.has(type));
  const markup = counted("dataValidations", known.map(ruleMarkup));
  return { markup, left: rules.length - known.length };
}

function ruleMarkup(rule: ISheetDataValidationRule): string {
  const compares = !["any", "list", "custom"].includes(rule.type);
  return tag(
    "dataValidation",
    {
      type: rule.type === "any" ? undefined : rule.type,
      errorStyle: errorStyles[rule.errorStyle ?? DataValidationErrorStyle.STOP],
      operator: compares && rule.operator !== "between" ? rule.operator : undefined,
      allowBlank: rule.allowBlank === true,
      // The file's "showDropDown" hides the arrow: a well-known slip of the format.
      showDropDown: rule.type === "list" && rule.showDropDown === false,
      showInputMessage: rule.showInputMessage === true,
      showErrorMessage: rule.showErrorMessage !== false,
      errorTitle: rule.errorTitle,
      error: rule.error,
      promptTitle: rule.promptTitle,
      prompt: rule.prompt,
      sqref: rule.ranges.map(rangeReference).join(" "),
    },
    [formulaTag("formula1", rule.type, rule.formula1), formulaTag("formula2", rule.type, rule.formula2)],
  );
}

function formulaTag(name: string, type: string, criterion: string | undefined): string {
  if (criterion === undefined || criterion === "") return "";
  if (criterion.startsWith("=")) return tag(name, {}, escaped(fileFormula(criterion, undefined)));
  return tag(name, {}, escaped(type === "list" ? `"${criterion.replace(/"/g, '""')}"` : criterion));
}
