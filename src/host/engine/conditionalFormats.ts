import type { IStyleBase } from "@univerjs/core";
import { BooleanNumber } from "@univerjs/core";
import {
  AddConditionalRuleMutation,
  CFNumberOperator,
  CFRuleType,
  CFSubRuleType,
  CFTextOperator,
  CFTimePeriodOperator,
  CFValueType,
  ConditionalFormattingRuleModel,
  DeleteConditionalRuleMutation,
  type IIconSetType,
  iconMap,
  MoveConditionalRuleMutation,
  SetConditionalRuleMutation,
} from "@univerjs/sheets-conditional-formatting";
import { cellAddress, rectangleAddress } from "./addresses";
import type { Area } from "./area";
import type { Book } from "./book";
import { toEngineRange } from "./tables";

type EngineRule = ReturnType<ConditionalFormattingRuleModel["getRule"]>;
type EngineConfig = NonNullable<EngineRule>["rule"];

/** The fill and letters of cells that meet a rule. */
export type ConditionalLook = {
  fill?: string;
  color?: string;
  bold?: boolean;
  italic?: boolean;
  strikethrough?: boolean;
  underline?: boolean;
  /** Kept for add-ins, and not drawn. */
  borders?: { [side: string]: { color?: string; style?: string } };
  numberFormat?: string;
};

/** Where on a scale a colour, a bar's end or an icon begins. */
export type Threshold = { type: string; formula?: string; color?: string; operator?: string };

/** A conditional format in the API's words. Which of the parts is used depends on the type. */
export type ConditionalFormat = {
  type: string;
  look: ConditionalLook;
  /** CellValue, TopBottom, PresetCriteria, ContainsText: the rule as it was set. */
  rule: { [name: string]: unknown };
  /** Custom: the formula, written for the first cell. */
  formula: string;
  colorScale: { minimum: Threshold; midpoint?: Threshold; maximum: Threshold };
  dataBar: {
    lower: Threshold;
    upper: Threshold;
    positive: string;
    negative: string;
    gradient: boolean;
    barOnly: boolean;
    [other: string]: unknown;
  };
  iconSet: { style: string; criteria: Threshold[]; reverse: boolean; iconOnly: boolean };
};

export const freshFormat = (type: string): ConditionalFormat => ({
  type,
  look: {},
  rule: {},
  formula: "",
  colorScale: {
    minimum: { type: "LowestValue", color: "#F8696B" },
    midpoint: { type: "Percentile", formula: "50", color: "#FFEB84" },
    maximum: { type: "HighestValue", color: "#63BE7B" },
  },
  dataBar: {
    lower: { type: "Automatic" },
    upper: { type: "Automatic" },
    positive: "#638EC6",
    negative: "#FF555A",
    gradient: true,
    barOnly: false,
  },
  iconSet: { style: "ThreeTrafficLights1", criteria: [], reverse: false, iconOnly: false },
});

const numberOperators: Record<string, CFNumberOperator> = {
  Between: CFNumberOperator.between,
  NotBetween: CFNumberOperator.notBetween,
  EqualTo: CFNumberOperator.equal,
  NotEqualTo: CFNumberOperator.notEqual,
  GreaterThan: CFNumberOperator.greaterThan,
  LessThan: CFNumberOperator.lessThan,
  GreaterThanOrEqual: CFNumberOperator.greaterThanOrEqual,
  LessThanOrEqual: CFNumberOperator.lessThanOrEqual,
};

const textOperators: Record<string, CFTextOperator> = {
  Contains: CFTextOperator.containsText,
  NotContains: CFTextOperator.notContainsText,
  BeginsWith: CFTextOperator.beginsWith,
  EndsWith: CFTextOperator.endsWith,
  Blanks: CFTextOperator.containsBlanks,
  NonBlanks: CFTextOperator.notContainsBlanks,
  Errors: CFTextOperator.containsErrors,
  NonErrors: CFTextOperator.notContainsErrors,
};

