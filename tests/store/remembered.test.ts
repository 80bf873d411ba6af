import { entrySheetsSetting, noEntrySheets, parseEntrySheets } from "../../src/store/entrySheets";
import {
  findTable,
  noRememberedTables,
  parseRememberedTables,
  rememberedTablesSetting,
} from "../../src/store/rememberedTables";

describe("what the workbook remembers of our tables", () => {
  const remembered = { version: 1 as const, tables: { squad: { tableId: "7", sheetId: "s" } } };

  it("is read as it was written, and not at all where it is newer or damaged", () => {
    expect(rememberedTablesSetting).toBe("Tapeline.tables");
    expect(parseRememberedTables(JSON.parse(JSON.stringify(remembered)))).toEqual(remembered);
    expect(parseRememberedTables(noRememberedTables)).toEqual(noRememberedTables);
    for (const other of [{ ...remembered, version: 2 }, { version: 1, tables: { squad: 7 } }, "x", null]) {
      expect(parseRememberedTables(other)).toBeNull();
    }
  });

  it("finds a table by its identity first, then by its name", () => {
    const ours = { id: "7", name: "August" };
    const named = { id: "8", name: "tapeline_SQUAD" };
    const squad = { id: "squad", name: "Tapeline_Squad" } as const;
    expect(findTable(squad, remembered, [named, ours])).toBe(ours);
    expect(findTable(squad, remembered, [named])).toBe(named);
    expect(findTable(squad, null, [ours, named])).toBe(named);
    expect(findTable(squad, null, [ours])).toBeNull();
  });
});

describe("what the workbook remembers of entry sheets", () => {
  const column = { heading: "Hop left 1 (cm)", use: "left", test: "Hop", measure: null, unit: "cm" };
  const stored = { version: 1, sheets: { s1: { tableId: "3", date: "2026-08-11", columns: [column] } } };

  it("is read as it was written, and not at all where it is newer or damaged", () => {
    expect(entrySheetsSetting).toBe("Tapeline.entrySheets");
    expect(parseEntrySheets(JSON.parse(JSON.stringify(stored)))).toEqual(stored);
    expect(parseEntrySheets(noEntrySheets)).toEqual(noEntrySheets);
    expect(parseEntrySheets({ ...stored, version: 2 })).toBeNull();
    const damaged = { ...column, measure: "wobble" };
    expect(parseEntrySheets({ ...stored, sheets: { s1: { ...stored.sheets.s1, columns: [damaged] } } })).toBeNull();
  });
});
