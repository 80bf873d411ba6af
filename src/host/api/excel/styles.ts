import type { Book } from "../../engine/book";
import { uniformMark } from "../../engine/cellMarks";
import type { NamedStyle, StyleParts } from "../../engine/namedStyles";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass, type Scalar } from "../proxies/proxyClass";
import { enumerations } from "../published/enumerations";
import { alignment } from "./alignment";
import { text, wholeNumber } from "./arguments";
import { type NamedStyleTarget, styleOf, truth } from "./looked";
import type { Areas } from "./rangeAreas";
import { RangeBorderCollection } from "./rangeBorders";
import { cellProtection, RangeFill, RangeFont } from "./rangeFormat";

/** "Heading1", as Excel.BuiltInStyle writes it, and "Heading 1", as the workbook does. */
const otherNames: Readonly<Record<string, string>> = {
  WholeComma: "Comma [0]",
  WholeDollar: "Currency [0]",
  Hlink: "Hyperlink",
  HlinkTrav: "Followed Hyperlink",
};

/** A style by the workbook's name for it, or by the API's. */
export function styleNamed(book: Book, given: unknown): NamedStyle | null {
  const name = text(given, "A style's name");
  const tint = /^(Accent\d)_(\d0)$/.exec(name);
  const wanted = otherNames[name] ?? (tint ? `${tint[2]}% - ${tint[1]}` : name);
  const bare = (one: string) => one.replaceAll(" ", "").toLowerCase();
  return (
    book.namedStyles.named(wanted) ??
    book.namedStyles.list().find((style) => style.isBuiltIn && bare(style.name) === bare(wanted)) ??
    null
  );
}

/** `Range.style`: the name of the style all cells have, null where they differ. */
export const cellStyle = {
  get: (areas: Areas): string | null => uniformMark(areas, "style", (name) => name ?? "Normal"),
  set(areas: Areas, name: string): void {
    const { book } = areas[0]!;
    const style = styleNamed(book, name);
    if (!style && Object.values(enumerations.BuiltInStyle!).includes(name)) {
      refuse("NotImplemented", `The embedded host does not offer the style ${name}.`);
    }
    if (!style) refuse("InvalidArgument", `There is no style "${name}".`);
    else book.namedStyles.apply(areas, style);
  },
};

/** Whether a style sets a part of the look. */
const includes = (part: keyof StyleParts): Scalar<NamedStyleTarget, boolean> => ({
  get: (target) => styleOf(target).parts[part],
  set: (target, isSet) => target.book.namedStyles.change(styleOf(target), { parts: { [part]: truth(isSet) } }),
});

const numberFormat: Scalar<NamedStyleTarget, string> = {
  get: (target) => styleOf(target).look.n?.pattern || "General",
  set: (target, format) =>
    target.book.namedStyles.change(styleOf(target), { look: { n: { pattern: text(format, "A number format") } } }),
};

export const Style: ProxyClass<Excel.Style, NamedStyleTarget> = proxyClass<Excel.Style, NamedStyleTarget>("Style", {
  scalars: {
    ...alignment,
    ...cellProtection,
    builtIn: { get: (target) => styleOf(target).isBuiltIn },
    includeAlignment: includes("alignment"),
    includeBorder: includes("border"),
    includeFont: includes("font"),
    includeNumber: includes("number"),
    includePatterns: includes("patterns"),
    includeProtection: includes("protection"),
    name: { get: (target) => styleOf(target).name },
    numberFormat,
    numberFormatLocal: numberFormat,
  },
  objects: {
    borders: { of: () => RangeBorderCollection, at: (target) => target },
    fill: { of: () => RangeFill, at: (target) => target },
    font: { of: () => RangeFont, at: (target) => target },
  },
  methods: {
    delete(target) {
      const style = styleOf(target);
      if (style.name === "Normal") refuse("InvalidOperation", "The style Normal stays.");
      target.book.namedStyles.remove(style);
    },
  },
});

const found = (book: Book, name: unknown): NamedStyleTarget | null => {
  const style = styleNamed(book, name);
  return style && { book, name: style.name };
};

const listed = (book: Book): NamedStyleTarget[] => book.namedStyles.list().map(({ name }) => ({ book, name }));

export const StyleCollection: ProxyClass<Excel.StyleCollection, Book> = proxyClass<Excel.StyleCollection, Book>(
  "StyleCollection",
  {
    items: { of: () => Style, list: listed },
    methods: {
      add(book, name) {
        if (text(name, "A style's name").trim() === "") refuse("InvalidArgument", "A style's name is not empty.");
        if (styleNamed(book, name)) refuse("ItemAlreadyExists", "A style of this name exists.");
        book.namedStyles.add(name);
      },
      getCount: { answer: (book) => listed(book).length },
      getItem: { of: () => Style, at: found },
      getItemAt: { of: () => Style, at: (book, index) => listed(book)[wholeNumber(index, "The index", 0)] ?? null },
      getItemOrNullObject: { of: () => Style, at: found },
    },
  },
);
