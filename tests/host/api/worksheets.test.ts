import { errorOf, onSheet, openHost } from "./openHost";

/** Pages: excel/excel-add-ins-worksheets, excel/excel-add-ins-worksheets-freeze (snippets: worksheet). */
const opened = openHost();

describe("worksheets (excel/excel-add-ins-worksheets)", () => {
  test("a new one stands last, and the active one stays active", () =>
    onSheet(opened.host, async (sheet, context) => {
      const added = context.workbook.worksheets.add("Hop test");
      const fresh = context.workbook.worksheets.add();
      const active = context.workbook.worksheets.getActiveWorksheet().load("name");
      added.load("name,position");
      fresh.load("name,position");
      await context.sync();
      expect(active.name).toBe("Sheet1");
      expect([added.name, added.position, fresh.name, fresh.position]).toEqual(["Hop test", 1, "Sheet2", 2]);
      sheet.activate();
    }));

  test.each([
    ["", "InvalidArgument"],
    ["x".repeat(32), "InvalidArgument"],
    ["a/b", "InvalidArgument"],
    ["'quoted'", "InvalidArgument"],
    ["History", "InvalidArgument"],
    ["SHEET1", "ItemAlreadyExists"],
  ])('the name "%s" is refused', async (name, code) => {
    const error = await errorOf(
      onSheet(opened.host, async (_sheet, context) => {
        context.workbook.worksheets.add(name);
        await context.sync();
      }),
    );
    expect(error.code).toBe(code);
  });

  test("a renamed sheet is renamed in formulas, a deleted one leaves #REF!", () =>
    onSheet(opened.host, async (sheet, context) => {
      const other = context.workbook.worksheets.add("Raw");
      other.getRange("A1").values = [[7]];
      sheet.getRange("A1").formulas = [["=Raw!A1"]];
      other.name = "Hop test";
      const cell = sheet.getRange("A1").load("formulas,values");
      await context.sync();
      expect([cell.formulas[0]![0], cell.values[0]![0]]).toEqual(["='Hop test'!A1", 7]);
      other.delete();
      cell.load("values");
      await context.sync();
      expect(cell.values).toEqual([["#REF!"]]);
    }));

  test("the last visible one can be neither deleted nor hidden", async () => {
    for (const attempt of ["delete", "hide"]) {
      const error = await errorOf(
        onSheet(opened.host, async (sheet, context) => {
          if (attempt === "delete") sheet.delete();
          else sheet.visibility = "Hidden";
          await context.sync();
        }),
      );
      expect(error.code).toBe("InvalidOperation");
    }
  });

  test("hidden sheets are passed over where only visible ones are wanted", () =>
    onSheet(opened.host, async (sheet, context) => {
      const hidden = context.workbook.worksheets.add("Hidden");
      context.workbook.worksheets.add("Last");
      hidden.visibility = "VeryHidden";
      hidden.load("visibility");
      const next = sheet.getNext(true).load("name");
      const count = context.workbook.worksheets.getCount(true);
      await context.sync();
      expect([hidden.visibility, next.name, count.value]).toEqual(["VeryHidden", "Last", 2]);
    }));

  test("a moved, coloured and copied sheet", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.getRange("A1").values = [["kept"]];
      const second = context.workbook.worksheets.add("Second");
      second.position = 0;
      second.tabColor = "#FF8000";
      sheet.showGridlines = false;
      const copy = sheet.copy("End");
      copy.load("name,position");
      const kept = copy.getRange("A1").load("values");
      second.load("position,tabColor");
      sheet.load("position,showGridlines");
      await context.sync();
      expect([second.position, second.tabColor, sheet.position, sheet.showGridlines]).toEqual([0, "#FF8000", 1, false]);
      expect([copy.name, copy.position, kept.values[0]![0]]).toEqual(["Sheet1 (2)", 2, "kept"]);
    }));

  test("panes are frozen, told and thawed", () =>
    onSheet(opened.host, async (sheet, context) => {
      sheet.freezePanes.freezeRows(1);
      const rows = sheet.freezePanes.getLocationOrNullObject().load("address");
      sheet.freezePanes.freezeAt(sheet.getRange("A1:B2"));
      const corner = sheet.freezePanes.getLocationOrNullObject().load("address");
      sheet.freezePanes.unfreeze();
      const none = sheet.freezePanes.getLocationOrNullObject();
      await context.sync();
      expect([rows.address, corner.address, none.isNullObject]).toEqual(["Sheet1!1:1", "Sheet1!A1:B2", true]);
    }));
});

describe("selection (Workbook.getSelectedRange, getSelectedRanges)", () => {
  test("one area, several areas, a whole column", () =>
    onSheet(opened.host, async (_sheet, context) => {
      opened.host.select("B2:C4");
      const one = context.workbook.getSelectedRange().load("address");
      await context.sync();
      expect(one.address).toBe("Sheet1!B2:C4");
      opened.host.select("A1:A9,C1:C9");
      const several = context.workbook.getSelectedRanges().load("address,areaCount");
      await context.sync();
      expect([several.address, several.areaCount]).toEqual(["Sheet1!A1:A9,Sheet1!C1:C9", 2]);
      context.workbook.getSelectedRange();
      await expect(context.sync()).rejects.toMatchObject({ code: "InvalidSelection" });
      opened.host.select("B:B");
      const column = context.workbook.getSelectedRange().load("address,isEntireColumn,values");
      await context.sync();
      expect(column).toMatchObject({ address: "Sheet1!B:B", isEntireColumn: true, values: null });
    }));

  test("select() selects on the range's own sheet", () =>
    onSheet(opened.host, async (_sheet, context) => {
      context.workbook.worksheets.add("Hop test").getRange("C3").select();
      const cell = context.workbook.getActiveCell().load("address");
      await context.sync();
      expect(cell.address).toBe("'Hop test'!C3");
    }));
});
