import { cellAddress } from "../../engine/addresses";
import type { Area } from "../../engine/area";
import { readFormats, readFormulas, readText, readTypes, readValues } from "../../engine/cells";
import { isColumnHidden, isRowHidden } from "../../engine/layout";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { wholeNumber } from "./arguments";
import { formulasInR1C1 } from "./r1c1";
import { Range } from "./range";

/** Keeps only what stands in visible rows and columns. */
function visible<T>(area: Area, grid: readonly (readonly T[])[]): T[][] {
  return grid
    .filter((_, r) => !isRowHidden(area, area.row + r))
    .map((row) => row.filter((_, c) => !isColumnHidden(area, area.column + c)));
}

const addresses = (area: Area) =>
  Array.from({ length: area.rowCount }, (_, r) =>
    Array.from({ length: area.columnCount }, (_, c) => cellAddress(area.row + r, area.column + c)),
  );

export const RangeView: ProxyClass<Excel.RangeView, Area> = proxyClass<Excel.RangeView, Area>("RangeView", {
  scalars: {
    cellAddresses: { get: (area) => visible(area, addresses(area)) },
    columnCount: { get: (area) => visible(area, addresses({ ...area, rowCount: 1 }))[0]?.length ?? 0 },
    formulas: { get: (area) => visible(area, readFormulas(area)) },
    formulasLocal: { get: (area) => visible(area, readFormulas(area)) },
    formulasR1C1: {
      get: (area) => visible(area, formulasInR1C1(area)),
    },
    index: { get: (area) => area.row },
    numberFormat: { get: (area) => visible(area, readFormats(area)) },
    rowCount: { get: (area) => visible(area, addresses(area)).length },
    text: { get: (area) => visible(area, readText(area)) as unknown as string[][] },
    valueTypes: { get: (area) => visible(area, readTypes(area)) as unknown as Excel.RangeValueType[][] },
    values: { get: (area) => visible(area, readValues(area)) },
  },
  methods: { getRange: { of: () => Range, at: (area) => area } },
  objects: { rows: { of: () => RangeViewCollection, at: (area) => area } },
});

const visibleRows = (area: Area): Area[] =>
  Array.from({ length: area.rowCount }, (_, r) => ({ ...area, row: area.row + r, rowCount: 1 })).filter(
    (row) => !isRowHidden(row, row.row),
  );

export const RangeViewCollection: ProxyClass<Excel.RangeViewCollection, Area> = proxyClass<
  Excel.RangeViewCollection,
  Area
>("RangeViewCollection", {
  items: { of: () => RangeView, list: visibleRows },
  methods: {
    getCount: { answer: (area) => visibleRows(area).length },
    getItemAt: {
      of: () => RangeView,
      at: (area, index) => visibleRows(area)[wholeNumber(index, "The index", 0)] ?? null,
    },
  },
});
