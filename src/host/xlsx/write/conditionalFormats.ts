import {
  CFRuleType,
  CFSubRuleType,
  type IConditionalFormattingRuleConfig,
  type IConditionFormattingRule,
  type IHighlightCell,
  type IValueConfig,
} from "@univerjs/sheets-conditional-formatting";
import { cellAddress, rangeReference } from "../addresses";
import { fileColour } from "./colours";
import { fileFormula } from "./fileFormula";
import { type Attribute, escaped, tag } from "./markup";
import type { StyleSheet } from "./styles";

/** The rules of a sheet, the most important first. */
export const conditionalFormatsMarkup = (rules: readonly IConditionFormattingRule[], styles: StyleSheet): string =>
  rules
    .map(({ ranges, rule, stopIfTrue }, index) => {
      const first = cellAddress(ranges[0]?.startRow ?? 0, ranges[0]?.startColumn ?? 0);
      const { attributes, content } = ruleParts(rule, first, styles);
      return tag(
        "conditionalFormatting",
        { sqref: ranges.map(rangeReference).join(" ") },
        tag("cfRule", { ...attributes, priority: index + 1, stopIfTrue }, content),
      );
    })
    .join("");

type RuleParts = { readonly attributes: { readonly [name: string]: Attribute }; readonly content: string };

function ruleParts(rule: IConditionalFormattingRuleConfig, first: string, styles: StyleSheet): RuleParts {
  switch (rule.type) {
    case CFRuleType.colorScale: {
      const { config } = rule as Extract<IConditionalFormattingRuleConfig, { type: CFRuleType.colorScale }> & {
        config: { color: string; value: IValueConfig }[];
      };
      const shades = config.map(({ color }) => tag("color", { rgb: fileColour(color) ?? "FFFFFFFF" }));
      return {
        attributes: { type: "colorScale" },
        content: tag("colorScale", {}, [...config.map(({ value }) => pointTag(value)), ...shades]),
      };
    }
    case CFRuleType.dataBar: {
      const { config, isShowValue } = rule as unknown as {
        config: { min: IValueConfig; max: IValueConfig; positiveColor: string };
        isShowValue: boolean;
      };
      return {
        attributes: { type: "dataBar" },
        content: tag("dataBar", { showValue: isShowValue ? undefined : 0 }, [
          pointTag(config.min),
          pointTag(config.max),
          tag("color", { rgb: fileColour(config.positiveColor) ?? "FF93BFB2" }),
        ]),
      };
    }
    case CFRuleType.iconSet: {
      const { config, isShowValue } = rule as unknown as {
        config: { operator: string; value: IValueConfig; iconType: string; iconId: string }[];
        isShowValue: boolean;
      };
      // The grid lists the highest threshold first; the file the lowest, which always is "from 0 %".
      const reversed = config[0]?.iconId !== "0";
      const points = [...config]
        .reverse()
        .map(({ value, operator }, index) =>
          index === 0
            ? tag("cfvo", { type: "percent", val: 0 })
            : pointTag(value, operator === "greaterThan" ? 0 : undefined),
        );
      return {
        attributes: { type: "iconSet" },
        content: tag(
          "iconSet",
          {
            iconSet: config[0]?.iconType.replace(/^_5Felling$/, "5Rating"),
            showValue: isShowValue ? undefined : 0,
            reverse: reversed,
          },
          points,
        ),
      };
    }
    default:
      return highlightParts(rule as IHighlightCell & { [key: string]: unknown }, first, styles);
  }
}