const periods: Record<string, CFTimePeriodOperator> = {
  Yesterday: CFTimePeriodOperator.yesterday,
  Today: CFTimePeriodOperator.today,
  Tomorrow: CFTimePeriodOperator.tomorrow,
  LastSevenDays: CFTimePeriodOperator.last7Days,
  LastWeek: CFTimePeriodOperator.lastWeek,
  ThisWeek: CFTimePeriodOperator.thisWeek,
  NextWeek: CFTimePeriodOperator.nextWeek,
  LastMonth: CFTimePeriodOperator.lastMonth,
  ThisMonth: CFTimePeriodOperator.thisMonth,
  NextMonth: CFTimePeriodOperator.nextMonth,
};

const averages: Record<string, CFNumberOperator> = {
  AboveAverage: CFNumberOperator.greaterThan,
  BelowAverage: CFNumberOperator.lessThan,
  EqualOrAboveAverage: CFNumberOperator.greaterThanOrEqual,
  EqualOrBelowAverage: CFNumberOperator.lessThanOrEqual,
};

const thresholdTypes: Record<string, CFValueType> = {
  LowestValue: CFValueType.min,
  HighestValue: CFValueType.max,
  Number: CFValueType.num,
  Percent: CFValueType.percent,
  Percentile: CFValueType.percentile,
  Formula: CFValueType.formula,
};

function styleOf({ fill, color, bold, italic, strikethrough, underline }: ConditionalLook): IStyleBase {
  const on = (value: boolean) => (value ? BooleanNumber.TRUE : BooleanNumber.FALSE);
  return {
    ...(fill ? { bg: { rgb: fill } } : {}),
    ...(color ? { cl: { rgb: color } } : {}),
    ...(bold === undefined ? {} : { bl: on(bold) }),
    ...(italic === undefined ? {} : { it: on(italic) }),
    ...(strikethrough ? { st: { s: BooleanNumber.TRUE } } : {}),
    ...(underline ? { ul: { s: BooleanNumber.TRUE } } : {}),
  };
}

/** The number a formula such as "=10" or "10" is, or null where it is something to be calculated. */
function plainNumber(formula: unknown): number | null {
  const text = String(formula ?? "")
    .trim()
    .replace(/^=/, "");
  const number = Number(text);
  return text !== "" && Number.isFinite(number) ? number : null;
}

function engineThreshold({ type, formula }: Threshold, automatic: CFValueType) {
  const kind = thresholdTypes[type] ?? automatic;
  if (kind === CFValueType.min || kind === CFValueType.max) return { type: kind };
  const number = plainNumber(formula);
  return number === null
    ? { type: CFValueType.formula, value: `=${String(formula ?? "").replace(/^=/, "")}` }
    : { type: kind, value: number };
}

/** Comparisons the engine does not make itself, as a formula for the first cell. */
function comparison(operator: string, cell: string, first: string, second: string): string {
  const a = first.replace(/^=/, "");
  const b = second.replace(/^=/, "");
  switch (operator) {
    case "Between":
      return `=AND(${cell}>=${a},${cell}<=${b})`;
    case "NotBetween":
      return `=OR(${cell}<${a},${cell}>${b})`;
    default: {
      const signs: Record<string, string> = {
        EqualTo: "=",
        NotEqualTo: "<>",
        GreaterThan: ">",
        LessThan: "<",
        GreaterThanOrEqual: ">=",
        LessThanOrEqual: "<=",
      };
      return `=${cell}${signs[operator] ?? "="}${a}`;
    }
  }
}

/** "OneStdDevAboveAverage" as a formula for the first cell. */
function deviation(criterion: string, cell: string, range: string): string {
  const [, count = "One", side = "Above"] = /^(One|Two|Three)StdDev(Above|Below)/.exec(criterion) ?? [];
  const times = { One: 1, Two: 2, Three: 3 }[count] ?? 1;
  const sign = side === "Above" ? ["+", ">"] : ["-", "<"];
  return `=${cell}${sign[1]}AVERAGE(${range})${sign[0]}${times}*STDEV.P(${range})`;
}

