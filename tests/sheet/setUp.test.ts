import type { Host } from "../../src/host";
import { readBackground } from "../../src/sheet/readBackground";
import { readKeptResults } from "../../src/sheet/readKeptResults";
import { setUp } from "../../src/sheet/setUp";
import { takeBack } from "../../src/sheet/takeBack";
import { defaultWeights } from "../../src/store/qualityWeights";
import { addSheet, openWorkbook, valuesAt } from "./openWorkbook";
import { batteryTest, squadMember } from "./storeRows";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const squad = [
  squadMember("Ane Berg", { role: "Back", dominantSide: "right", bodyMass: 71.5 }),
  squadMember("=Bo", { role: "Wing", birthYear: 2004 }),
];
const battery = [
  batteryTest("Single-leg hop", { quality: "Lower-body power", unit: "cm", sides: 2, trials: 3 }),
  batteryTest("Back squat", { measure: "load", unit: "kg" }),
  batteryTest("Back squat", { measure: "estimatedMaximum", unit: "kg", quality: "Strength" }),
];
const weights = defaultWeights(["Back", "Wing"], ["Strength", "Speed"]);

const sheetNames = () =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    return worksheets.items.map(({ name }) => name);
  });

const settingKeys = () =>
  Excel.run(async (context) => {
    const { settings } = context.workbook;
    settings.load("items/key");
    await context.sync();
    return settings.items.map(({ key }) => key);
  });

describe("setUp(tables)", () => {
  it("makes the tables, and what it made is read back as it was given, in three and two round trips", async () => {
    const before = host.syncs;
    const { sheets, deed } = await setUp({ squad, battery, weights });
    expect(host.syncs - before).toBeLessThanOrEqual(3);
    expect(sheets).toEqual(["Squad", "Battery", "Weights", "Results"]);
    expect(deed.steps.map(({ kind }) => kind)).toEqual([
      ...["removeSheet", "removeSheet", "removeSheet", "removeSheet"],
      "restoreEntries",
    ]);

    const reading = host.syncs;
    const { background, remarks, present } = await readBackground();
    expect(host.syncs - reading).toBeLessThanOrEqual(2);
    expect(remarks).toEqual([]);
    expect(background).toEqual({ squad, battery, weights });
    expect([...present].sort()).toEqual(["battery", "results", "squad", "weights"]);
    expect(await readKeptResults()).toEqual({ results: [], remarks: [] });
  });

  it("puts a title and a line of use above the table, lists where words are few, and meanings on headings", async () => {
    await setUp({ squad, battery, weights });
    expect(await valuesAt("Squad", "A1:A4")).toEqual([
      ["Squad"],
      [expect.stringContaining("One row per athlete")],
      [""],
      ["Athlete"],
    ]);
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Battery");
      const [better, heading, lowest] = ["E5", "E4", "I4"].map((cell) => sheet.getRange(cell));
      better!.dataValidation.load("rule,errorAlert");
      heading!.load("values");
      heading!.dataValidation.load("prompt");
      lowest!.load("values");
      const frozen = sheet.freezePanes.getLocationOrNullObject();
      frozen.load("address");
      const name = context.workbook.worksheets.getItem("Squad").getRange("A6");
      name.load("values,numberFormat,formulas");
      await context.sync();
      expect(better!.dataValidation.rule).toEqual({ list: { inCellDropDown: true, source: "higher,lower" } });
      expect(heading!.values).toEqual([["Better"]]);
      expect(heading!.dataValidation.prompt.message).toContain("higher (a jump)");
      expect(lowest!.values).toEqual([["Lowest"]]);
      expect(frozen.address).toContain("1:4");
      expect(name.values).toEqual([["=Bo"]]);
      expect(name.numberFormat).toEqual([["@"]]);
    });
  });

  it("makes only what does not stand yet, and leaves the standing tables alone", async () => {
    await setUp({ squad });
    await host.type("Squad!A5", "Ane Bergum");
    const { sheets } = await setUp({ squad, battery: [] });
    expect(sheets).toEqual(["Battery"]);
    expect(await valuesAt("Squad", "A5")).toEqual([["Ane Bergum"]]);
    expect((await setUp({ squad, battery })).deed.steps).toEqual([]);
    expect((await readBackground()).present).toEqual(new Set(["squad", "battery", "results"]));
  });

  it("takes free names beside sheets and tables of the coach's, which it never reads as its own", async () => {
    await addSheet("Squad", [["mine"]]);
    expect((await setUp({ squad })).sheets).toEqual(["Squad 2", "Results"]);
    expect(await valuesAt("Squad", "A1")).toEqual([["mine"]]);
    expect((await readBackground()).background.squad).toEqual(squad);
  });

  it("can be taken back whole, with what it remembered", async () => {
    const before = await sheetNames();
    const { deed } = await setUp({
      squad,
      battery,
      weights: [...weights, { quality: "Speed", role: "=1", weight: 1 }],
    });
    expect((await readBackground()).background.weights.at(-1)?.role).toBe("=1");
    await takeBack(deed);
    expect(await sheetNames()).toEqual(before);
    expect(await settingKeys()).toEqual([]);
  });

  it("leaves nothing behind where the workbook's structure is protected, or a later step fails", async () => {
    const before = await sheetNames();
    await Excel.run(async (context) => {
      context.workbook.protection.protect();
      await context.sync();
    });
    await expect(setUp({ squad })).rejects.toMatchObject({ name: "HostRefusal" });
    await Excel.run(async (context) => {
      context.workbook.protection.unprotect();
      await context.sync();
    });
    expect(await sheetNames()).toEqual(before);

    host.dispose();
    host = openWorkbook({ payloadLimit: 20_000 });
    const empty = await sheetNames();
    const many = Array.from({ length: 600 }, (_, index) => squadMember(`Athlete ${index}`, {}));
    await expect(setUp({ squad: many })).rejects.toMatchObject({ name: "HostRefusal" });
    expect(await sheetNames()).toEqual(empty);
    expect(await settingKeys()).toEqual([]);
  });
});