function highlightParts(
  rule: IHighlightCell & { [key: string]: unknown },
  first: string,
  styles: StyleSheet,
): RuleParts {
  const dxfId = styles.conditional(rule.style);
  const operator = String(rule.operator ?? "");
  const text = String(rule.value ?? "");
  const quoted = `"${text.replace(/"/g, '""')}"`;
  const formula = (code: string) => tag("formula", {}, escaped(fileFormula(code, undefined)));
  switch (rule.subType) {
    case CFSubRuleType.number: {
      const values = Array.isArray(rule.value) ? rule.value : [rule.value ?? 0];
      return {
        attributes: { type: "cellIs", dxfId, operator },
        content: values.map((value) => formula(String(value))).join(""),
      };
    }
    case CFSubRuleType.formula:
      return { attributes: { type: "expression", dxfId }, content: formula(text) };
    case CFSubRuleType.duplicateValues:
    case CFSubRuleType.uniqueValues:
      return { attributes: { type: rule.subType, dxfId }, content: "" };
    case CFSubRuleType.rank:
      return {
        attributes: {
          type: "top10",
          dxfId,
          rank: Number(rule.value),
          percent: rule.isPercent === true,
          bottom: rule.isBottom === true,
        },
        content: "",
      };
    case CFSubRuleType.average:
      return {
        attributes: {
          type: "aboveAverage",
          dxfId,
          aboveAverage: operator.startsWith("less") ? 0 : undefined,
          equalAverage: operator.endsWith("OrEqual"),
        },
        content: "",
      };
    case CFSubRuleType.timePeriod:
      return {
        attributes: { type: "timePeriod", dxfId, timePeriod: operator },
        content: formula(timeFormula(operator, first)),
      };
    default:
      return textParts(operator, dxfId, text, quoted, first, formula);
  }
}

function textParts(
  operator: string,
  dxfId: number,
  text: string,
  quoted: string,
  first: string,
  formula: (code: string) => string,
): RuleParts {
  const length = `LEN(${quoted})`;
  const tests: { readonly [operator: string]: RuleParts } = {
    containsText: {
      attributes: { type: "containsText", dxfId, operator, text },
      content: formula(`NOT(ISERROR(SEARCH(${quoted},${first})))`),
    },
    notContainsText: {
      attributes: { type: "notContainsText", dxfId, operator: "notContains", text },
      content: formula(`ISERROR(SEARCH(${quoted},${first}))`),
    },
    beginsWith: {
      attributes: { type: "beginsWith", dxfId, operator, text },
      content: formula(`LEFT(${first},${length})=${quoted}`),
    },
    endsWith: {
      attributes: { type: "endsWith", dxfId, operator, text },
      content: formula(`RIGHT(${first},${length})=${quoted}`),
    },
    containsBlanks: { attributes: { type: "containsBlanks", dxfId }, content: formula(`LEN(TRIM(${first}))=0`) },
    notContainsBlanks: { attributes: { type: "notContainsBlanks", dxfId }, content: formula(`LEN(TRIM(${first}))>0`) },
    containsErrors: { attributes: { type: "containsErrors", dxfId }, content: formula(`ISERROR(${first})`) },
    notContainsErrors: { attributes: { type: "notContainsErrors", dxfId }, content: formula(`NOT(ISERROR(${first}))`) },
    equal: { attributes: { type: "cellIs", dxfId, operator }, content: formula(quoted) },
    notEqual: { attributes: { type: "cellIs", dxfId, operator }, content: formula(quoted) },
  };
  return tests[operator] ?? { attributes: { type: "expression", dxfId }, content: formula("FALSE") };
}

/** The format wants the test of a period spelt out beside its name. */
function timeFormula(period: string, cell: string): string {
  const day = `FLOOR(${cell},1)`;
  const weekStart = "TODAY()-WEEKDAY(TODAY())+1";
  const tests: { readonly [period: string]: string } = {
    today: `${day}=TODAY()`,
    yesterday: `${day}=TODAY()-1`,
    tomorrow: `${day}=TODAY()+1`,
    last7Days: `AND(TODAY()-${day}<=6,${day}<=TODAY())`,
    thisWeek: `AND(${day}>=${weekStart},${day}<=${weekStart}+6)`,
    lastWeek: `AND(${day}>=${weekStart}-7,${day}<=${weekStart}-1)`,
    nextWeek: `AND(${day}>=${weekStart}+7,${day}<=${weekStart}+13)`,
    thisMonth: `AND(MONTH(${cell})=MONTH(TODAY()),YEAR(${cell})=YEAR(TODAY()))`,
    lastMonth: `AND(MONTH(${cell})=MONTH(EDATE(TODAY(),-1)),YEAR(${cell})=YEAR(EDATE(TODAY(),-1)))`,
    nextMonth: `AND(MONTH(${cell})=MONTH(EDATE(TODAY(),1)),YEAR(${cell})=YEAR(EDATE(TODAY(),1)))`,
  };
  return tests[period] ?? "FALSE";
}

function pointTag({ type, value }: IValueConfig, gte?: number): string {
  const val = type === "min" || type === "max" ? undefined : String(value ?? 0).replace(/^=/, "");
  return tag("cfvo", { type, val, gte });
}
