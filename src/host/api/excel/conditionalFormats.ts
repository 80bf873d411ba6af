import { splitAreas } from "../../engine/addresses";
import type { Area } from "../../engine/area";
import { intersection } from "../../engine/area";
import type { Book } from "../../engine/book";
import { type ConditionalFormat as Format, freshFormat } from "../../engine/conditionalFormats";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass, type Scalar } from "../proxies/proxyClass";
import { enumerations } from "../published/enumerations";
import { oneOf, text, wholeNumber } from "./arguments";
import { namedColour } from "./colours";
import { fromR1C1, toR1C1 } from "./r1c1";
import { areaOf, Range } from "./range";
import { type Areas, RangeAreas } from "./rangeAreas";

/** A conditional format by its id. */
type FormatTarget = { readonly book: Book; readonly sheetId: string; readonly id: string };

const formatOf = ({ book, sheetId, id }: FormatTarget): Format =>
  book.conditionalFormats.get(sheetId, id) ?? refuse("ItemNotFound", "The conditional format is gone.");

const areasOf = ({ book, sheetId, id }: FormatTarget): Area[] => book.conditionalFormats.areasOf(sheetId, id);

const redraw = ({ book, sheetId, id }: FormatTarget): void => book.conditionalFormats.changed(sheetId, id);

/** A property of a format: where it is kept, and what is refused. */
function kept<Value>(
  read: (format: Format) => Value,
  write: (format: Format, value: Value) => void,
): Scalar<FormatTarget, Value> {
  return {
    get: (target) => read(formatOf(target)),
    set: (target, value) => {
      write(formatOf(target), value);
      redraw(target);
    },
  };
}

const isOf = <T>(enumeration: string, value: T): T =>
  oneOf(String(value), Object.values(enumerations[enumeration] ?? {}).map(String), "The property") as T;

/* -- The look of cells that meet a rule -- */

export const ConditionalRangeFill: ProxyClass<Excel.ConditionalRangeFill, FormatTarget> = proxyClass<
  Excel.ConditionalRangeFill,
  FormatTarget
>("ConditionalRangeFill", {
  scalars: {
    color: kept(
      ({ look }) => look.fill ?? "",
      ({ look }, colour) => {
        look.fill = namedColour(colour);
      },
    ),
  },
  methods: {
    clear(target) {
      delete formatOf(target).look.fill;
      redraw(target);
    },
  },
});

const truth = (name: "bold" | "italic" | "strikethrough") =>
  kept<boolean>(
    ({ look }) => look[name] ?? false,
    ({ look }, on) => {
      look[name] = on;
    },
  );

export const ConditionalRangeFont: ProxyClass<Excel.ConditionalRangeFont, FormatTarget> = proxyClass<
  Excel.ConditionalRangeFont,
  FormatTarget
>("ConditionalRangeFont", {
  scalars: {
    bold: truth("bold"),
    color: kept(
      ({ look }) => look.color ?? "",
      ({ look }, colour) => {
        look.color = namedColour(colour);
      },
    ),
    italic: truth("italic"),
    strikethrough: truth("strikethrough"),
    underline: kept<Excel.ConditionalRangeFont["underline"]>(
      ({ look }) => (look.underline ? "Single" : "None"),
      ({ look }, underline) => {
        look.underline = underline !== "None";
      },
    ),
  },
  methods: {
    clear(target) {
      const { look } = formatOf(target);
      for (const name of ["bold", "color", "italic", "strikethrough", "underline"] as const) delete look[name];
      redraw(target);
    },
  },
});

const borderSides = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"] as const;
type BorderTarget = { readonly format: FormatTarget; readonly side: (typeof borderSides)[number] };

/** A property of one border. Kept for the add-in; the engine draws fill and font of a format. */
const borderProperty = <Value extends string>(
  name: "color" | "style",
  standard: string,
  check: (value: unknown) => string,
): Scalar<BorderTarget, Value> => ({
  get: ({ format, side }) => (formatOf(format).look.borders?.[side]?.[name] ?? standard) as Value,
  set: ({ format, side }, value) => {
    const { look } = formatOf(format);
    look.borders = { ...look.borders, [side]: { ...look.borders?.[side], [name]: check(value) } };
    redraw(format);
  },
});

