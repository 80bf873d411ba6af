import type { Book } from "../../engine/book";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass, type Scalar } from "../proxies/proxyClass";
import { text } from "./arguments";

const kept = (name: string): Scalar<Book, string> => ({
  get: (book) => book.state.documentProperties.get(name) ?? "",
  set: (book, value) => {
    book.state.documentProperties.set(name, text(value, `The ${name}`));
  },
});

export const DocumentProperties: ProxyClass<Excel.DocumentProperties, Book> = proxyClass<
  Excel.DocumentProperties,
  Book
>("DocumentProperties", {
  scalars: {
    author: kept("author"),
    category: kept("category"),
    comments: kept("comments"),
    company: kept("company"),
    creationDate: { get: (book) => new Date(book.state.created) },
    keywords: kept("keywords"),
    lastAuthor: { get: (book) => book.state.documentProperties.get("lastAuthor") ?? "" },
    manager: kept("manager"),
    revisionNumber: {
      get: (book) => Number(book.state.documentProperties.get("revisionNumber") ?? 0),
      set: (book, value) => {
        book.state.documentProperties.set("revisionNumber", String(value));
      },
    },
    subject: kept("subject"),
    title: kept("title"),
  },
  objects: { custom: { of: () => CustomPropertyCollection, at: (book) => book } },
});

type PropertyTarget = { readonly book: Book; readonly key: string };

const found = (book: Book, given: unknown): PropertyTarget | null => {
  const wanted = text(given, "A key").toLowerCase();
  const key = [...book.state.customProperties.keys()].find((known) => known.toLowerCase() === wanted);
  return key === undefined ? null : { book, key };
};

const listed = (book: Book): PropertyTarget[] => [...book.state.customProperties.keys()].map((key) => ({ book, key }));

/** A date made in any window. */
const isDate = (value: unknown): boolean => Object.prototype.toString.call(value) === "[object Date]";

function checked(value: unknown): unknown {
  if (typeof value === "string" && value.length > 255) refuse("InvalidArgument", "A value has at most 255 letters.");
  const plain = ["string", "number", "boolean"].includes(typeof value) || isDate(value);
  return plain ? value : refuse("InvalidArgument", "A value is text, a number, a truth value or a date.");
}

export const CustomProperty: ProxyClass<Excel.CustomProperty, PropertyTarget> = proxyClass<
  Excel.CustomProperty,
  PropertyTarget
>("CustomProperty", {
  scalars: {
    key: { get: ({ key }) => key },
    type: {
      get: ({ book, key }) => {
        const value = book.state.customProperties.get(key);
        const type =
          typeof value === "number"
            ? "Number"
            : typeof value === "boolean"
              ? "Boolean"
              : isDate(value)
                ? "Date"
                : "String";
        return type as Excel.DocumentPropertyType;
      },
    },
    value: {
      get: ({ book, key }) => book.state.customProperties.get(key) ?? refuse("ItemNotFound"),
      set: ({ book, key }, value) => {
        book.state.customProperties.set(key, checked(value));
      },
    },
  },
  methods: {
    delete: ({ book, key }) => {
      book.state.customProperties.delete(key);
    },
  },
});

export const CustomPropertyCollection: ProxyClass<Excel.CustomPropertyCollection, Book> = proxyClass<
  Excel.CustomPropertyCollection,
  Book
>("CustomPropertyCollection", {
  items: { of: () => CustomProperty, list: listed },
  methods: {
    add: {
      of: () => CustomProperty,
      at: (book, key, value) => {
        const property = found(book, key) ?? { book, key };
        book.state.customProperties.set(property.key, checked(value));
        return property;
      },
    },
    deleteAll: (book) => book.state.customProperties.clear(),
    getCount: { answer: (book) => book.state.customProperties.size },
    getItem: { of: () => CustomProperty, at: found },
    getItemOrNullObject: { of: () => CustomProperty, at: found },
  },
});
