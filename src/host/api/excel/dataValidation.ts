import type { Area } from "../../engine/area";
import { readValues } from "../../engine/cells";
import { clearValidation, setValidation, type Validation, validationAt } from "../../engine/dataValidation";
import { addressOf, resolveArea, sheetOf } from "../../engine/references";
import { usedPart } from "../../engine/usedRange";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { oneOf, text } from "./arguments";
import { type Areas, RangeAreas } from "./rangeAreas";

const words = {
  wholeNumber: "WholeNumber",
  decimal: "Decimal",
  list: "List",
  date: "Date",
  time: "Time",
  textLength: "TextLength",
  custom: "Custom",
} as const;

const operators = [
  "Between",
  "NotBetween",
  "EqualTo",
  "NotEqualTo",
  "GreaterThan",
  "LessThan",
  "GreaterThanOrEqualTo",
  "LessThanOrEqualTo",
] as const;

const fresh: Validation = {
  type: "Custom",
  operator: "Between",
  formula1: "",
  formula2: "",
  inCellDropDown: true,
  ignoreBlanks: true,
  alert: { show: true, style: "Stop", title: "", message: "" },
  prompt: { show: true, title: "", message: "" },
};

/** All cells with the rule they have; of an unbounded range those that are used, and its first. */
function* cellsOf(areas: Areas): Generator<Area> {
  for (const area of areas) {
    const large = area.rowCount * area.columnCount > 100_000;
    const seen = large
      ? (usedPart(area.book, area.sheetId, area, false) ?? { ...area, rowCount: 1, columnCount: 1 })
      : area;
    for (let row = seen.row; row < seen.row + seen.rowCount; row += 1) {
      for (let column = seen.column; column < seen.column + seen.columnCount; column += 1) {
        yield { ...area, row, column, rowCount: 1, columnCount: 1 };
      }
    }
  }
}

/** The rule all cells share; null where there is none, "mixed" where they differ. */
function sharedRule(areas: Areas): Validation | null | "mixed" {
  let first: { readonly rule: Validation | null } | undefined;
  for (const cell of cellsOf(areas)) {
    const rule = validationAt(cell, cell.row, cell.column);
    if (!first) first = { rule };
    else if (JSON.stringify(first.rule) !== JSON.stringify(rule)) return "mixed";
  }
  return first?.rule ?? null;
}

const ruleOrFresh = (areas: Areas): Validation => {
  const rule = sharedRule(areas);
  return rule === null || rule === "mixed" ? fresh : rule;
};

/** A limit of a rule: a number, text, a formula or a range. */
function formulaOf(value: unknown): string {
  if (typeof value === "object" && value !== null && "rowCount" in value) {
    return `=${addressOf(value as Area).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2")}`;
  }
  return value === undefined || value === null ? "" : String(value);
}

function toValidation(rule: Excel.DataValidationRule, before: Validation): Validation {
  const given = Object.entries(rule).filter(([, one]) => one !== undefined && one !== null);
  const [name, one] = given[0] ?? [];
  if (given.length !== 1 || !name || !(name in words)) {
    return refuse(
      "InvalidArgument",
      "A rule is of one kind: wholeNumber, decimal, list, date, time, textLength, custom.",
    );
  }
  const type = words[name as keyof typeof words];
  if (type === "List") {
    const { inCellDropDown, source } = one as Excel.ListDataValidation;
    return { ...before, type, formula1: formulaOf(source), formula2: "", inCellDropDown: inCellDropDown ?? true };
  }
  if (type === "Custom") return { ...before, type, formula1: formulaOf((one as Excel.CustomDataValidation).formula) };
  const { formula1, formula2, operator } = one as Excel.BasicDataValidation;
  const kind = oneOf(operator as string, operators, "The operator");
  if (kind.endsWith("Between") && (formula2 === undefined || formula2 === null)) {
    refuse("InvalidArgument", "Between and NotBetween have a second limit.");
  }
  return { ...before, type, operator: kind, formula1: formulaOf(formula1), formula2: formulaOf(formula2) };
}

const numberOr = (formula: string): string | number =>
  formula !== "" && Number.isFinite(Number(formula)) ? Number(formula) : formula;

function toRule({ type, operator, formula1, formula2, inCellDropDown }: Validation): Excel.DataValidationRule {
  const name = Object.keys(words).find((key) => words[key as keyof typeof words] === type)!;
  if (type === "List") return { list: { inCellDropDown, source: formula1 } };
  if (type === "Custom") return { custom: { formula: formula1 } };
  return {
    [name]: {
      formula1: numberOr(formula1),
      ...(formula2 === "" ? {} : { formula2: numberOr(formula2) }),
      operator,
    },
  } as Excel.DataValidationRule;
}