export const ConditionalRangeBorder: ProxyClass<Excel.ConditionalRangeBorder, BorderTarget> = proxyClass<
  Excel.ConditionalRangeBorder,
  BorderTarget
>("ConditionalRangeBorder", {
  scalars: {
    color: borderProperty("color", "", (value) => namedColour(String(value))),
    sideIndex: { get: ({ side }) => side },
    style: borderProperty("style", "None", (value) => String(isOf("ConditionalRangeBorderLineStyle", value))) as Scalar<
      BorderTarget,
      Excel.ConditionalRangeBorder["style"]
    >,
  },
});

const borderAt = (side: BorderTarget["side"]) => ({
  of: () => ConditionalRangeBorder,
  at: (format: FormatTarget): BorderTarget => ({ format, side }),
});

export const ConditionalRangeBorderCollection: ProxyClass<Excel.ConditionalRangeBorderCollection, FormatTarget> =
  proxyClass<Excel.ConditionalRangeBorderCollection, FormatTarget>("ConditionalRangeBorderCollection", {
    items: { of: () => ConditionalRangeBorder, list: (format) => borderSides.map((side) => ({ format, side })) },
    scalars: { count: { get: () => borderSides.length } },
    objects: {
      bottom: borderAt("EdgeBottom"),
      left: borderAt("EdgeLeft"),
      right: borderAt("EdgeRight"),
      top: borderAt("EdgeTop"),
    },
    methods: {
      getItem: {
        of: () => ConditionalRangeBorder,
        at: (format, side) => ({ format, side: oneOf(String(side), borderSides, "The border") }),
      },
      getItemAt: {
        of: () => ConditionalRangeBorder,
        at: (format, index) => {
          const side = borderSides[wholeNumber(index, "The index", 0)];
          return side ? { format, side } : null;
        },
      },
    },
  });

export const ConditionalRangeFormat: ProxyClass<Excel.ConditionalRangeFormat, FormatTarget> = proxyClass<
  Excel.ConditionalRangeFormat,
  FormatTarget
>("ConditionalRangeFormat", {
  scalars: {
    // Kept for the add-in; the engine draws fill and font of a format.
    numberFormat: kept(
      ({ look }) => look.numberFormat ?? "",
      ({ look }, format) => {
        look.numberFormat = text(format, "A number format");
      },
    ),
  },
  objects: {
    borders: { of: () => ConditionalRangeBorderCollection, at: (target) => target },
    fill: { of: () => ConditionalRangeFill, at: (target) => target },
    font: { of: () => ConditionalRangeFont, at: (target) => target },
  },
  methods: {
    clearFormat(target) {
      formatOf(target).look = {};
      redraw(target);
    },
  },
});

const format = { of: () => ConditionalRangeFormat, at: (target: FormatTarget) => target };

/* -- The kinds of formats -- */

/** A rule kept as it was set, once its words were checked. */
const rule = <Rule>(check: (rule: Rule) => void): Scalar<FormatTarget, Rule> =>
  kept(
    (one) => one.rule as Rule,
    (one, given) => {
      check(given);
      one.rule = { ...(given as object) };
    },
  );

export const CellValueConditionalFormat: ProxyClass<Excel.CellValueConditionalFormat, FormatTarget> = proxyClass<
  Excel.CellValueConditionalFormat,
  FormatTarget
>("CellValueConditionalFormat", {
  scalars: {
    rule: rule<Excel.ConditionalCellValueRule>(({ operator, formula1 }) => {
      isOf("ConditionalCellValueOperator", operator);
      text(String(formula1), "A formula");
    }),
  },
  objects: { format },
});

export const TextConditionalFormat: ProxyClass<Excel.TextConditionalFormat, FormatTarget> = proxyClass<
  Excel.TextConditionalFormat,
  FormatTarget
>("TextConditionalFormat", {
  scalars: {
    rule: rule<Excel.ConditionalTextComparisonRule>(({ operator, text: wanted }) => {
      isOf("ConditionalTextOperator", operator);
      text(wanted, "The text");
    }),
  },
  objects: { format },
});

