import type { Book } from "../../engine/book";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { text } from "./arguments";
import type { WorkbookTarget } from "./workbook";

type SettingTarget = { readonly book: Book; readonly key: string };

const found = (book: Book, given: unknown): SettingTarget | null => {
  const key = text(given, "A key");
  return book.state.settings.has(key) ? { book, key } : null;
};

/** Dates come back as dates, everything else as JSON would bring it back. */
const copied = (value: unknown): unknown =>
  Object.prototype.toString.call(value) === "[object Date]"
    ? new Date(value as Date)
    : value === undefined
      ? null
      : JSON.parse(JSON.stringify(value));

export const Setting: ProxyClass<Excel.Setting, SettingTarget> = proxyClass<Excel.Setting, SettingTarget>("Setting", {
  scalars: {
    key: { get: ({ key }) => key },
    value: {
      get: ({ book, key }) =>
        book.state.settings.has(key) ? copied(book.state.settings.get(key)) : refuse("ItemNotFound"),
      set: ({ book, key }, value) => {
        book.state.set(key, copied(value));
      },
    },
  },
  methods: {
    delete: ({ book, key }) => {
      book.state.remove(key);
    },
  },
});

const listed = (book: Book): SettingTarget[] => [...book.state.settings.keys()].map((key) => ({ book, key }));

export const SettingCollection: ProxyClass<Excel.SettingCollection, WorkbookTarget> = proxyClass<
  Excel.SettingCollection,
  WorkbookTarget
>("SettingCollection", {
  items: { of: () => Setting, list: ({ book }) => listed(book) },
  methods: {
    add: {
      of: () => Setting,
      at: ({ book }, key, value) => {
        book.state.set(text(key, "A key"), copied(value));
        return { book, key };
      },
    },
    getCount: { answer: ({ book }) => book.state.settings.size },
    getItem: { of: () => Setting, at: ({ book }, key) => found(book, key) },
    getItemOrNullObject: { of: () => Setting, at: ({ book }, key) => found(book, key) },
  },
  events: {
    // The event brings the settings along, for the handler to ask what they are.
    onSettingsChanged: ({ book, freshWorkbook }, tell) =>
      book.state.listen(() => {
        if (book.changes.enabled) tell({ settings: freshWorkbook().settings });
      }),
  },
});
