import type { RowTest } from "../../engine/filters";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { dataBody } from "./table";
import type { TableTarget } from "./tableCollections";

type FilterTarget = TableTarget & { readonly index: number };

/** ">=5", "<>x", "=A*": an operator and what is compared, text with the wildcards * and ?. */
function customTest(criterion: string): (text: string, value: unknown) => boolean {
  const [, operator = "", operand = ""] = /^(<>|<=|>=|=|<|>)?(.*)$/s.exec(criterion) ?? [];
  const number = operand.trim() === "" ? Number.NaN : Number(operand);
  const pattern = operand
    .replace(/[.+^${}()|[\]\\]/g, "\\$&")
    .replace(/\*/g, ".*")
    .replace(/\?/g, ".");
  const like = new RegExp(`^${pattern}$`, "is");
  const equal = (text: string, value: unknown) =>
    Number.isNaN(number) ? like.test(text) : value === number || text === operand;
  const compared = (value: unknown, test: (a: number) => boolean) =>
    typeof value === "number" && !Number.isNaN(number) && test(value - number);
  switch (operator) {
    case "<>":
      return (text, value) => !equal(text, value);
    case "<":
      return (_text, value) => compared(value, (difference) => difference < 0);
    case "<=":
      return (_text, value) => compared(value, (difference) => difference <= 0);
    case ">":
      return (_text, value) => compared(value, (difference) => difference > 0);
    case ">=":
      return (_text, value) => compared(value, (difference) => difference >= 0);
    default:
      return equal;
  }
}

const numbers = (all: readonly unknown[]): number[] => all.filter((value) => typeof value === "number") as number[];

/** Which rows a filter's criteria let through. */
export function rowTest(criteria: Excel.FilterCriteria): RowTest {
  const count = Number(criteria.criterion1);
  switch (criteria.filterOn as string) {
    case "Values": {
      const wanted = new Set(
        (criteria.values ?? []).map((value) =>
          typeof value === "string"
            ? value
            : refuse("NotImplemented", "The embedded host does not filter by parts of dates."),
        ),
      );
      return (text) => wanted.has(text);
    }
    case "Custom": {
      const first = customTest(criteria.criterion1 ?? "");
      if (criteria.criterion2 === undefined) return first;
      const second = customTest(criteria.criterion2);
      return criteria.operator === "Or"
        ? (text, value) => first(text, value) || second(text, value)
        : (text, value) => first(text, value) && second(text, value);
    }
    case "TopItems":
    case "TopPercent":
    case "BottomItems":
    case "BottomPercent": {
      const top = String(criteria.filterOn).startsWith("Top");
      return (_text, value, all) => {
        const sorted = numbers(all).sort((a, b) => (top ? b - a : a - b));
        const kept = String(criteria.filterOn).endsWith("Percent") ? Math.floor((sorted.length * count) / 100) : count;
        const limit = sorted[Math.max(1, kept) - 1];
        return typeof value === "number" && limit !== undefined && (top ? value >= limit : value <= limit);
      };
    }
    case "Dynamic": {
      const above = criteria.dynamicCriteria === "AboveAverage";
      if (!above && criteria.dynamicCriteria !== "BelowAverage") {
        return refuse("NotImplemented", `The embedded host does not offer the filter ${criteria.dynamicCriteria}.`);
      }
      return (_text, value, all) => {
        const known = numbers(all);
        const mean = known.reduce((sum, number) => sum + number, 0) / known.length;
        return typeof value === "number" && (above ? value > mean : value < mean);
      };
    }
    default:
      return refuse("NotImplemented", `The embedded host does not filter on ${criteria.filterOn}.`);
  }
}

function filter({ book, tableId, index }: FilterTarget, criteria: Excel.FilterCriteria): void {
  book.filters.open(tableId, () => dataBody({ book, tableId }));
  book.filters.set(tableId, index, rowTest(criteria), criteria);
}

const on = (filterOn: string, more: object = {}) => ({ filterOn, ...more }) as Excel.FilterCriteria;

export const Filter: ProxyClass<Excel.Filter, FilterTarget> = proxyClass<Excel.Filter, FilterTarget>("Filter", {
  scalars: {
    criteria: { get: ({ book, tableId, index }) => book.filters.criteriaOf(tableId, index) as Excel.FilterCriteria },
  },
  methods: {
    apply: { reads: true, act: (target, criteria) => filter(target, criteria as Excel.FilterCriteria) },
    applyBottomItemsFilter: {
      reads: true,
      act: (target, count) => filter(target, on("BottomItems", { criterion1: String(count) })),
    },
    applyBottomPercentFilter: {
      reads: true,
      act: (target, percent) => filter(target, on("BottomPercent", { criterion1: String(percent) })),
    },
    applyCustomFilter: {
      reads: true,
      act: (target, criterion1, criterion2, operator) =>
        filter(
          target,
          on("Custom", { criterion1, ...(criterion2 ? { criterion2, operator: operator ?? "And" } : {}) }),
        ),
    },
    applyDynamicFilter: {
      reads: true,
      act: (target, criteria) => filter(target, on("Dynamic", { dynamicCriteria: criteria })),
    },
    applyTopItemsFilter: {
      reads: true,
      act: (target, count) => filter(target, on("TopItems", { criterion1: String(count) })),
    },
    applyTopPercentFilter: {
      reads: true,
      act: (target, percent) => filter(target, on("TopPercent", { criterion1: String(percent) })),
    },
    applyValuesFilter: { reads: true, act: (target, values) => filter(target, on("Values", { values })) },
    clear: ({ book, tableId, index }) => book.filters.clear(tableId, index),
  },
});