export const TopBottomConditionalFormat: ProxyClass<Excel.TopBottomConditionalFormat, FormatTarget> = proxyClass<
  Excel.TopBottomConditionalFormat,
  FormatTarget
>("TopBottomConditionalFormat", {
  scalars: {
    rule: rule<Excel.ConditionalTopBottomRule>(({ rank, type }) => {
      isOf("ConditionalTopBottomCriterionType", type);
      wholeNumber(rank, "The rank", 1);
    }),
  },
  objects: { format },
});

export const PresetCriteriaConditionalFormat: ProxyClass<Excel.PresetCriteriaConditionalFormat, FormatTarget> =
  proxyClass<Excel.PresetCriteriaConditionalFormat, FormatTarget>("PresetCriteriaConditionalFormat", {
    scalars: {
      rule: rule<Excel.ConditionalPresetCriteriaRule>(({ criterion }) => {
        isOf("ConditionalFormatPresetCriterion", criterion);
      }),
    },
    objects: { format },
  });

function checkFormula(target: FormatTarget, given: unknown): string {
  const formula = text(given, "A formula");
  const typed = formula.startsWith("=") ? formula : `=${formula}`;
  const first = areasOf(target)[0]!;
  const fault = target.book.formulas.faultOf(typed, first);
  return fault ? refuse("InvalidArgument", fault) : typed;
}

/** The formula of a custom rule, written for the first cell of the range. */
const ruleFormula: Scalar<FormatTarget, string> = {
  get: (target) => formatOf(target).formula,
  set: (target, given) => {
    formatOf(target).formula = checkFormula(target, given);
    redraw(target);
  },
};

export const ConditionalFormatRule: ProxyClass<Excel.ConditionalFormatRule, FormatTarget> = proxyClass<
  Excel.ConditionalFormatRule,
  FormatTarget
>("ConditionalFormatRule", {
  scalars: {
    formula: ruleFormula,
    formulaLocal: ruleFormula,
    formulaR1C1: {
      get: (target) => {
        const { row, column } = areasOf(target)[0]!;
        return toR1C1(formatOf(target).formula, row, column);
      },
      set: (target, given) => {
        const { row, column } = areasOf(target)[0]!;
        formatOf(target).formula = checkFormula(target, fromR1C1(given, row, column));
        redraw(target);
      },
    },
  },
});

export const CustomConditionalFormat: ProxyClass<Excel.CustomConditionalFormat, FormatTarget> = proxyClass<
  Excel.CustomConditionalFormat,
  FormatTarget
>("CustomConditionalFormat", {
  objects: { format, rule: { of: () => ConditionalFormatRule, at: (target) => target } },
});

export const ColorScaleConditionalFormat: ProxyClass<Excel.ColorScaleConditionalFormat, FormatTarget> = proxyClass<
  Excel.ColorScaleConditionalFormat,
  FormatTarget
>("ColorScaleConditionalFormat", {
  scalars: {
    criteria: kept<Excel.ConditionalColorScaleCriteria>(
      (one) => structuredClone(one.colorScale) as Excel.ConditionalColorScaleCriteria,
      (one, { minimum, midpoint, maximum }) => {
        const stop = (given: Excel.ConditionalColorScaleCriterion) => ({
          type: isOf("ConditionalFormatColorCriterionType", given.type) as string,
          color: namedColour(given.color ?? "#FFFFFF"),
          ...(given.formula === undefined || given.formula === null ? {} : { formula: String(given.formula) }),
        });
        one.colorScale = {
          minimum: stop(minimum),
          ...(midpoint ? { midpoint: stop(midpoint) } : {}),
          maximum: stop(maximum),
        };
      },
    ),
    threeColorScale: { get: (target) => formatOf(target).colorScale.midpoint !== undefined },
  },
});

/** Properties of a bar that are kept for the add-in and the file, though the engine does not draw them. */
const barOther = (name: string, standard: string) =>
  // biome-ignore lint/suspicious/noExplicitAny: words of several enumerations.
  kept<any>(
    ({ dataBar }) => dataBar[name] ?? standard,
    ({ dataBar }, value) => {
      dataBar[name] = value;
    },
  );

