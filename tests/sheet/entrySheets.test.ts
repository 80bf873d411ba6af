import type { Host } from "../../src/host";
import { readResults } from "../../src/reading/readResults";
import { keepResults } from "../../src/sheet/keepResults";
import { makeEntrySheet } from "../../src/sheet/makeEntrySheet";
import { readEntrySheets } from "../../src/sheet/readEntrySheets";
import { readKeptResults } from "../../src/sheet/readKeptResults";
import { takeBack } from "../../src/sheet/takeBack";
import { planEntrySheet } from "../../src/store/entrySheet";
import { toKept } from "../../src/store/keptResults";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { batteryTest, squadMember } from "./storeRows";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const tests = [
  batteryTest("Single-leg hop", {
    ...{
      unit: "cm",
      sides: 2,
      trials: 2,
      lowest: 30,
      highest: 320,
      protocol: "One leg.\nHold it.",
      caution: "Warm up.",
    },
  }),
  batteryTest("Back squat", { measure: "load", unit: "kg" }),
];
const athletes = [squadMember("Ane Berg", { role: "Back" }), squadMember("=Bo"), squadMember("Kari Dahl")];
const plan = planEntrySheet({ date: "2026-08-11", tests, athletes });
const name = "Test day 11 Aug";

const act = (change: (sheet: Excel.Worksheet) => void) =>
  Excel.run(async (context) => {
    change(context.workbook.worksheets.getItem(name));
    await context.sync();
  });

const read = async () => {
  const [sheet] = await readEntrySheets();
  return { ...sheet!, ...readResults(sheet!.grid, sheet!.map) };
};
const keep = async () => {
  const { results, sheet, date } = await read();
  return keepResults(toKept(results, { sheet, day: date }).kept);
};

describe("makeEntrySheet(plan)", () => {
  it("writes a table to fill in, with how each test is done below, in three round trips", async () => {
    const before = host.syncs;
    const made = await makeEntrySheet(plan);
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    expect(made).toMatchObject({ sheet: name, remembered: true });
    expect(await valuesAt(name, "A1:C7")).toEqual([
      ["Test day 11 Aug 2026", "", ""],
      [plan.use, "", ""],
      ["", "", ""],
      ["Athlete", "Role", "Single-leg hop left 1 (cm)"],
      ["Ane Berg", "Back", ""],
      ["=Bo", "", ""],
      ["Kari Dahl", "", ""],
    ]);
    expect((await valuesAt(name, "A10:A14")).flat()).toEqual([
      "Single-leg hop",
      "One leg.",
      "Hold it.",
      "Mind",
      "Warm up.",
    ]);
  });

  it("asks about numbers beyond the plausible range, and lets words stand", async () => {
    await makeEntrySheet(plan);
    await Excel.run(async (context) => {
      const { dataValidation } = context.workbook.worksheets.getItem(name).getRange("C5:C7");
      dataValidation.load("rule,errorAlert");
      await context.sync();
      expect(dataValidation.rule).toEqual({ custom: { formula: "=OR(ISTEXT(C5),AND(C5>=30,C5<=320))" } });
      expect(dataValidation.errorAlert.style).toBe("Warning");
      expect(dataValidation.errorAlert.message).toContain("from 30 to 320 cm");
    });
  });

  it("is ready for print: across, one page wide, headings on each page", async () => {
    await makeEntrySheet(planEntrySheet({ date: "2026-08-11", tests, athletes, paper: "letter" }));
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem(name);
      sheet.pageLayout.load("orientation,paperSize,zoom");
      const titles = sheet.pageLayout.getPrintTitleRowsOrNullObject();
      titles.load("address");
      const frozen = sheet.freezePanes.getLocationOrNullObject();
      frozen.load("address");
      await context.sync();
      expect(sheet.pageLayout).toMatchObject({ orientation: "Landscape", paperSize: "Letter" });
      expect(sheet.pageLayout.zoom.horizontalFitToPages).toBe(1);
      expect(titles.address).toContain("4:4");
      expect(frozen.address).toContain("A1:A4");
    });
  });

  it("takes the next free name, and each sheet is remembered", async () => {
    await makeEntrySheet(plan);
    expect((await makeEntrySheet(plan)).sheet).toBe(`${name} 2`);
    const before = host.syncs;
    const sheets = await readEntrySheets();
    expect(host.syncs - before).toBeLessThanOrEqual(2);
    expect(sheets.map(({ sheet, date }) => `${sheet}: ${date}`)).toEqual([
      `${name}: 2026-08-11`,
      `${name} 2: 2026-08-11`,
    ]);
  });

  it("leaves a memory of a newer version alone, and says that it could not remember", async () => {
    await Excel.run(async (context) => {
      context.workbook.settings.add("Tapeline.entrySheets", { version: 2 });
      await context.sync();
    });
    expect((await makeEntrySheet(plan)).remembered).toBe(false);
    expect(await readEntrySheets()).toEqual([]);
  });

  it("leaves nothing behind where the workbook is protected, and can be taken back where not", async () => {
    await addSheet("Mine", [["x"]]);
    await Excel.run(async (context) => {
      context.workbook.protection.protect();
      await context.sync();
    });
    await expect(makeEntrySheet(plan)).rejects.toMatchObject({ name: "HostRefusal" });
    await Excel.run(async (context) => {
      context.workbook.protection.unprotect();
      await context.sync();
    });
    expect(await readEntrySheets()).toEqual([]);
    const { deed } = await makeEntrySheet(plan);
    await takeBack(deed);
    expect(await readEntrySheets()).toEqual([]);
    await expect(valuesAt(name, "A1")).rejects.toThrow();
  });
});

