import type { IRange, IStyleData } from "@univerjs/core";
import {
  CFNumberOperator,
  CFRuleType,
  CFSubRuleType,
  CFTextOperator,
  type CFTimePeriodOperator,
  type CFValueType,
  type IConditionalFormattingRuleConfig,
  type IConditionFormattingRule,
  type IIconSetType,
  type IValueConfig,
} from "@univerjs/sheets-conditional-formatting";
import { cellAddress, rangesOf } from "../addresses";
import { plainFormula } from "../formulas";
import { childOf, childrenOf, numberOf, truthOf, type XmlElement } from "../package/xml";
import type { Colours } from "./colours";

/** Rules of a sheet, the most important first; `left` counts those of a kind the engine lacks. */
export function readConditionalFormats(sheet: XmlElement, looks: readonly IStyleData[], colours: Colours) {
  const rules: { priority: number; rule: IConditionFormattingRule }[] = [];
  let left = 0;
  for (const block of childrenOf(sheet, "conditionalFormatting")) {
    const ranges = rangesOf(block.attributes.sqref ?? "A1");
    for (const source of childrenOf(block, "cfRule")) {
      const config = readRule(source, ranges, looks, colours);
      if (!config) {
        left += 1;
        continue;
      }
      const priority = numberOf(source, "priority") ?? 0;
      rules.push({
        priority,
        rule: {
          cfId: `format-${rules.length + 1}`,
          ranges,
          stopIfTrue: truthOf(source, "stopIfTrue"),
          rule: config,
        },
      });
    }
  }
  rules.sort((one, other) => one.priority - other.priority);
  return { rules: rules.map(({ rule }) => rule), left };
}

function readRule(
  source: XmlElement,
  ranges: readonly IRange[],
  looks: readonly IStyleData[],
  colours: Colours,
): IConditionalFormattingRuleConfig | undefined {
  const { bl, it, cl, bg, st, ul } = looks[numberOf(source, "dxfId") ?? -1] ?? {};
  const style = Object.fromEntries(
    Object.entries({ bl, it, cl, bg, st, ul }).filter(([, value]) => value !== undefined),
  );
  const highlight = { type: CFRuleType.highlightCell, style } as const;
  const formulas = childrenOf(source, "formula").map(({ text }) => plainFormula(text));
  const { type, operator = "", text = "" } = source.attributes;
  switch (type) {
    case "cellIs":
      return readComparison(highlight, operator, formulas, ranges);
    case "expression":
      return { ...highlight, subType: CFSubRuleType.formula, value: `=${formulas[0] ?? ""}` };
    case "duplicateValues":
      return { ...highlight, subType: CFSubRuleType.duplicateValues };
    case "uniqueValues":
      return { ...highlight, subType: CFSubRuleType.uniqueValues };
    case "containsText":
    case "notContainsText":
    case "notContains":
    case "beginsWith":
    case "endsWith":
    case "containsBlanks":
    case "notContainsBlanks":
    case "containsErrors":
    case "notContainsErrors": {
      const kind = type === "notContains" ? CFTextOperator.notContainsText : (type as CFTextOperator);
      return { ...highlight, subType: CFSubRuleType.text, operator: kind, value: text };
    }
    case "timePeriod":
      return {
        ...highlight,
        subType: CFSubRuleType.timePeriod,
        operator: source.attributes.timePeriod as CFTimePeriodOperator,
      };
    case "top10":
      return {
        ...highlight,
        subType: CFSubRuleType.rank,
        isBottom: truthOf(source, "bottom"),
        isPercent: truthOf(source, "percent"),
        value: numberOf(source, "rank") ?? 10,
      };
    case "aboveAverage": {
      const [above, orEqual] = [truthOf(source, "aboveAverage", true), truthOf(source, "equalAverage")];
      const words = `${above ? "greaterThan" : "lessThan"}${orEqual ? "OrEqual" : ""}` as
        | CFNumberOperator.greaterThan
        | CFNumberOperator.lessThan;
      return { ...highlight, subType: CFSubRuleType.average, operator: words };
    }
    case "colorScale": {
      const scale = childOf(source, "colorScale");
      const shades = childrenOf(scale, "color");
      return {
        type: CFRuleType.colorScale,
        config: childrenOf(scale, "cfvo").map((point, index) => ({
          index,
          color: colours(shades[index]) ?? "#ffffff",
          value: readPoint(point),
        })),
      };
    }
    case "dataBar": {
      const bar = childOf(source, "dataBar");
      const [min, max] = childrenOf(bar, "cfvo").map(readPoint);
      const colour = colours(childOf(bar, "color")) ?? "#93bfb2";
      return {
        type: CFRuleType.dataBar,
        isShowValue: truthOf(bar, "showValue", true),
        config: {
          min: min ?? { type: "min" as CFValueType },
          max: max ?? { type: "max" as CFValueType },
          isGradient: true,
          positiveColor: colour,
          nativeColor: "#c0504d",
        },
      };
    }
    case "iconSet":
      return readIcons(childOf(source, "iconSet"));
    default:
      return undefined;
  }
}