const barBorder = (name: "positiveBorder" | "negativeBorder") =>
  kept<string>(
    ({ dataBar }) => String(dataBar[name] ?? ""),
    ({ dataBar }, colour) => {
      dataBar[name] = colour === "" ? "" : namedColour(colour);
    },
  );

export const ConditionalDataBarPositiveFormat: ProxyClass<Excel.ConditionalDataBarPositiveFormat, FormatTarget> =
  proxyClass<Excel.ConditionalDataBarPositiveFormat, FormatTarget>("ConditionalDataBarPositiveFormat", {
    scalars: {
      borderColor: barBorder("positiveBorder"),
      fillColor: kept(
        ({ dataBar }) => dataBar.positive,
        ({ dataBar }, colour) => {
          dataBar.positive = namedColour(colour);
        },
      ),
      gradientFill: kept(
        ({ dataBar }) => dataBar.gradient,
        ({ dataBar }, gradient) => {
          dataBar.gradient = gradient;
        },
      ),
    },
  });

export const ConditionalDataBarNegativeFormat: ProxyClass<Excel.ConditionalDataBarNegativeFormat, FormatTarget> =
  proxyClass<Excel.ConditionalDataBarNegativeFormat, FormatTarget>("ConditionalDataBarNegativeFormat", {
    scalars: {
      borderColor: barBorder("negativeBorder"),
      matchPositiveBorderColor: kept(
        ({ dataBar }) => (dataBar.negativeBorder ?? "") === (dataBar.positiveBorder ?? ""),
        ({ dataBar }, match) => {
          if (match) dataBar.negativeBorder = dataBar.positiveBorder ?? "";
        },
      ),
      fillColor: kept(
        ({ dataBar }) => dataBar.negative,
        ({ dataBar }, colour) => {
          dataBar.negative = namedColour(colour);
        },
      ),
      matchPositiveFillColor: kept(
        ({ dataBar }) => dataBar.negative === dataBar.positive,
        ({ dataBar }, match) => {
          if (match) dataBar.negative = dataBar.positive;
        },
      ),
    },
  });

const barEnd = (name: "lower" | "upper") =>
  kept<Excel.ConditionalDataBarRule>(
    ({ dataBar }) => ({ ...dataBar[name] }) as Excel.ConditionalDataBarRule,
    ({ dataBar }, given) => {
      dataBar[name] = {
        type: isOf("ConditionalFormatRuleType", given.type) as string,
        ...(given.formula === undefined ? {} : { formula: String(given.formula) }),
      };
    },
  );

export const DataBarConditionalFormat: ProxyClass<Excel.DataBarConditionalFormat, FormatTarget> = proxyClass<
  Excel.DataBarConditionalFormat,
  FormatTarget
>("DataBarConditionalFormat", {
  scalars: {
    axisColor: barOther("axisColor", "#000000"),
    axisFormat: barOther("axisFormat", "Automatic"),
    barDirection: barOther("barDirection", "Context"),
    lowerBoundRule: barEnd("lower"),
    showDataBarOnly: kept(
      ({ dataBar }) => dataBar.barOnly,
      ({ dataBar }, only) => {
        dataBar.barOnly = only;
      },
    ),
    upperBoundRule: barEnd("upper"),
  },
  objects: {
    negativeFormat: { of: () => ConditionalDataBarNegativeFormat, at: (target) => target },
    positiveFormat: { of: () => ConditionalDataBarPositiveFormat, at: (target) => target },
  },
});

export const IconSetConditionalFormat: ProxyClass<Excel.IconSetConditionalFormat, FormatTarget> = proxyClass<
  Excel.IconSetConditionalFormat,
  FormatTarget
