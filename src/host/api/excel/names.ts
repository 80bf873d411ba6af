import { absoluteAddress, quotedSheet } from "../../engine/addresses";
import type { Area } from "../../engine/area";
import type { Book } from "../../engine/book";
import { readTypes, readValues } from "../../engine/cells";
import { type DefinedName, nameFault } from "../../engine/names";
import { addressOf, resolveArea } from "../../engine/references";
import { type Sheet, nameOf as sheetName } from "../../engine/sheets";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { text } from "./arguments";
import { Range } from "./range";
import { Worksheet } from "./worksheet";

type NamesOf = { readonly book: Book; readonly sheetId: string | null };
type NameTarget = { readonly book: Book; readonly nameId: string };

const nameOf = ({ book, nameId }: NameTarget): DefinedName =>
  book.names.get(nameId) ?? refuse("ItemNotFound", "The name is gone.");

const areaNamed = (target: NameTarget): Area | null => {
  const { formula } = nameOf(target);
  return resolveArea(target.book, formula, null);
};

/** The absolute address a name keeps: "=Sheet1!$A$1:$B$2". */
const absolute = (area: Area): string =>
  `=${quotedSheet(sheetName({ book: area.book, id: area.sheetId }))}!${absoluteAddress(area)}`;

/** What a constant is worth; text in quotes, numbers and truth values. Calculations are looked at through a cell. */
function constantOf(formula: string): { value: unknown; type: string } {
  const body = formula.slice(1).trim();
  if (/^".*"$/s.test(body)) return { value: body.slice(1, -1).replaceAll('""', '"'), type: "String" };
  if (/^(TRUE|FALSE)$/i.test(body)) return { value: /^true$/i.test(body), type: "Boolean" };
  if (body !== "" && Number.isFinite(Number(body))) {
    return { value: Number(body), type: Number.isInteger(Number(body)) ? "Integer" : "Double" };
  }
  // ASSUMPTION: a calculation that is no constant answers with its text; Excel answers with its result.
  return { value: body, type: "String" };
}

export const NamedItem: ProxyClass<Excel.NamedItem, NameTarget> = proxyClass<Excel.NamedItem, NameTarget>("NamedItem", {
  scalars: {
    comment: {
      get: (target) => nameOf(target).comment,
      set: (target, comment) => target.book.names.change(nameOf(target), { comment: text(comment, "A comment") }),
    },
    formula: {
      get: (target) => nameOf(target).formula,
      set: (target, formula) =>
        target.book.names.change(nameOf(target), { formula: checkFormula(target.book, formula) }),
    },
    name: { get: (target) => nameOf(target).name },
    scope: { get: (target) => (nameOf(target).sheetId === null ? "Workbook" : "Worksheet") },
    type: {
      get: (target) => (areaNamed(target) ? "Range" : constantOf(nameOf(target).formula).type) as Excel.NamedItemType,
    },
    value: {
      get: (target) => {
        const area = areaNamed(target);
        return area ? addressOf(area) : constantOf(nameOf(target).formula).value;
      },
    },
    visible: {
      get: (target) => nameOf(target).visible,
      set: (target, visible) => target.book.names.change(nameOf(target), { visible }),
    },
  },
  objects: {
    arrayValues: { of: () => NamedItemArrayValues, at: (target) => areaNamed(target) },
    worksheet: { of: () => Worksheet, at: (target) => sheetOfName(target) ?? refuse("ItemNotFound") },
    worksheetOrNullObject: { of: () => Worksheet, at: sheetOfName },
  },
  methods: {
    delete: (target) => target.book.names.remove(nameOf(target)),
    getRange: { of: () => Range, at: (target) => areaNamed(target) ?? refuse("InvalidReference") },
    getRangeOrNullObject: { of: () => Range, at: areaNamed },
  },
});

function sheetOfName(target: NameTarget): Sheet | null {
  const { sheetId } = nameOf(target);
  return sheetId === null ? null : { book: target.book, id: sheetId };
}

export const NamedItemArrayValues: ProxyClass<Excel.NamedItemArrayValues, Area> = proxyClass<
  Excel.NamedItemArrayValues,
  Area
>("NamedItemArrayValues", {
  scalars: {
    types: { get: (area) => readTypes(area) as unknown as Excel.RangeValueType[][] },
    values: { get: readValues },
  },
});

function checkFormula(book: Book, given: unknown): string {
  const formula = typeof given === "string" && !given.startsWith("=") ? `=${given}` : text(given, "A formula");
  const place = { sheetId: book.workbook.getSheets()[0]!.getSheetId(), row: 0, column: 0 };
  const fault = book.formulas.faultOf(formula, place);
  return fault ? refuse("InvalidArgument", fault) : formula;
}

const listed = ({ book, sheetId }: NamesOf): NameTarget[] =>
  book.names
    .list()
    .filter((name) => name.sheetId === sheetId)
    .map(({ id }) => ({ book, nameId: id }));

const named = ({ book, sheetId }: NamesOf, given: unknown): NameTarget | null => {
  const found = book.names.named(text(given, "A name"), sheetId);
  return found && { book, nameId: found.id };
};

function add({ book, sheetId }: NamesOf, given: unknown, formula: string, comment: unknown): NameTarget {
  const name = text(given, "A name");
  const fault = nameFault(name);
  if (fault) refuse("InvalidArgument", fault);
  if (book.names.named(name, sheetId) || book.tables.named(name)) refuse("ItemAlreadyExists", "The name exists.");
  return { book, nameId: book.names.add(name, formula, typeof comment === "string" ? comment : "", sheetId) };
}

export const NamedItemCollection: ProxyClass<Excel.NamedItemCollection, NamesOf> = proxyClass<
  Excel.NamedItemCollection,
  NamesOf
>("NamedItemCollection", {
  items: { of: () => NamedItem, list: listed },
  methods: {
    add: {
      of: () => NamedItem,
      at: (names, name, reference, comment) => {
        if (typeof reference === "object" && reference !== null) {
          return add(names, name, absolute(reference as Area), comment);
        }
        if (typeof reference === "string" && !reference.startsWith("=")) {
          return add(names, name, `="${reference.replaceAll('"', '""')}"`, comment);
        }
        const formula = typeof reference === "string" ? reference : `=${String(reference).toUpperCase()}`;
        const area = resolveArea(names.book, formula, null);
        return add(names, name, area ? absolute(area) : checkFormula(names.book, formula), comment);
      },
    },
    addFormulaLocal: {
      of: () => NamedItem,
      at: (names, name, formula, comment) => add(names, name, checkFormula(names.book, formula), comment),
    },
    getCount: { answer: (names) => listed(names).length },
    getItem: { of: () => NamedItem, at: named },
    getItemOrNullObject: { of: () => NamedItem, at: named },
  },
});