/** The rule by which the engine draws a conditional format over the areas. */
function engineConfig(format: ConditionalFormat, areas: readonly Area[]): EngineConfig {
  const first = areas[0]!;
  const cell = cellAddress(first.row, first.column);
  const range = rectangleAddress(first).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
  const style = styleOf(format.look);
  const highlight = <T extends object>(subType: CFSubRuleType, more: T) =>
    ({ type: CFRuleType.highlightCell, subType, style, ...more }) as unknown as EngineConfig;
  const byFormula = (value: string) => highlight(CFSubRuleType.formula, { value });
  switch (format.type) {
    case "ColorScale": {
      const { minimum, midpoint, maximum } = format.colorScale;
      const stops = [minimum, ...(midpoint ? [midpoint] : []), maximum];
      return {
        type: CFRuleType.colorScale,
        config: stops.map((stop, index) => ({
          index,
          color: stop.color ?? "#FFFFFF",
          value: engineThreshold(stop, index === 0 ? CFValueType.min : CFValueType.max),
        })),
      } as EngineConfig;
    }
    case "DataBar": {
      const { lower, upper, positive, negative, gradient, barOnly } = format.dataBar;
      return {
        type: CFRuleType.dataBar,
        isShowValue: !barOnly,
        config: {
          min: engineThreshold(lower, CFValueType.min),
          max: engineThreshold(upper, CFValueType.max),
          isGradient: gradient,
          positiveColor: positive,
          nativeColor: negative,
        },
      } as EngineConfig;
    }
    case "IconSet": {
      const { style: name, criteria, reverse, iconOnly } = format.iconSet;
      const iconType = engineIcons(name);
      const count = iconMap[iconType].length;
      // The engine counts from the best icon down; the API's criteria go from the lowest up.
      const config = Array.from({ length: count }, (_, index) => {
        const criterion = criteria[count - 1 - index];
        const standard = { type: "Percent", formula: String(Math.round((100 * (count - 1 - index)) / count)) };
        return {
          operator:
            criterion?.operator === "GreaterThan" ? CFNumberOperator.greaterThan : CFNumberOperator.greaterThanOrEqual,
          value: engineThreshold(criterion?.type ? criterion : standard, CFValueType.min),
          iconType,
          iconId: String(reverse ? count - 1 - index : index),
        };
      });
      return { type: CFRuleType.iconSet, isShowValue: !iconOnly, config } as EngineConfig;
    }
    case "CellValue": {
      const { operator = "GreaterThan", formula1 = "", formula2 = "" } = format.rule as Record<string, string>;
      const [a, b] = [plainNumber(formula1), plainNumber(formula2)];
      const two = operator === "Between" || operator === "NotBetween";
      return a === null || (two && b === null)
        ? byFormula(comparison(operator, cell, formula1, formula2))
        : highlight(CFSubRuleType.number, { operator: numberOperators[operator], value: two ? [a, b] : a });
    }
    case "ContainsText": {
      const { operator = "Contains", text = "" } = format.rule as Record<string, string>;
      return highlight(CFSubRuleType.text, { operator: textOperators[operator], value: text });
    }
    case "TopBottom": {
      const { type = "TopItems", rank = 10 } = format.rule as { type?: string; rank?: number };
      return highlight(CFSubRuleType.rank, {
        isBottom: type.startsWith("Bottom"),
        isPercent: type.endsWith("Percent"),
        value: rank,
      });
    }
    case "PresetCriteria": {
      const criterion = String(format.rule.criterion ?? "AboveAverage");
      if (averages[criterion]) return highlight(CFSubRuleType.average, { operator: averages[criterion] });
      if (textOperators[criterion]) return highlight(CFSubRuleType.text, { operator: textOperators[criterion] });
      if (periods[criterion]) return highlight(CFSubRuleType.timePeriod, { operator: periods[criterion] });
      if (criterion === "UniqueValues") return highlight(CFSubRuleType.uniqueValues, {});
      if (criterion === "DuplicateValues") return highlight(CFSubRuleType.duplicateValues, {});
      return byFormula(deviation(criterion, cell, range));
    }
    default:
      return byFormula(format.formula || "=FALSE");
  }
}

