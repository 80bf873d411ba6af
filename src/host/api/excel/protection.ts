import type { Book } from "../../engine/book";
import type { Sheet } from "../../engine/sheets";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { text } from "./arguments";

const passwordOf = (given: unknown): string => (given === undefined || given === null ? "" : text(given, "A password"));

/** What may be done on a protected sheet when nothing is said of it. */
const standardOptions = {
  allowAutoFilter: false,
  allowDeleteColumns: false,
  allowDeleteRows: false,
  allowEditObjects: false,
  allowEditScenarios: false,
  allowFormatCells: false,
  allowFormatColumns: false,
  allowFormatRows: false,
  allowInsertColumns: false,
  allowInsertHyperlinks: false,
  allowInsertRows: false,
  allowPivotTables: false,
  allowSort: false,
  selectionMode: "Normal",
} as const;

export const WorksheetProtection: ProxyClass<Excel.WorksheetProtection, Sheet> = proxyClass<
  Excel.WorksheetProtection,
  Sheet
>("WorksheetProtection", {
  scalars: {
    options: {
      get: ({ book, id }) =>
        ({ ...standardOptions, ...book.protection.sheet(id)?.options }) as Excel.WorksheetProtectionOptions,
    },
    protected: { get: ({ book, id }) => book.protection.sheet(id) !== null },
  },
  methods: {
    protect: ({ book, id }, options, password) =>
      book.protection.protectSheet(id, { ...options }, passwordOf(password)),
    unprotect: ({ book, id }, password) => book.protection.unprotectSheet(id, passwordOf(password)),
  },
});

export const WorkbookProtection: ProxyClass<Excel.WorkbookProtection, Book> = proxyClass<
  Excel.WorkbookProtection,
  Book
>("WorkbookProtection", {
  scalars: { protected: { get: (book) => book.protection.isStructureProtected } },
  methods: {
    protect: (book, password) => book.protection.protectStructure(passwordOf(password)),
    unprotect: (book, password) => book.protection.unprotectStructure(passwordOf(password)),
  },
});
