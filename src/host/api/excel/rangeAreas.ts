import type { Area } from "../../engine/area";
import { cellCount, intersection, isEntireColumn, isEntireRow, sheetColumns, sheetRows } from "../../engine/area";
import { copyCells } from "../../engine/copy";
import { addressOf, sheetOf } from "../../engine/references";
import { select } from "../../engine/selection";
import { usedPart } from "../../engine/usedRange";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { oneOf, onSheet, wholeNumber } from "./arguments";
import { clearAreas, clearOrReset } from "./cellControl";
import { ConditionalFormatCollection } from "./conditionalFormats";
import { DataValidation } from "./dataValidation";
import { areaOf, Range } from "./range";
import { RangeFormat } from "./rangeFormat";
import { specialCells } from "./search";
import { cellStyle } from "./styles";
import { TableScopedCollection } from "./tableCollections";
import { Worksheet } from "./worksheet";

/** Several areas of one sheet. */
export type Areas = readonly Area[];

export const areasTarget = (areas: readonly Area[]): Areas => areas;

const orNull = (areas: readonly Area[]): Areas | null => (areas.length ? areas : null);
const shared = <T>(areas: Areas, read: (area: Area) => T): T | null => {
  const values = new Set(areas.map(read));
  return values.size === 1 ? [...values][0]! : null;
};

const overlaps = (areas: Areas, other: unknown): Areas | null => {
  const others = Array.isArray(other) ? (other as Areas) : [areaOf(other, areas[0]!)];
  return orNull(
    areas.flatMap((area) =>
      others.flatMap((second) => {
        const part = second.sheetId === area.sheetId ? intersection(area, second) : null;
        return part ? [{ ...area, ...part }] : [];
      }),
    ),
  );
};

export const RangeAreas: ProxyClass<Excel.RangeAreas, Areas> = proxyClass<Excel.RangeAreas, Areas>("RangeAreas", {
  scalars: {
    address: { get: (areas) => areas.map(addressOf).join(",") },
    addressLocal: { get: (areas) => areas.map(addressOf).join(",") },
    areaCount: { get: (areas) => areas.length },
    cellCount: { get: (areas) => areas.reduce((sum, area) => sum + cellCount(area), 0) },
    isEntireColumn: { get: (areas) => shared(areas, isEntireColumn) },
    isEntireRow: { get: (areas) => shared(areas, isEntireRow) },
    style: cellStyle,
  },
  objects: {
    areas: { of: () => RangeCollection, at: (areas) => areas },
    conditionalFormats: { of: () => ConditionalFormatCollection, at: (areas) => areas },
    dataValidation: { of: () => DataValidation, at: (areas) => areas },
    format: { of: () => RangeFormat, at: (areas) => areas },
    worksheet: { of: () => Worksheet, at: (areas) => sheetOf(areas[0]!) },
  },
  methods: {
    calculate() {},
    clear: clearAreas,
    clearOrResetContents: clearOrReset,
    copyFrom: {
      reads: true,
      act(areas, source, copyType, skipBlanks, transpose) {
        const kind = oneOf(
          (copyType ?? "All") as string,
          ["All", "Values", "Formulas", "Formats"] as const,
          "What to copy",
        );
        for (const area of areas) {
          copyCells(areaOf(source, area), area, {
            kind,
            skipBlanks: skipBlanks ?? false,
            transpose: transpose ?? false,
          });
        }
      },
    },
    getEntireColumn: {
      of: () => RangeAreas,
      at: (areas) => areas.map((area) => ({ ...area, row: 0, rowCount: sheetRows })),
    },
    getEntireRow: {
      of: () => RangeAreas,
      at: (areas) => areas.map((area) => ({ ...area, column: 0, columnCount: sheetColumns })),
    },
    getIntersection: { of: () => RangeAreas, at: overlaps },
    getIntersectionOrNullObject: { of: () => RangeAreas, at: overlaps },
    getOffsetRangeAreas: {
      of: () => RangeAreas,
      at: (areas, rows, columns) =>
        areas.map((area) =>
          onSheet(area, {
            ...area,
            row: area.row + wholeNumber(rows, "The row offset"),
            column: area.column + wholeNumber(columns, "The column offset"),
          }),
        ),
    },
    getSpecialCells: {
      of: () => RangeAreas,
      reads: true,
      at: (areas, kind, type) => orNull(specialCells(areas, String(kind), type ? String(type) : null)),
    },
    getSpecialCellsOrNullObject: {
      of: () => RangeAreas,
      reads: true,
      at: (areas, kind, type) => orNull(specialCells(areas, String(kind), type ? String(type) : null)),
    },
    getTables: {
      of: () => TableScopedCollection,
      at: (areas, fullyContained) => ({
        book: areas[0]!.book,
        area: areas[0]!,
        fullyContained: fullyContained ?? false,
      }),
    },
    getUsedRangeAreas: { of: () => RangeAreas, reads: true, at: (areas, valuesOnly) => usedParts(areas, valuesOnly) },
    getUsedRangeAreasOrNullObject: {
      of: () => RangeAreas,
      reads: true,
      at: (areas, valuesOnly) => usedParts(areas, valuesOnly),
    },
    select: (areas) => select(areas),
    setDirty() {},
  },
});

const usedParts = (areas: Areas, valuesOnly: boolean | undefined): Areas | null =>
  orNull(areas.flatMap((area) => usedPart(area.book, area.sheetId, area, valuesOnly ?? false) ?? []));

export const RangeCollection: ProxyClass<Excel.RangeCollection, Areas> = proxyClass<Excel.RangeCollection, Areas>(
  "RangeCollection",
  {
    items: { of: () => Range, list: (areas) => areas },
    methods: {
      getCount: { answer: (areas) => areas.length },
      getItemAt: { of: () => Range, at: (areas, index) => areas[wholeNumber(index, "The index", 0)] ?? null },
    },
  },
);