/** "ThreeArrows" -> "3Arrows". */
function engineIcons(style: string): IIconSetType {
  const name = style
    .replace(/^Three/, "3")
    .replace(/^Four/, "4")
    .replace(/^Five/, "5");
  return (name in iconMap ? name : "3TrafficLights1") as IIconSetType;
}

const keyOf = <T>(table: Record<string, T>, value: unknown): string | undefined =>
  Object.keys(table).find((key) => table[key] === value);

/** What is known of a rule that came from a file or from the grid. */
function fromEngine(config: EngineConfig): ConditionalFormat {
  const rule = config as unknown as Record<string, unknown> & { style?: IStyleBase; config?: never };
  const look: ConditionalLook = {
    ...(rule.style?.bg?.rgb ? { fill: rule.style.bg.rgb } : {}),
    ...(rule.style?.cl?.rgb ? { color: rule.style.cl.rgb } : {}),
    ...(rule.style?.bl ? { bold: true } : {}),
    ...(rule.style?.it ? { italic: true } : {}),
  };
  const threshold = (value: { type: CFValueType; value?: unknown } | undefined): Threshold => ({
    type: keyOf(thresholdTypes, value?.type) ?? "Automatic",
    ...(value?.value === undefined ? {} : { formula: String(value.value) }),
  });
  const made = (type: string, more: Partial<ConditionalFormat>): ConditionalFormat => ({
    ...freshFormat(type),
    look,
    ...more,
  });
  switch (rule.type) {
    case CFRuleType.colorScale: {
      const stops = (rule.config as unknown as { color: string; value: never }[]).map(({ color, value }) => ({
        ...threshold(value),
        color,
      }));
      const middle = stops.length > 2 ? { midpoint: stops[1]! } : {};
      return made("ColorScale", { colorScale: { minimum: stops[0]!, ...middle, maximum: stops.at(-1)! } });
    }
    case CFRuleType.dataBar: {
      const bar = rule.config as unknown as Record<string, never>;
      return made("DataBar", {
        dataBar: {
          lower: threshold(bar.min),
          upper: threshold(bar.max),
          positive: String(bar.positiveColor),
          negative: String(bar.nativeColor),
          gradient: Boolean(bar.isGradient),
          barOnly: rule.isShowValue === false,
        },
      });
    }
    case CFRuleType.iconSet:
      return made("IconSet", {});
    default:
  }
  switch (rule.subType) {
    case CFSubRuleType.number: {
      const [formula1, formula2] = [rule.value].flat().map(String);
      return made("CellValue", { rule: { operator: keyOf(numberOperators, rule.operator), formula1, formula2 } });
    }
    case CFSubRuleType.text: {
      const operator = keyOf(textOperators, rule.operator) ?? "Contains";
      return /Blanks|Errors/.test(operator)
        ? made("PresetCriteria", { rule: { criterion: operator } })
        : made("ContainsText", { rule: { operator, text: rule.value ?? "" } });
    }
    case CFSubRuleType.rank:
      return made("TopBottom", {
        rule: { rank: rule.value, type: `${rule.isBottom ? "Bottom" : "Top"}${rule.isPercent ? "Percent" : "Items"}` },
      });
    case CFSubRuleType.average:
      return made("PresetCriteria", { rule: { criterion: keyOf(averages, rule.operator) } });
    case CFSubRuleType.timePeriod:
      return made("PresetCriteria", { rule: { criterion: keyOf(periods, rule.operator) } });
    case CFSubRuleType.uniqueValues:
      return made("PresetCriteria", { rule: { criterion: "UniqueValues" } });
    case CFSubRuleType.duplicateValues:
      return made("PresetCriteria", { rule: { criterion: "DuplicateValues" } });
    default:
      return made("Custom", { formula: String(rule.value ?? "") });
  }
}