type Highlight = { readonly type: CFRuleType.highlightCell; readonly style: object };

/** The engine compares with numbers only; compared with a cell or a text, the rule becomes the formula it stands for. */
function readComparison(
  highlight: Highlight,
  operator: string,
  formulas: readonly string[],
  ranges: readonly IRange[],
): IConditionalFormattingRuleConfig | undefined {
  const [low = "", high = ""] = formulas;
  const between = operator === CFNumberOperator.between || operator === CFNumberOperator.notBetween;
  if (Number.isNaN(Number(low)) || Number.isNaN(Number(high))) {
    const cell = cellAddress(ranges[0]?.startRow ?? 0, ranges[0]?.startColumn ?? 0);
    const inside = `AND(${cell}>=${low},${cell}<=${high})`;
    const sign = comparisonSigns[operator];
    if (!between && !sign) return undefined;
    const test = between ? (operator === "between" ? inside : `NOT(${inside})`) : `${cell}${sign}${low}`;
    return { ...highlight, subType: CFSubRuleType.formula, value: `=${test}` };
  }
  const base = { ...highlight, subType: CFSubRuleType.number } as const;
  if (operator === CFNumberOperator.between || operator === CFNumberOperator.notBetween) {
    return { ...base, operator, value: [Number(low), Number(high)] };
  }
  return { ...base, operator: operator as CFNumberOperator.equal, value: Number(low) };
}

const comparisonSigns: { readonly [operator: string]: string } = {
  equal: "=",
  notEqual: "<>",
  greaterThan: ">",
  greaterThanOrEqual: ">=",
  lessThan: "<",
  lessThanOrEqual: "<=",
};

function readPoint(point: XmlElement): IValueConfig {
  const { type = "num", val } = point.attributes;
  const kind = { autoMin: "min", autoMax: "max" }[type] ?? type;
  if (val === undefined) return { type: kind as CFValueType };
  return { type: kind as CFValueType, value: kind === "formula" ? `=${val}` : Number(val) };
}

/** The file lists thresholds upwards from the lowest icon; the engine lists the highest first. */
function readIcons(source: XmlElement | undefined): IConditionalFormattingRuleConfig {
  const iconType = (source?.attributes.iconSet ?? "3TrafficLights1") as IIconSetType;
  const points = childrenOf(source, "cfvo");
  const reversed = truthOf(source, "reverse");
  return {
    type: CFRuleType.iconSet,
    isShowValue: truthOf(source, "showValue", true),
    config: points
      .map((point, index) => ({
        operator: truthOf(point, "gte", true) ? CFNumberOperator.greaterThanOrEqual : CFNumberOperator.greaterThan,
        value: readPoint(point),
        iconType,
        iconId: String(reversed ? index : points.length - 1 - index),
      }))
      .reverse(),
  };
}