>("IconSetConditionalFormat", {
  scalars: {
    criteria: kept<Excel.ConditionalIconCriterion[]>(
      ({ iconSet }) => structuredClone(iconSet.criteria) as Excel.ConditionalIconCriterion[],
      ({ iconSet }, criteria) => {
        if (!Array.isArray(criteria)) refuse("InvalidArgument", "The criteria are a list.");
        // The first icon stands for all that is below: it comes as an empty object.
        iconSet.criteria = criteria.map(({ type, formula, operator }) => ({
          type: type ? String(type) : "",
          ...(formula === undefined ? {} : { formula: String(formula) }),
          ...(operator === undefined ? {} : { operator: String(operator) }),
        }));
      },
    ),
    reverseIconOrder: kept(
      ({ iconSet }) => iconSet.reverse,
      ({ iconSet }, reverse) => {
        iconSet.reverse = reverse;
      },
    ),
    showIconOnly: kept(
      ({ iconSet }) => iconSet.iconOnly,
      ({ iconSet }, only) => {
        iconSet.iconOnly = only;
      },
    ),
    style: kept<Excel.IconSetConditionalFormat["style"]>(
      ({ iconSet }) => iconSet.style as Excel.IconSet,
      ({ iconSet }, style) => {
        iconSet.style = isOf("IconSet", style) as string;
      },
    ),
  },
});

/* -- A format and its collection -- */

const kinds = {
  cellValue: "CellValue",
  colorScale: "ColorScale",
  custom: "Custom",
  dataBar: "DataBar",
  iconSet: "IconSet",
  preset: "PresetCriteria",
  textComparison: "ContainsText",
  topBottom: "TopBottom",
} as const;

/** The part of a format of a kind: without one of that kind there is none. */
const ofKind = (kind: keyof typeof kinds) => (target: FormatTarget) =>
  formatOf(target).type === kinds[kind] ? target : refuse("ItemNotFound", `The format is no ${kinds[kind]}.`);
const ofKindOrNull = (kind: keyof typeof kinds) => (target: FormatTarget) =>
  formatOf(target).type === kinds[kind] ? target : null;

function changeTo(target: FormatTarget, type: string, change: (format: Format) => void): void {
  const one = formatOf(target);
  Object.assign(one, freshFormat(type), { look: one.look });
  change(one);
  redraw(target);
}

export const ConditionalFormat: ProxyClass<Excel.ConditionalFormat, FormatTarget> = proxyClass<
  Excel.ConditionalFormat,
  FormatTarget
