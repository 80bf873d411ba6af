import type { Area } from "../../engine/area";
import { addressOf } from "../../engine/references";
import { sheetNamed } from "../../engine/sheets";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { text, wholeNumber } from "./arguments";
import { type Areas, RangeAreas, RangeCollection } from "./rangeAreas";

/** Areas of several sheets, gathered by sheet in the order in which they were found. */
const bySheet = (areas: Areas): Areas[] => {
  const sheets = new Map<string, Area[]>();
  for (const area of areas) sheets.set(area.sheetId, [...(sheets.get(area.sheetId) ?? []), area]);
  return [...sheets.values()];
};

function onSheet(areas: Areas, key: unknown): Areas | null {
  const wanted = text(key, "A worksheet's name or id");
  const { book } = areas[0]!;
  const id = sheetNamed(book, wanted)?.id ?? wanted;
  return bySheet(areas).find((group) => group[0]!.sheetId === id) ?? null;
}

export const WorkbookRangeAreas: ProxyClass<Excel.WorkbookRangeAreas, Areas> = proxyClass<
  Excel.WorkbookRangeAreas,
  Areas
>("WorkbookRangeAreas", {
  scalars: { addresses: { get: (areas) => bySheet(areas).map((group) => group.map(addressOf).join(",")) } },
  objects: {
    areas: { of: () => RangeAreasCollection, at: bySheet },
    ranges: { of: () => RangeCollection, at: (areas) => areas },
  },
  methods: {
    getRangeAreasBySheet: { of: () => RangeAreas, at: onSheet },
    getRangeAreasOrNullObjectBySheet: { of: () => RangeAreas, at: onSheet },
  },
});

export const RangeAreasCollection: ProxyClass<Excel.RangeAreasCollection, readonly Areas[]> = proxyClass<
  Excel.RangeAreasCollection,
  readonly Areas[]
>("RangeAreasCollection", {
  items: { of: () => RangeAreas, list: (groups) => groups },
  methods: {
    getCount: { answer: (groups) => groups.length },
    getItemAt: { of: () => RangeAreas, at: (groups, index) => groups[wholeNumber(index, "The index", 0)] ?? null },
  },
});
