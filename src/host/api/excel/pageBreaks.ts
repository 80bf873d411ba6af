import type { Area } from "../../engine/area";
import { wholeSheet } from "../../engine/references";
import type { Sheet } from "../../engine/sheets";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { wholeNumber } from "./arguments";
import { areaOf, Range } from "./range";

/** The breaks between pages above rows ("rows") or left of columns of a sheet. */
type BreaksTarget = { readonly sheet: Sheet; readonly between: "rows" | "columns" };
/** One of them: before the line of this number, from 0. */
type BreakTarget = BreaksTarget & { readonly line: number };

const linesOf = ({ sheet, between }: BreaksTarget): readonly number[] => {
  const { rowBreaks, columnBreaks } = sheet.book.pageSetups.of(sheet.id);
  return between === "rows" ? rowBreaks : columnBreaks;
};

const change = ({ sheet, between }: BreaksTarget, lines: readonly number[]): void =>
  sheet.book.pageSetups.change(sheet.id, between === "rows" ? { rowBreaks: lines } : { columnBreaks: lines });

const breaksOf = (target: BreaksTarget): BreakTarget[] => linesOf(target).map((line) => ({ ...target, line }));

const cellAfter = ({ sheet, between, line }: BreakTarget): Area => ({
  ...wholeSheet(sheet),
  row: between === "rows" ? line : 0,
  column: between === "rows" ? 0 : line,
  rowCount: 1,
  columnCount: 1,
});

export const PageBreak: ProxyClass<Excel.PageBreak, BreakTarget> = proxyClass<Excel.PageBreak, BreakTarget>(
  "PageBreak",
  {
    scalars: {
      // ASSUMPTION: the indexes are those of the cell after the break, from 0.
      columnIndex: { get: (target) => cellAfter(target).column },
      rowIndex: { get: (target) => cellAfter(target).row },
    },
    methods: {
      delete: (target) =>
        change(
          target,
          linesOf(target).filter((line) => line !== target.line),
        ),
      getCellAfterBreak: { of: () => Range, at: cellAfter },
    },
  },
);

const lineOf = ({ sheet, between }: BreaksTarget, given: unknown): number => {
  const area = areaOf(given, wholeSheet(sheet));
  if (area.sheetId !== sheet.id) refuse("InvalidArgument", "The range is on another worksheet.");
  const line = between === "rows" ? area.row : area.column;
  return line > 0 ? line : refuse("InvalidArgument", "Before the first row or column no page can end.");
};

export const PageBreakCollection: ProxyClass<Excel.PageBreakCollection, BreaksTarget> = proxyClass<
  Excel.PageBreakCollection,
  BreaksTarget
>("PageBreakCollection", {
  items: { of: () => PageBreak, list: breaksOf },
  methods: {
    add: {
      of: () => PageBreak,
      first: async (target, given) =>
        change(
          target,
          [...new Set([...linesOf(target), lineOf(target, given)])].sort((one, other) => one - other),
        ),
      at: (target, given) => ({ ...target, line: lineOf(target, given) }),
    },
    getCount: { answer: (target) => linesOf(target).length },
    getItem: {
      of: () => PageBreak,
      at: (target, index) => breaksOf(target)[wholeNumber(index, "The index", 0)] ?? null,
    },
    removePageBreaks: (target) => change(target, []),
  },
});