>("ConditionalFormat", {
  scalars: {
    id: { get: ({ id }) => id },
    priority: {
      get: ({ book, sheetId, id }) => book.conditionalFormats.list(sheetId).indexOf(id),
      set: ({ book, sheetId, id }, priority) =>
        book.conditionalFormats.move(sheetId, id, wholeNumber(priority, "The priority", 0)),
    },
    stopIfTrue: {
      get: ({ book, sheetId, id }) => book.conditionalFormats.stopsIfTrue(sheetId, id),
      set: ({ book, sheetId, id }, stopIfTrue) => book.conditionalFormats.changed(sheetId, id, { stopIfTrue }),
    },
    type: { get: (target) => formatOf(target).type as Excel.ConditionalFormatType },
  },
  objects: {
    cellValue: { of: () => CellValueConditionalFormat, at: ofKind("cellValue") },
    cellValueOrNullObject: { of: () => CellValueConditionalFormat, at: ofKindOrNull("cellValue") },
    colorScale: { of: () => ColorScaleConditionalFormat, at: ofKind("colorScale") },
    colorScaleOrNullObject: { of: () => ColorScaleConditionalFormat, at: ofKindOrNull("colorScale") },
    custom: { of: () => CustomConditionalFormat, at: ofKind("custom") },
    customOrNullObject: { of: () => CustomConditionalFormat, at: ofKindOrNull("custom") },
    dataBar: { of: () => DataBarConditionalFormat, at: ofKind("dataBar") },
    dataBarOrNullObject: { of: () => DataBarConditionalFormat, at: ofKindOrNull("dataBar") },
    iconSet: { of: () => IconSetConditionalFormat, at: ofKind("iconSet") },
    iconSetOrNullObject: { of: () => IconSetConditionalFormat, at: ofKindOrNull("iconSet") },
    preset: { of: () => PresetCriteriaConditionalFormat, at: ofKind("preset") },
    presetOrNullObject: { of: () => PresetCriteriaConditionalFormat, at: ofKindOrNull("preset") },
    textComparison: { of: () => TextConditionalFormat, at: ofKind("textComparison") },
    textComparisonOrNullObject: { of: () => TextConditionalFormat, at: ofKindOrNull("textComparison") },
    topBottom: { of: () => TopBottomConditionalFormat, at: ofKind("topBottom") },
    topBottomOrNullObject: { of: () => TopBottomConditionalFormat, at: ofKindOrNull("topBottom") },
  },
  methods: {
    changeRuleToCellValue: (target, given) =>
      changeTo(target, "CellValue", (one) => {
        one.rule = { ...given };
      }),
    changeRuleToColorScale: (target) => changeTo(target, "ColorScale", () => {}),
    changeRuleToContainsText: (target, given) =>
      changeTo(target, "ContainsText", (one) => {
        one.rule = { ...given };
      }),
    changeRuleToCustom: (target, formula) =>
      changeTo(target, "Custom", (one) => {
        one.formula = checkFormula(target, formula);
      }),
    changeRuleToDataBar: (target) => changeTo(target, "DataBar", () => {}),
    changeRuleToIconSet: (target) => changeTo(target, "IconSet", () => {}),
    changeRuleToPresetCriteria: (target, given) =>
      changeTo(target, "PresetCriteria", (one) => {
        one.rule = { ...given };
      }),
    changeRuleToTopBottom: (target, given) =>
      changeTo(target, "TopBottom", (one) => {
        one.rule = { ...given };
      }),
    delete: ({ book, sheetId, id }) => book.conditionalFormats.remove(sheetId, id),
    getRange: {
      of: () => Range,
      at: (target) => only(target) ?? refuse("InvalidOperation", "It covers several areas."),
    },
    getRangeOrNullObject: { of: () => Range, at: only },
    getRanges: { of: () => RangeAreas, at: areasOf },
    setRanges(target, given) {
      const on = areasOf(target)[0]!;
      const areas: Area[] = Array.isArray(given)
        ? (given as Area[])
        : typeof given === "string"
          ? splitAreas(given).map((part) => areaOf(part, on))
          : [areaOf(given, on)];
      target.book.conditionalFormats.changed(target.sheetId, target.id, { areas });
    },
  },
});

function only(target: FormatTarget): Area | null {
  const areas = areasOf(target);
  return areas.length === 1 ? areas[0]! : null;
}

/** The formats that touch the areas, in their order of priority. */
function touching(areas: Areas): FormatTarget[] {
  const { book, sheetId } = areas[0]!;
  return book.conditionalFormats
    .list(sheetId)
    .map((id) => ({ book, sheetId, id }))
    .filter((target) => areasOf(target).some((one) => areas.some((area) => intersection(one, area) !== null)));
}

const byId = (areas: Areas, id: unknown): FormatTarget | null =>
  touching(areas).find((target) => target.id === text(id, "An id")) ?? null;

export const ConditionalFormatCollection: ProxyClass<Excel.ConditionalFormatCollection, Areas> = proxyClass<
  Excel.ConditionalFormatCollection,
  Areas
>("ConditionalFormatCollection", {
  items: { of: () => ConditionalFormat, list: touching },
  methods: {
    add: {
      of: () => ConditionalFormat,
      at: (areas, type) => {
        const { book, sheetId } = areas[0]!;
        const kind = oneOf(type as string, Object.values(kinds), "The type");
        const id = book.conditionalFormats.add(areas, kind);
        // A new format has the first say, as in Excel.
        book.conditionalFormats.move(sheetId, id, 0);
        return { book, sheetId, id };
      },
    },
    clearAll: (areas) => {
      for (const { book, sheetId, id } of touching(areas)) book.conditionalFormats.remove(sheetId, id);
    },
    getCount: { answer: (areas) => touching(areas).length },
    getItem: { of: () => ConditionalFormat, at: byId },
    getItemAt: {
      of: () => ConditionalFormat,
      at: (areas, index) => touching(areas)[wholeNumber(index, "The index", 0)] ?? null,
    },
    getItemOrNullObject: { of: () => ConditionalFormat, at: byId },
  },
});