/** Whether a cell holds what its rule asks for. Custom formulas are judged by the grid, not here. */
function isValid(cell: Area): boolean {
  const rule = validationAt(cell, cell.row, cell.column);
  const value = readValues(cell)[0]![0]!;
  if (!rule || (value === "" && rule.ignoreBlanks)) return true;
  const limit = (formula: string): number => {
    const area = formula.startsWith("=") ? resolveArea(cell.book, formula, sheetOf(cell)) : null;
    return Number(area ? readValues(area)[0]![0] : formula.replace(/^=/, ""));
  };
  if (rule.type === "List") {
    const area = rule.formula1.startsWith("=") ? resolveArea(cell.book, rule.formula1, sheetOf(cell)) : null;
    const allowed = area ? readValues(area).flat().map(String) : rule.formula1.split(",").map((word) => word.trim());
    return allowed.includes(String(value));
  }
  if (rule.type === "Custom") {
    return refuse("NotImplemented", "The embedded host does not judge custom rules (DataValidation.valid).");
  }
  const measured = rule.type === "TextLength" ? String(value).length : value;
  if (typeof measured !== "number" || (rule.type === "WholeNumber" && !Number.isInteger(measured))) return false;
  const [a, b] = [limit(rule.formula1), limit(rule.formula2)];
  switch (rule.operator) {
    case "Between":
      return measured >= a && measured <= b;
    case "NotBetween":
      return measured < a || measured > b;
    case "EqualTo":
      return measured === a;
    case "NotEqualTo":
      return measured !== a;
    case "GreaterThan":
      return measured > a;
    case "LessThan":
      return measured < a;
    case "GreaterThanOrEqualTo":
      return measured >= a;
    default:
      return measured <= a;
  }
}

const invalid = (areas: Areas): Areas | null => {
  const cells = [...cellsOf(areas)].filter((cell) => !isValid(cell));
  return cells.length ? cells : null;
};

export const DataValidation: ProxyClass<Excel.DataValidation, Areas> = proxyClass<Excel.DataValidation, Areas>(
  "DataValidation",
  {
    scalars: {
      errorAlert: {
        get: (areas) => {
          const { show, style, title, message } = ruleOrFresh(areas).alert;
          return { showAlert: show, style: style as Excel.DataValidationAlertStyle, title, message };
        },
        set: (areas, alert) => {
          const { message, showAlert, style, title } = alert;
          setValidation(areas, {
            ...ruleOrFresh(areas),
            alert: {
              show: showAlert ?? true,
              style: oneOf((style ?? "Stop") as string, ["Stop", "Warning", "Information"], "The style"),
              title: text(title ?? "", "A title"),
              message: text(message ?? "", "A message"),
            },
          });
        },
      },
      ignoreBlanks: {
        get: (areas) => ruleOrFresh(areas).ignoreBlanks,
        set: (areas, ignoreBlanks) => setValidation(areas, { ...ruleOrFresh(areas), ignoreBlanks }),
      },
      prompt: {
        get: (areas) => {
          const { show, title, message } = ruleOrFresh(areas).prompt;
          return { showPrompt: show, title, message };
        },
        set: (areas, { showPrompt, title, message }) =>
          setValidation(areas, {
            ...ruleOrFresh(areas),
            prompt: { show: showPrompt ?? true, title: title ?? "", message: message ?? "" },
          }),
      },
      rule: {
        get: (areas) => {
          const rule = sharedRule(areas);
          return rule === null || rule === "mixed" ? {} : toRule(rule);
        },
        set: (areas, rule) => setValidation(areas, toValidation(rule, ruleOrFresh(areas))),
      },
      type: {
        get: (areas) => {
          const rule = sharedRule(areas);
          const type = rule === null ? "None" : rule === "mixed" ? "MixedCriteria" : rule.type;
          return type as Excel.DataValidationType;
        },
      },
      valid: {
        // true and false where all cells are alike, null where they differ.
        get: (areas) => {
          const judged = new Set([...cellsOf(areas)].map(isValid));
          return judged.size === 1 ? [...judged][0]! : null;
        },
      },
    },
    methods: {
      clear: (areas) => clearValidation(areas),
      getInvalidCells: { of: () => RangeAreas, reads: true, at: invalid },
      getInvalidCellsOrNullObject: { of: () => RangeAreas, reads: true, at: invalid },
    },
  },
);
