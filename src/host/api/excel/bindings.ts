import type { Area } from "../../engine/area";
import { intersection } from "../../engine/area";
import type { Binding as BookBinding } from "../../engine/bindings";
import { readText } from "../../engine/cells";
import { resolveArea } from "../../engine/references";
import { activeSheetId, selectedAreas } from "../../engine/selection";
import { refuse } from "../errors";
import type { ClientObject } from "../proxies/clientObject";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { areaGiven, oneOf, text, wholeNumber } from "./arguments";
import { Range } from "./range";
import { Table } from "./table";
import type { WorkbookTarget } from "./workbook";

type BindingTarget = { readonly workbook: WorkbookTarget; readonly id: string };

const bindingOf = ({ workbook, id }: BindingTarget): BookBinding =>
  workbook.book.bindings.get(id) ?? refuse("ItemNotFound", "The binding is gone.");

const areaBound = (target: BindingTarget): Area =>
  target.workbook.book.bindings.areaOf(bindingOf(target)) ?? refuse("InvalidReference", "The bound cells are gone.");

/** Where the binding is now; null once it is gone or its cells are. */
function areaNow({ workbook: { book }, id }: BindingTarget): Area | null {
  const binding = book.bindings.get(id);
  return binding && book.bindings.areaOf(binding);
}

/** The binding as an event brings it along: in a context of its own, with its id. */
function forEvent({ workbook, id }: BindingTarget): Excel.Binding {
  const binding = workbook.freshWorkbook().bindings.getItem(id);
  (binding as unknown as ClientObject).$read({ id: {} });
  return binding;
}

export const Binding: ProxyClass<Excel.Binding, BindingTarget> = proxyClass<Excel.Binding, BindingTarget>("Binding", {
  scalars: {
    id: { get: ({ id }) => id },
    type: { get: (target) => bindingOf(target).type },
  },
  methods: {
    delete: ({ workbook, id }) => workbook.book.bindings.remove(id),
    getRange: {
      of: () => Range,
      at: (target) =>
        bindingOf(target).type === "Range"
          ? areaBound(target)
          : refuse("InvalidOperation", "Only a binding of type Range has one."),
    },
    getTable: {
      of: () => Table,
      at: (target) => {
        const { tableId } = bindingOf(target);
        return tableId === null
          ? refuse("InvalidOperation", "Only a binding of type Table has one.")
          : { book: target.workbook.book, tableId };
      },
    },
    getText: {
      answer: (target) =>
        bindingOf(target).type === "Text"
          ? readText(areaBound(target))[0]![0]!
          : refuse("InvalidOperation", "Only a binding of type Text has one."),
    },
  },
  events: {
    onDataChanged: (target, tell) =>
      target.workbook.book.changes.listen((change) => {
        const area = areaNow(target);
        if (!area) return;
        const touched =
          (change.kind === "cells" && change.content && change.sheetId === area.sheetId && change.rectangle) ||
          (change.kind === "calculated" &&
            change.sheetId === area.sheetId &&
            resolveArea(area.book, change.address, { book: area.book, id: change.sheetId }));
        if (touched && intersection(area, touched)) tell({ binding: forEvent(target) });
      }),
    onSelectionChanged: (target, tell) =>
      target.workbook.book.changes.listen((change) => {
        const area = areaNow(target);
        if (change.kind !== "selection" || !area || activeSheetId(area.book) !== area.sheetId) return;
        for (const selected of selectedAreas(area.book)) {
          const part = intersection(area, selected);
          if (!part) continue;
          tell({
            binding: forEvent(target),
            startRow: part.row - area.row,
            startColumn: part.column - area.column,
            rowCount: part.rowCount,
            columnCount: part.columnCount,
          });
        }
      }),
  },
});

/** Binds an area; a binding of type Table needs a table in exactly these cells or around them. */
function bind(workbook: WorkbookTarget, area: Area, given: unknown, id: unknown): BindingTarget {
  const type = oneOf(String(given), ["Range", "Table", "Text"], "The type of a binding");
  if (type === "Text" && (area.rowCount !== 1 || area.columnCount !== 1)) {
    refuse("InvalidArgument", "A binding of type Text is of one cell.");
  }
  const table = type === "Table" ? workbook.book.tables.at(area.sheetId, area.row, area.column) : null;
  if (type === "Table" && !table) refuse("InvalidArgument", "There is no table in the range.");
  workbook.book.bindings.add({
    id: text(id, "An id"),
    type,
    tableId: table?.id ?? null,
    area: table ? null : area,
  });
  return { workbook, id: text(id, "An id") };
}

const areaFor = ({ book }: WorkbookTarget, given: unknown): Area =>
  areaGiven(book, given, activeSheetId(book), "A range") ?? refuse("InvalidArgument", `"${given}" is no range.`);

const listed = (workbook: WorkbookTarget): BindingTarget[] =>
  workbook.book.bindings.list().map(({ id }) => ({ workbook, id }));

const byId = (workbook: WorkbookTarget, given: unknown): BindingTarget | null => {
  const id = text(given, "A binding's id");
  return workbook.book.bindings.get(id) ? { workbook, id } : null;
};

export const BindingCollection: ProxyClass<Excel.BindingCollection, WorkbookTarget> = proxyClass<
  Excel.BindingCollection,
  WorkbookTarget
>("BindingCollection", {
  items: { of: () => Binding, list: listed },
  scalars: { count: { get: (workbook) => listed(workbook).length } },
  methods: {
    add: {
      of: () => Binding,
      at: (workbook, range, type, id) => bind(workbook, areaFor(workbook, range), type, id),
    },
    addFromNamedItem: {
      of: () => Binding,
      at: (workbook, name, type, id) => {
        const formula = workbook.book.names.formulaOf(text(name, "A name"), activeSheetId(workbook.book));
        const area = formula === null ? null : resolveArea(workbook.book, formula, null);
        return bind(workbook, area ?? refuse("InvalidReference", "The name is of no single range."), type, id);
      },
    },
    addFromSelection: {
      of: () => Binding,
      at: (workbook, type, id) => {
        const areas = selectedAreas(workbook.book);
        return areas.length === 1
          ? bind(workbook, areas[0]!, type, id)
          : refuse("InvalidReference", "Several areas are selected.");
      },
    },
    getCount: { answer: (workbook) => listed(workbook).length },
    getItem: { of: () => Binding, at: byId },
    getItemAt: {
      of: () => Binding,
      at: (workbook, index) => listed(workbook)[wholeNumber(index, "The index", 0)] ?? null,
    },
    getItemOrNullObject: { of: () => Binding, at: byId },
  },
});
