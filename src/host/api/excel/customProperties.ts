import type { Book } from "../../engine/book";
import type { Sheet } from "../../engine/sheets";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { text } from "./arguments";

type PropertyTarget = { readonly book: Book; readonly store: Map<string, string>; readonly key: string };

/** Key and value pairs of a sheet; keys are the same in any letter case. */
const storeOf = ({ book, id }: Sheet): Map<string, string> => book.state.sheetProperties(id);

const found = (sheet: Sheet, given: unknown): PropertyTarget | null => {
  const store = storeOf(sheet);
  const wanted = text(given, "A key").toLowerCase();
  const key = [...store.keys()].find((known) => known.toLowerCase() === wanted);
  return key === undefined ? null : { book: sheet.book, store, key };
};

const listed = (sheet: Sheet): PropertyTarget[] =>
  [...storeOf(sheet).keys()].map((key) => ({ book: sheet.book, store: storeOf(sheet), key }));

export const WorksheetCustomProperty: ProxyClass<Excel.WorksheetCustomProperty, PropertyTarget> = proxyClass<
  Excel.WorksheetCustomProperty,
  PropertyTarget
>("WorksheetCustomProperty", {
  scalars: {
    key: { get: ({ key }) => key },
    value: {
      get: ({ store, key }) => store.get(key) ?? refuse("ItemNotFound"),
      set: ({ store, key }, value) => {
        store.set(key, text(value, "A value"));
      },
    },
  },
  methods: {
    delete: ({ store, key }) => {
      store.delete(key);
    },
  },
});

export const WorksheetCustomPropertyCollection: ProxyClass<Excel.WorksheetCustomPropertyCollection, Sheet> = proxyClass<
  Excel.WorksheetCustomPropertyCollection,
  Sheet
>("WorksheetCustomPropertyCollection", {
  items: { of: () => WorksheetCustomProperty, list: listed },
  methods: {
    add: {
      of: () => WorksheetCustomProperty,
      at: (sheet, key, value) => {
        const property = found(sheet, key) ?? { book: sheet.book, store: storeOf(sheet), key };
        property.store.set(property.key, text(value, "A value"));
        return property;
      },
    },
    getCount: { answer: (sheet) => listed(sheet).length },
    getItem: { of: () => WorksheetCustomProperty, at: found },
    getItemOrNullObject: { of: () => WorksheetCustomProperty, at: found },
  },
});