/** The conditional formats of the workbook, drawn by the engine's rules. The first of a sheet has the first say. */
export class ConditionalFormats {
  readonly #book: Book;
  readonly #model: ConditionalFormattingRuleModel;
  /** Formats as they were set through the API, by sheet and id; of others the engine's rule is all there is. */
  readonly #formats = new Map<string, ConditionalFormat>();

  constructor(book: Book) {
    this.#book = book;
    this.#model = book.injector.get(ConditionalFormattingRuleModel);
  }

  /** Ids on a sheet, first priority first. */
  list(sheetId: string): string[] {
    return (this.#model.getSubunitRules(this.#book.id, sheetId) ?? []).map(({ cfId }) => cfId);
  }

  areasOf(sheetId: string, id: string): Area[] {
    return (this.#model.getRule(this.#book.id, sheetId, id)?.ranges ?? []).map((range) => ({
      book: this.#book,
      sheetId,
      row: range.startRow,
      column: range.startColumn,
      rowCount: range.endRow - range.startRow + 1,
      columnCount: range.endColumn - range.startColumn + 1,
    }));
  }

  get(sheetId: string, id: string): ConditionalFormat | null {
    const rule = this.#model.getRule(this.#book.id, sheetId, id);
    if (!rule) return null;
    const key = `${sheetId} ${id}`;
    const format = this.#formats.get(key) ?? fromEngine(rule.rule);
    this.#formats.set(key, format);
    return format;
  }

  stopsIfTrue(sheetId: string, id: string): boolean {
    return this.#model.getRule(this.#book.id, sheetId, id)?.stopIfTrue ?? false;
  }

  add(areas: readonly Area[], type: string): string {
    const { sheetId } = areas[0]!;
    const format = freshFormat(type);
    const id = this.#model.createCfId(this.#book.id, sheetId);
    this.#formats.set(`${sheetId} ${id}`, format);
    const rule = { cfId: id, stopIfTrue: false, ranges: areas.map(toEngineRange), rule: engineConfig(format, areas) };
    this.#book.undoable(
      sheetId,
      [{ id: AddConditionalRuleMutation.id, params: { rule } }],
      [{ id: DeleteConditionalRuleMutation.id, params: { cfId: id } }],
    );
    return id;
  }

  /** Draws again after a change of the format, its areas or whether it stops. */
  changed(sheetId: string, id: string, more: { areas?: readonly Area[]; stopIfTrue?: boolean } = {}): void {
    const before = this.#model.getRule(this.#book.id, sheetId, id);
    const format = this.get(sheetId, id);
    if (!before || !format) return;
    const areas = more.areas ?? this.areasOf(sheetId, id);
    const rule = {
      cfId: id,
      stopIfTrue: more.stopIfTrue ?? before.stopIfTrue,
      ranges: areas.map(toEngineRange),
      rule: engineConfig(format, areas),
    };
    this.#book.undoable(
      sheetId,
      [{ id: SetConditionalRuleMutation.id, params: { cfId: id, rule } }],
      [{ id: SetConditionalRuleMutation.id, params: { cfId: id, rule: before } }],
    );
  }

  /** Puts a format to a place in the order of its sheet. */
  move(sheetId: string, id: string, priority: number): void {
    const others = this.list(sheetId).filter((other) => other !== id);
    const next = others[priority];
    const end = next ? { id: next, type: "before" } : { id: others.at(-1) ?? id, type: "after" };
    this.#book.run(MoveConditionalRuleMutation.id, {
      unitId: this.#book.id,
      subUnitId: sheetId,
      start: { id, type: "self" },
      end,
    });
  }

  remove(sheetId: string, id: string): void {
    const rule = this.#model.getRule(this.#book.id, sheetId, id);
    if (!rule) return;
    this.#book.undoable(
      sheetId,
      [{ id: DeleteConditionalRuleMutation.id, params: { cfId: id } }],
      [{ id: AddConditionalRuleMutation.id, params: { rule } }],
    );
  }
}
