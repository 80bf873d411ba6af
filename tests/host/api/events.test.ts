import { onSheet, openHost } from "./openHost";

/** Pages: excel/excel-add-ins-events, excel/excel-add-ins-tables (events). */
const opened = openHost();
const tick = () => new Promise((resolve) => setTimeout(resolve, 0));

describe("events (excel/excel-add-ins-events)", () => {
  test("a change tells where, what and by whom; before sync nothing listens", async () => {
    const told: Excel.WorksheetChangedEventArgs[] = [];
    await onSheet(opened.host, async (sheet, context) => {
      sheet.onChanged.add(async (args) => void told.push(args));
      await opened.host.type("A1", 1);
      await context.sync();
      sheet.getRange("B1:B2").values = [[1], [2]];
      await context.sync();
    });
    await opened.host.type("A1", 5);
    await tick();
    expect(
      told.map(({ address, changeType, source, triggerSource }) => ({ address, changeType, source, triggerSource })),
    ).toEqual([
      { address: "B1:B2", changeType: "RangeEdited", source: "Local", triggerSource: "ThisLocalAddin" },
      { address: "A1", changeType: "RangeEdited", source: "Local", triggerSource: "Unknown" },
    ]);
    expect(told[1]?.details).toMatchObject({ valueBefore: 1, valueAfter: 5, valueTypeBefore: "Double" });
  });

  test("a formula's new result is no change of a cell", async () => {
    const told: string[] = [];
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1:B1").formulas = [[1, "=A1*2"]];
    });
    await onSheet(opened.host, async (sheet) => {
      sheet.onChanged.add(async ({ address }) => void told.push(address));
    });
    await opened.host.type("A1", 4);
    await tick();
    expect(told).toEqual(["A1"]);
  });

  test("a removed handler, and events switched off, are silent", async () => {
    const told: string[] = [];
    const handle = await onSheet(opened.host, async (sheet, context) => {
      const result = sheet.onChanged.add(async ({ address }) => void told.push(address));
      await context.sync();
      context.runtime.enableEvents = false;
      sheet.getRange("A1").values = [[1]];
      await context.sync();
      context.runtime.enableEvents = true;
      await context.sync();
      return result;
    });
    await opened.host.type("A1", 2);
    await tick();
    expect(told).toEqual(["A1"]);
    await opened.host.Excel.run(handle.context, async (context) => {
      handle.remove();
      await context.sync();
    });
    await opened.host.type("A1", 3);
    await tick();
    expect(told).toEqual(["A1"]);
  });

  test("selections are told to workbook and sheet", async () => {
    const addresses: string[] = [];
    const workbook: string[] = [];
    await onSheet(opened.host, async (sheet, context) => {
      sheet.onSelectionChanged.add(async ({ address }) => void addresses.push(address));
      context.workbook.onSelectionChanged.add(async () => void workbook.push("told"));
    });
    opened.host.select("A1:B2");
    opened.host.select("A1:A2,C1:C2");
    await tick();
    expect(addresses).toEqual(["A1:B2", "A1:A2,C1:C2"]);
    expect(workbook).toEqual(["told", "told"]);
  });

  test("sheets that come, go and change their name", async () => {
    const told: string[] = [];
    await onSheet(opened.host, async (_sheet, context) => {
      const { worksheets } = context.workbook;
      worksheets.onAdded.add(async ({ type }) => void told.push(type));
      worksheets.onDeleted.add(async ({ type }) => void told.push(type));
      worksheets.onNameChanged.add(async ({ nameBefore, nameAfter }) => void told.push(`${nameBefore}>${nameAfter}`));
      const added = worksheets.add("One");
      added.name = "Two";
      added.delete();
      await context.sync();
    });
    await tick();
    expect(told).toEqual(["WorksheetAdded", "One>Two", "WorksheetDeleted"]);
  });

  test("a table tells of edits in it only", async () => {
    const told: string[] = [];
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1:B2").values = [
        ["a", "b"],
        [1, 2],
      ];
      sheet.tables.add("A1:B2", true).onChanged.add(async ({ address }) => void told.push(address));
    });
    await opened.host.type("B2", 3);
    await opened.host.type("D9", 3);
    await tick();
    expect(told).toEqual(["B2"]);
  });
});