describe("an entry sheet filled in", () => {
  beforeEach(async () => {
    await makeEntrySheet(plan);
    await host.type(`${name}!C5`, 171.5);
    await host.type(`${name}!D5`, "168,5");
    await host.type(`${name}!E5`, "DNS");
    await host.type(`${name}!F5`, 1.65);
    await host.type(`${name}!G5`, 80);
    await host.type(`${name}!C6`, 150);
  });

  it("is read exactly as planned: side, trial, measure, unit, day and role", async () => {
    const { results, remarks, missing } = await read();
    expect(missing).toEqual([]);
    const common = { athlete: "Ane Berg", date: "2026-08-11", group: "Back" };
    const jump = { ...common, test: "Single-leg hop", measure: null, unit: "cm" };
    expect(results).toEqual([
      { ...jump, side: "left", attempt: 1, value: 171.5, cell: "C5" },
      { ...jump, side: "left", attempt: 2, value: 168.5, cell: "D5" },
      { ...jump, side: "right", attempt: 2, value: 1.65, cell: "F5" },
      { ...common, test: "Back squat", measure: "load", unit: "kg", side: null, attempt: 1, value: 80, cell: "G5" },
      { ...jump, athlete: "=Bo", group: null, side: "left", attempt: 1, value: 150, cell: "C6" },
    ]);
    expect(remarks.filter(({ cell }) => cell === "E5").map(({ code }) => code)).toEqual(["absent"]);
  });

  it("is read the same after the coach has added a column, sorted, filtered and renamed", async () => {
    const before = (await read()).results.map(({ cell: _, ...result }) => result);
    await act((sheet) => {
      const table = sheet.tables.getItemAt(0);
      table.columns.add(2, [["Mood"], [":)"], [":("], [":|"]]);
      table.sort.apply([{ key: 0, ascending: false }]);
      table.columns.getItem("Athlete").filter.applyValuesFilter(["Ane Berg"]);
      table.name = "Tuesday";
      sheet.name = "August";
    });
    const after = await read();
    expect(after.sheet).toBe("August");
    expect(after.results.map(({ cell: _, ...result }) => result).sort(byAthlete)).toEqual([...before].sort(byAthlete));
  });

  it("is read where the coach has made plain cells of the table, without the lines below", async () => {
    const before = (await read()).results;
    await act((sheet) => sheet.tables.getItemAt(0).convertToRange());
    const { results, athletes: named } = await read();
    expect(results).toEqual(before);
    expect(named).toEqual(["Ane Berg", "=Bo"]);
  });

  it("says which of its columns is gone", async () => {
    await host.type(`${name}!G4`, "Squat today");
    expect((await read()).missing).toEqual(["Back squat load (kg)"]);
  });

  it("is kept once, however often: a corrected cell renews its row", async () => {
    expect(await keep()).toMatchObject({ added: 5 });
    expect(await keep()).toMatchObject({ added: 0, same: 5, deed: { steps: [] } });
    await host.type(`${name}!F5`, 165);
    await host.type(`${name}!C7`, 144);
    expect(await keep()).toMatchObject({ added: 1, changed: 1, same: 4, clashes: [] });
    const kept = (await readKeptResults())!.results;
    expect(kept).toHaveLength(6);
    expect(kept.find(({ source }) => source === `'${name}'!F5`)?.value).toBe(165);
  });

  it("is kept anew after the coach has deleted the table of results", async () => {
    await keep();
    await Excel.run(async (context) => {
      context.workbook.tables.getItem("Tapeline_Results").delete();
      await context.sync();
    });
    expect(await keep()).toMatchObject({ added: 5 });
    expect((await readKeptResults())!.results).toHaveLength(5);
  });
});

type Named = { readonly athlete: string };
const byAthlete = (a: Named, b: Named): number => a.athlete.localeCompare(b.athlete);
